import type { Context } from '../../conversation/context.ts';
import type { JarBelief } from '../../engine/colour/calibration/joint/jar-parameters.ts';
import type { LearntJar } from '../../engine/colour/calibration/joint/learn-jars.ts';
import type { TestBar } from '../../engine/colour/calibration/test-bar.ts';
import { parseBase } from '../../engine/colour/reading/base-text.ts';
import type { BatchBook } from '../../records/batches/batch.ts';
import {
  keepLearnt,
  keepLesson,
  type Lesson,
  type LessonBar,
  type LotLearnt,
  lessonsOf,
} from '../../records/batches/lessons.ts';
import {
  isShared,
  poolFor,
  shareCalibration,
  withdrawCalibration,
} from '../../records/calibrations/index.ts';
import { StoreFailure } from '../../records/failure.ts';
import { calibrationOf } from '../../records/shelf/calibration.ts';
import { listShelf, type ShelfItem } from '../../records/shelf/index.ts';
import { learntOf } from './jars.ts';

type Asking = Pick<Context, 'store' | 'asker' | 'group' | 'workers' | 'change'>;

/** A jar before and after a lesson. */
export type JarLearnt = {
  readonly item: ShelfItem;
  readonly before: ReturnType<typeof learntOf>;
  readonly after: LearntJar | undefined;
  readonly bars: number;
};

/** More lessons came between than one member can have under way at once: something else is wrong. */
const MOST_ROUNDS = 50;
/** The newest bars count: jars are emptied, and a fit stays quick. */
const MOST_BARS = 80;

/**
 * Learns the jars of a cured batch together with everything else that bars say of them and of the jars they were mixed
 * with, and keeps lesson and jars in one commit. What the same batch said before of the same portions no longer counts.
 */
export const learn = (
  { batch, bars }: Pick<Lesson, 'batch' | 'bars'>,
  asking: Asking,
): Promise<readonly JarLearnt[]> =>
  written(asking, standing => {
    if (standing.some(({ cause }) => cause === asking.change.cause)) return undefined;
    const before = standing.find(one => one.batch === batch);
    const kept = before?.bars.filter(old => !bars.some(({ portion }) => portion === old.portion)) ?? [];
    return { batch, bars: [...kept, ...bars], ...(before && { undoes: before.cause }) };
  });

/** Takes back what a cured batch said; nothing where it said nothing that still counts. */
export const unlearn = (batch: string, asking: Asking): Promise<readonly JarLearnt[]> =>
  written(asking, standing => {
    const before = standing.find(one => one.batch === batch);
    return before && { batch, bars: [], undoes: before.cause };
  });

/** Writes the line that `next` makes of what stands, with all that follows from it for the jars, until nothing comes between. */
async function written(
  asking: Asking,
  next: (standing: readonly Lesson[]) => Omit<Lesson, 'at' | 'cause'> | undefined,
): Promise<readonly JarLearnt[]> {
  const book: BatchBook = { store: asking.store, member: asking.asker.id };
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { standing, lines } = await lessonsOf(book);
    const made = next(standing);
    if (!made) return [];
    const lesson: Lesson = { ...made, at: asking.change.at, cause: asking.change.cause };
    const gone = standing.filter(({ cause }) => cause === lesson.undoes);
    const touched = jarsIn([...lesson.bars, ...gone.flatMap(({ bars }) => bars)]);
    const all = [...standing.filter(one => !gone.includes(one)), lesson];
    const found = await learnt(all, touched, asking);
    if (!(await keepLesson(book, { lines, lesson, lots: found.map(lotOf) }))) continue;
    await pool(found, asking);
    return found.filter(({ item }) => touched.has(nameOfLot(item.id, item.lot.number)));
  }
  throw new StoreFailure('busy', 'write', 'other lessons kept coming between');
}

