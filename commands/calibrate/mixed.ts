import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { POOR_FIT } from '../../src/engine/colour/calibration/calibrate-jar.ts';
import type { LearntJar } from '../../src/engine/colour/calibration/joint/learn-jars.ts';
import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { learnMixed, type MixedLearnt } from '../../src/presenting/colour/learn.ts';
import { shareJars, unshareJars } from '../../src/presenting/colour/share-jars.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import type { JarLearnt } from '../../src/presenting/colour/what-bars-say.ts';
import type { LessonBar } from '../../src/records/batches/lessons.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import { countedTimes } from '../../src/records/shelf/jars/learnt-strength.ts';
import type { ShelfItem } from '../../src/records/shelf/shelf.ts';
import type { MixedBar } from './given-bars.ts';
import { strongView } from './view.ts';

export type Soap = { readonly shades: readonly ShadeShare[]; readonly gelled: boolean };

/** Bars of several jars with what they say. */
export type MixedSaid = MixedLearnt & {
  readonly told: readonly { readonly given: MixedBar; readonly lesson: LessonBar }[];
};

/** Learns the jars of mixed bars; `afresh`: earlier mixed bars with that jar in them no longer count. */
export async function learnMixedBars(
  mixed: readonly MixedBar[],
  { soap, afresh }: { readonly soap: Soap; readonly afresh: ShelfItem | undefined },
  context: Context,
): Promise<MixedSaid> {
  const told = mixed.map(given => ({ given, lesson: lessonOf(given, soap) }));
  const found = await learnMixed(
    told.map(({ lesson }) => lesson),
    {
      forget: ({ mix }) => mix.some(({ item, lot }) => item === afresh?.id && lot === afresh.lot.number),
      isPoor: ({ after }) => after > POOR_FIT,
    },
    context,
  );
  return { ...found, told };
}

function lessonOf({ parts, lab, plusMinus }: MixedBar, { shades, gelled }: Soap): LessonBar {
  const poured = parts.filter(({ grams }) => grams > 0);
  const mix = poured.flatMap(({ jar: { item, colourant }, grams }) =>
    item ? [{ item: item.id, lot: item.lot.number, colourant: colourant.id, grams }] : [],
  );
  const others = poured.flatMap(({ jar: { item, colourant }, grams }) =>
    item ? [] : [{ colourant: colourant.id, grams }],
  );
  const base = [...shades];
  return {
    portion: numberOf({ mix, others, base, gelled }),
    mix,
    others,
    shades: base,
    gelled,
    lab,
    plusMinus,
  };
}

/** Doses as near as this are one mix made again: a step of the logarithm. */
const SAME_DOSE = 0.05;

/** A number for a mix, the same for the same mix whenever it is made (FNV-1a, 32 bits, of what is in it). */
function numberOf({
  mix,
  others,
  base,
  gelled,
}: Pick<LessonBar, 'mix' | 'others' | 'gelled'> & { base: object }): number {
  const step = (grams: number) => Math.round(Math.log(grams) / SAME_DOSE);
  const text = JSON.stringify([
    mix.map(({ item, lot, grams }) => `${item} ${lot} ${step(grams)}`).toSorted(),
    others.map(({ colourant, grams }) => `${colourant} ${step(grams)}`).toSorted(),
    base,
    gelled,
  ]);
  let hash = 0x811c9dc5;
  for (const character of text) hash = Math.imul(hash ^ character.codePointAt(0)!, 0x01000193);
  return hash >>> 1;
}

/** Shares or takes back every jar that the bars are of, as asked. */
export async function shareMixed(
  { told }: MixedSaid,
  share: boolean | undefined,
  context: Context,
): Promise<readonly string[]> {
  const items = new Set(told.flatMap(({ lesson }) => lesson.mix.map(({ item }) => item)));
  if (share === true) return await shareJars(items, context);
  if (share === false) await unshareJars(items, context);
  return [];
}

type Dosed = (jar: Jar, grams: number) => number;

/** The jars and the bars in words. */
export function mixedBlocks(said: MixedSaid, dosed: Dosed, { say }: Context): readonly Block[] {
  const words = say.calibrating;
  const rows = said.told.map(({ given, lesson }) => {
    const fit = said.fits.get(lesson);
    return words.bar({
      dose: mixView(given, dosed, say),
      hex: hexOfLab(given.lab),
      expected: fit ? hexOfLab(fit.predicted) : hexOfLab(given.lab),
      deltaE: tenth(fit?.after ?? 0),
    });
  });
  const jars = said.kept ? said.jars.flatMap(one => jarRow(one, say)) : [];
  return [
    ...(jars.length > 0 ? [{ kind: 'rows' as const, title: words.mixedJars, rows: jars }] : []),
    { kind: 'rows', title: words.mixedBars, rows },
  ];
}

/** As `/dose` counts it. */
function countedOf({ colourant }: ShelfItem, [k, s]: LearntJar['parameters']): number {
  const kind = colourantById(colourant ?? '');
  return (kind && countedTimes(kind, { k: Math.exp(k), s: Math.exp(s) })) ?? 1;
}

const jarRow = ({ item, after }: JarLearnt, say: Context['say']): readonly string[] =>
  after
    ? [
        say.calibrating.headline({
          name: item.name,
          times: strongView(countedOf(item, after.parameters), say),
          before: tenth(after.plusMinus.before),
          after: tenth(after.plusMinus.after),
        }),
      ]
    : [];

const mixView = ({ parts }: MixedBar, dosed: Dosed, say: Context['say']): string =>
  parts
    .map(({ jar, grams }) =>
      say.testBars.dose({
        spoons: say.calibrating.doseOf({
          spoons: say.quantities.measure(practicalSpoons(dosed(jar, grams))),
        }),
        name: knownAs(jar, say),
      }),
    )
    .join(' + ');

/** The answer where every bar names its jars. */
export function mixedReply(
  said: MixedSaid,
  { dosed, shared }: { readonly dosed: Dosed; readonly shared: readonly string[] },
  context: Context,
): Reply {
  const { say } = context;
  const words = say.calibrating;
  const off = Math.max(...said.told.map(({ lesson }) => said.fits.get(lesson)?.after ?? 0));
  const [first] = said.kept ? said.jars.flatMap(one => jarRow(one, say)) : [];
  return {
    kind: 'reply',
    headline: said.kept ? (first ?? say.shelf.repeated) : words.mixedNotKept({ off: tenth(off) }),
    data: mixedData(said),
    blocks: [
      ...mixedBlocks(said, dosed, context),
      ...(shared.length > 0 ? [{ kind: 'text' as const, text: words.mixedShared({ names: shared }) }] : []),
      { kind: 'text', folds: true, fold: 'why', text: [words.mixedWhy, say.match.scale].join('\n') },
    ],
    cautions: said.kept ? [] : [{ id: 'poor-fit', text: say.colour.poorFit }],
  };
}

/** The same for programs. */
export const mixedData = ({ kept, jars, told, fits }: MixedSaid): object => ({
  kept,
  jars: jars.map(({ item, after, bars }) => ({ item: item.id, name: item.name, after, bars })),
  mixed: told.map(({ lesson }) => ({ ...lesson, hex: hexOfLab(lesson.lab), fit: fits.get(lesson) })),
});
