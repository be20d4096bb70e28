import type { Context } from '../../conversation/context.ts';
import { darkerBy } from '../../engine/colour/calibration/darker-base.ts';
import type { LearntBar, LearntJar } from '../../engine/colour/calibration/joint/learn-jars.ts';
import type { TestBar } from '../../engine/colour/calibration/test-bar.ts';
import { baseSoap } from '../../engine/colour/mixing/base-soap.ts';
import { parseBase } from '../../engine/colour/reading/base-text.ts';
import type { Lesson, LessonBar } from '../../records/batches/lessons.ts';
import { poolFor } from '../../records/calibrations/index.ts';
import { listShelf, type ShelfItem } from '../../records/shelf/index.ts';
import { calibrationOf } from '../../records/shelf/jars/calibration.ts';
import { learntOf } from './jars.ts';

export type Asking = Pick<Context, 'shelf' | 'book' | 'group' | 'workers' | 'change'>;

/** A jar before and after a lesson. */
export type JarLearnt = {
  readonly item: ShelfItem;
  readonly before: ReturnType<typeof learntOf>;
  readonly after: LearntJar | undefined;
  readonly bars: number;
};

/** What all the bars say: of the jars, and how each bar of a lesson agrees. */
export type BarsSay = {
  readonly jars: readonly JarLearnt[];
  readonly fits: ReadonlyMap<LessonBar, LearntBar>;
};

/** The newest bars count: jars are emptied, and a fit stays quick. */
const MOST_BARS = 80;

export const nameOfLot = (item: string, lot: number) => `${item}#${lot}`;
export const jarsIn = (bars: readonly LessonBar[]) =>
  new Set(bars.flatMap(({ mix }) => mix.map(({ item, lot }) => nameOfLot(item, lot))));

/** The bars that speak of some jars, and of those they were mixed with, and so on. */
function connected(bars: readonly LessonBar[], from: ReadonlySet<string>) {
  const names = new Set(from);
  let within: readonly LessonBar[] = [];
  for (;;) {
    within = bars.filter(({ mix }) => mix.some(({ item, lot }) => names.has(nameOfLot(item, lot))));
    const before = names.size;
    for (const name of jarsIn(within)) names.add(name);
    if (names.size === before) return { names, within: within.slice(-MOST_BARS) };
  }
}

/** What all the bars say of the jars that stand on the shelf now; jars and lots that are gone are learnt along. */
export async function learnt(
  lessons: readonly Lesson[],
  from: ReadonlySet<string>,
  asking: Asking,
): Promise<BarsSay> {
  const { names, within } = connected(
    lessons.flatMap(({ bars }) => bars),
    from,
  );
  const shelf = await listShelf(asking.shelf);
  const onShelf = shelf.filter(
    ({ id, lot, colourant }) => colourant !== undefined && names.has(nameOfLot(id, lot.number)),
  );
  // A jar described anew is another one: what bars said of it as something else is left out.
  const usable = within.filter(({ mix }) =>
    mix.every(one => {
      const item = onShelf.find(({ id, lot }) => id === one.item && lot.number === one.lot);
      return item === undefined || item.colourant === one.colourant;
    }),
  );
  const places = new Map<string, number>();
  const jars: { colourant: string; pool?: Awaited<ReturnType<typeof poolFor>> }[] = [];
  const place = (name: string, colourant: string) => {
    const known = places.get(name);
    if (known !== undefined) return known;
    places.set(name, jars.length);
    jars.push({ colourant });
    return jars.length - 1;
  };
  for (const item of onShelf) {
    const at = place(nameOfLot(item.id, item.lot.number), item.colourant!);
    const others = await poolFor(sharedJar(item, asking));
    if (others.length > 0) jars[at] = { ...jars[at]!, pool: others };
  }
  const cured = usable.map(({ mix, others, shades, gelled, lab, plusMinus }) => ({
    mix: [
      ...mix.map(one => ({ jar: place(nameOfLot(one.item, one.lot), one.colourant), grams: one.grams })),
      ...others.map(one => ({ jar: place(`kind ${one.colourant}`, one.colourant), grams: one.grams })),
    ],
    shades,
    gelled,
    lab,
    plusMinus,
  }));
  const tested = onShelf.flatMap(item =>
    testBars(item).map(bar => ({
      ...bar,
      mix: [{ jar: places.get(nameOfLot(item.id, item.lot.number))!, grams: bar.grams }],
    })),
  );
  const bars = [...cured, ...tested];
  const counts = jars.map((_, jar) => bars.filter(({ mix }) => mix.some(one => one.jar === jar)).length);
  const found =
    bars.length === 0
      ? undefined
      : await asking.workers.run('learnJars', { jars, bars }, { owner: asking.shelf.member });
  return {
    jars: onShelf.map(item => {
      const at = places.get(nameOfLot(item.id, item.lot.number))!;
      const count = counts[at] ?? 0;
      return { item, before: learntOf(item), after: count > 0 ? found?.jars[at] : undefined, bars: count };
    }),
    fits: new Map(found ? usable.map((bar, at) => [bar, found.bars[at]!]) : []),
  };
}

/** The test bars of a lot with colour in them, in their own base. */
function testBars(item: ShelfItem) {
  const kept = calibrationOf(item);
  if (!kept) return [];
  const { shades } = parseBase(kept.base);
  const { gelled } = kept;
  const darker = darkerBy(baseSoap(shades, gelled), kept.bars);
  return kept.bars
    .filter(({ grams }) => grams > 0)
    .map((bar: TestBar) => ({ ...bar, shades, gelled, darker }));
}

export const sharedJar = (item: ShelfItem, { shelf, group }: Asking) => ({
  ...shelf,
  group,
  item: { id: item.id, name: item.name, colourant: item.colourant! },
});