/** Learns a jar anew with those it was mixed with, as when test bars were added or forgotten. */
export async function learnAgain(item: Pick<ShelfItem, 'id' | 'lot'>, asking: Asking): Promise<void> {
  const book: BatchBook = { store: asking.store, member: asking.asker.id };
  const { standing } = await lessonsOf(book);
  const found = await learnt(standing, new Set([nameOfLot(item.id, item.lot.number)]), asking);
  await keepLearnt(book, found.map(lotOf), asking.change.at);
}

const nameOfLot = (item: string, lot: number) => `${item}#${lot}`;
const jarsIn = (bars: readonly LessonBar[]) =>
  new Set(bars.flatMap(({ mix }) => mix.map(({ item, lot }) => nameOfLot(item, lot))));

const beliefOf = ({ parameters, covariance, unexplained }: JarBelief): JarBelief => ({
  parameters,
  covariance,
  ...(unexplained !== undefined && { unexplained }),
});

const lotOf = ({ item, after, bars }: JarLearnt): LotLearnt => ({
  item: item.id,
  lot: item.lot.number,
  learnt:
    after && item.colourant !== undefined
      ? { ...beliefOf(after), colourant: item.colourant, bars }
      : undefined,
});

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
async function learnt(
  lessons: readonly Lesson[],
  from: ReadonlySet<string>,
  asking: Asking,
): Promise<readonly JarLearnt[]> {
  const { names, within } = connected(
    lessons.flatMap(({ bars }) => bars),
    from,
  );
  const shelf = await listShelf({ store: asking.store, member: asking.asker.id });
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
      : await asking.workers.run('learnJars', { jars, bars }, { owner: asking.asker.id });
  return onShelf.map(item => {
    const at = places.get(nameOfLot(item.id, item.lot.number))!;
    const count = counts[at] ?? 0;
    return { item, before: learntOf(item), after: count > 0 ? found?.jars[at] : undefined, bars: count };
  });
}

/** The test bars of a lot with colour in them, in their own base. */
function testBars(item: ShelfItem) {
  const kept = calibrationOf(item);
  if (!kept) return [];
  const { shades } = parseBase(kept.base);
  return kept.bars
    .filter(({ grams }) => grams > 0)
    .map((bar: TestBar) => ({ ...bar, shades, gelled: kept.gelled }));
}

const sharedJar = (item: ShelfItem, { store, group, asker }: Asking) => ({
  store,
  group,
  member: asker.id,
  item: { id: item.id, name: item.name, colourant: item.colourant! },
});

/** The group's pool learns only from those who share: a jar that is shared there is shared as it is known now. */
async function pool(found: readonly JarLearnt[], asking: Asking): Promise<void> {
  for (const { item, after } of found) {
    const jar = sharedJar(item, asking);
    if (after && (await isShared(jar))) await shareCalibration(jar, after.evidence, asking.change.at);
  }
}

/** Shares what bars said of a member's jars with the group; those nobody learnt anything of are left out. */
export async function shareJars(items: ReadonlySet<string>, asking: Asking): Promise<readonly string[]> {
  const { standing } = await lessonsOf({ store: asking.store, member: asking.asker.id });
  const shelf = await listShelf({ store: asking.store, member: asking.asker.id });
  const wanted = shelf.filter(({ id }) => items.has(id));
  const names = new Set(wanted.map(({ id, lot }) => nameOfLot(id, lot.number)));
  const found = await learnt(standing, names, asking);
  const shared = found.filter(({ item, after }) => after && items.has(item.id));
  for (const { item, after } of shared)
    await shareCalibration(sharedJar(item, asking), after!.evidence, asking.change.at);
  return shared.map(({ item }) => item.name);
}

/** Takes jars back from the group's pool; no matter which of them were in it. */
export async function unshareJars(items: ReadonlySet<string>, asking: Asking): Promise<void> {
  const shelf = await listShelf({ store: asking.store, member: asking.asker.id });
  for (const item of shelf)
    if (items.has(item.id) && item.colourant !== undefined)
      await withdrawCalibration(sharedJar(item, asking));
}
