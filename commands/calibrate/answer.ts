import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import type { JarCalibration } from '../../src/engine/colour/calibration/calibrate-jar.ts';
import { POOR_FIT } from '../../src/engine/colour/calibration/calibrate-jar.ts';
import type { LearntJar } from '../../src/engine/colour/calibration/joint/learn-jars.ts';
import type { TestBar } from '../../src/engine/colour/calibration/test-bar.ts';
import { gramsPerHundred } from '../../src/engine/colour/jars/colourant-optics.ts';
import { ceilingPerCup, fullGrams, pigmentPerTeaspoon } from '../../src/engine/colour/jars/jar-spoons.ts';
import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { parseBase } from '../../src/engine/colour/reading/base-text.ts';
import { MEASURES, type Measures } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { spooned } from '../../src/presenting/colour/jars.ts';
import { learnAgain } from '../../src/presenting/colour/learn.ts';
import {
  isShared,
  poolFor,
  type SharedJar,
  shareCalibration,
  withdrawCalibration,
} from '../../src/records/calibrations/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findItem, keepCalibration } from '../../src/records/shelf/index.ts';
import {
  calibrationOf,
  calibrationRecord,
  type LotCalibration,
} from '../../src/records/shelf/jars/calibration.ts';
import { type Jar, jarOf } from '../../src/records/shelf/jars/jar.ts';
import { timesItsKind } from '../../src/records/shelf/jars/learnt-strength.ts';
import type { ShelfItem } from '../../src/records/shelf/shelf.ts';
import { calibrationData } from './data.ts';
import { type GivenBars, givenBars, soleJarNamed } from './given-bars.ts';
import { learnMixedBars, type MixedSaid, mixedBlocks, mixedData, mixedReply, shareMixed } from './mixed.ts';
import {
  type CalibrationView,
  calibrationBlocks,
  calibrationCautions,
  calibrationHeadline,
  calibrationPlot,
} from './view.ts';

export type CalibrateAsked = {
  /** Not needed where every bar names its jars. */
  readonly item?: string | undefined;
  readonly bar: readonly string[];
  readonly photo?: Attachment | undefined;
  readonly dose?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
  readonly share?: boolean | undefined;
  readonly afresh?: boolean | undefined;
};

/** Doses as near as this are one bar made again. */
const SAME_DOSE = 0.03;
const MOST_BARS = 20;

/** What test bars say of a jar, and of the jars that they name; kept with the lots, with how well it fits. */
export async function calibrateReply(asked: CalibrateAsked, context: Context): Promise<Reply> {
  const { store, asker, shelf } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const item =
    asked.item === undefined
      ? await soleJarNamed(asked.bar, measures, context)
      : await findItem(shelf, asked.item);
  const jar = item && jarOf(item);
  const given = await givenBars(asked, { jar, measures }, context);
  if (!item && given.mixed.length === 0) return refuse('calibration-without-item', {});
  const afresh = asked.afresh ? item : undefined;
  const dosed = (one: Jar, grams: number) => grams / perTeaspoon(one, measures);
  const soap = { shades: parseBase(asked.base ?? 'cream').shades, gelled: asked.gel ?? false };
  const said =
    given.mixed.length > 0 || afresh
      ? await learnMixedBars(given.mixed, { soap, afresh }, context)
      : undefined;
  const shared = said?.kept ? await shareMixed(said, asked.share, context) : [];
  if (said && given.mixed.length > 0 && (!item || given.bars.length === 0))
    return withPlain(mixedReply(said, { dosed, shared }, context), given, context);
  return await singleReply(asked, { item: item!, jar: jar!, measures, given, said }, context);
}

/** A plain bar that told nothing of the jars named beside it is not passed over in silence. */
const withPlain = (reply: Reply, { plainLeftOut }: GivenBars, { say }: Context): Reply =>
  plainLeftOut === undefined
    ? reply
    : { ...reply, blocks: [...reply.blocks, { kind: 'text', text: say.calibrating.plainLeftOut }] };

type Known = {
  readonly item: ShelfItem;
  readonly jar: Jar;
  readonly measures: Measures;
  readonly given: GivenBars;
  readonly said: MixedSaid | undefined;
};

/** What bars of one jar alone say of it, with its fit as a picture; then what the mixed ones beside them say. */
async function singleReply(asked: CalibrateAsked, known: Known, context: Context): Promise<Reply> {
  const { asker, workers, say } = context;
  const { item, jar, measures, said } = known;
  const owner = { owner: asker.id };
  const { colourant } = jar;
  const shared: SharedJar = {
    ...context.recipes,
    item: { id: item.id, name: item.name, colourant: colourant.id },
  };
  const batch = barsOf(asked, known);
  const pool = await poolFor(shared);
  const { bars, shades, gelled } = batch;
  const fit = await workers.run(
    'calibrateJar',
    { colourant: colourant.id, bars, shades, gelled, pool },
    owner,
  );
  const { outcome, learnt } = await keep(asked.share, { found: fit, batch, shared }, context);
  const view: CalibrationView = {
    item,
    jar,
    found: learnt ? { ...fit, ...asLearnt(learnt) } : fit,
    bars,
    photo: batch.photo,
    outcome,
    others: pool.length,
    otherBase: batch.otherBase,
    owned: measures.owned,
    teaspoonsPerCup: grams => grams / perTeaspoon(jar, measures),
    fullGrams: fullGrams(spooned(jar, measures), measures),
    mostPerCup: (ceilingPerCup(spooned(jar, measures), measures) * measures.cup) / MEASURES.us.cup,
    times: timesItsKind(jarOf(await findItem(context.shelf, item.id))) ?? 1,
    say,
  };
  const { plot, alt } = calibrationPlot(view);
  const png = await workers.run('fitPlot', plot, owner);
  const dosed = (one: Jar, grams: number) => grams / perTeaspoon(one, measures);
  return {
    kind: 'reply',
    headline: calibrationHeadline(view),
    data: { ...calibrationData(view, batch), ...(said && { together: mixedData(said) }) },
    blocks: [
      ...calibrationBlocks(view, { kind: 'picture', name: 'fit.png', png, alt }),
      ...(said && said.told.length > 0 ? mixedBlocks(said, dosed, context) : []),
    ],
    cautions: calibrationCautions(view),
  };
}

/** How strong it is and what is stated of it with all that bars say, mixed ones and cured batches too. */
const asLearnt = ({ parameters, plusMinus }: LearntJar) => ({
  scale: { k: Math.exp(parameters[0]), s: Math.exp(parameters[1]) },
  plusMinus,
});

/** All bars of the lot that count, and the soap they are of. */
type Batch = GivenBars & {
  readonly base: string;
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  /** Earlier bars were of another base, so they were dropped. */
  readonly otherBase: boolean;
};

/** The bars of this question and the earlier ones of the same lot and base. */
function barsOf(asked: CalibrateAsked, { item, given }: Pick<Known, 'item' | 'given'>): Batch {
  const kept = asked.afresh ? undefined : calibrationOf(item);
  const base = baseKey(asked, kept);
  const gelled = asked.gel ?? kept?.gelled ?? false;
  const { shades } = parseBase(base);
  const same = kept?.base === base && kept.gelled === gelled;
  return {
    ...given,
    bars: withEarlier(given.bars, same ? kept.bars : []),
    base,
    shades,
    gelled,
    otherBase: kept !== undefined && !same,
  };
}

/** Keeps a fit with the lot and shares it as asked; bars that nothing explains are not kept. */
async function keep(
  share: boolean | undefined,
  { found, batch, shared }: { found: JarCalibration; batch: Batch; shared: SharedJar },
  context: Context,
): Promise<{ readonly outcome: CalibrationView['outcome']; readonly learnt?: LearntJar | undefined }> {
  const { shelf, change } = context;
  if (found.after > POOR_FIT) return { outcome: 'not-kept' };
  const { colourant, id } = shared.item;
  const record = calibrationRecord({
    colourant,
    scale: found.scale,
    plusMinus: found.plusMinus.after,
    evidence: found.evidence,
    base: batch.base,
    gelled: batch.gelled,
    bars: batch.bars.map(({ grams, lab, plusMinus }) => ({ grams, lab, plusMinus })),
  });
  await keepCalibration(shelf, id, record, change);
  // With what cured batches and mixed bars say of it.
  const learnt = (await learnAgain(await findItem(shelf, id), context))?.after;
  if (share === false) {
    await withdrawCalibration(shared);
    return { outcome: 'withdrawn', learnt };
  }
  if (share === undefined && !(await isShared(shared))) return { outcome: 'private', learnt };
  await shareCalibration(shared, found.evidence, change.at);
  return { outcome: 'shared', learnt };
}

/** Grams per 100 g of batter that a teaspoon to the cup of this jar gives. */
const perTeaspoon = (jar: Jar, measures: Measures): number => {
  const toUsCup = MEASURES.us.cup / measures.cup;
  return gramsPerHundred(1, pigmentPerTeaspoon(spooned(jar, measures), measures)) * toUsCup;
};

/** The base is kept by its cast, else by its oils as they were written: the same words are the same base. */
function baseKey({ base }: CalibrateAsked, kept: LotCalibration | undefined): string {
  if (base === undefined) return kept?.base ?? 'cream';
  return parseBase(base).shade ?? base.trim().toLowerCase();
}

/** A bar made again at the same dose takes the place of the earlier one; the newest are kept. */
function withEarlier(bars: readonly TestBar[], earlier: readonly TestBar[]): readonly TestBar[] {
  const again = (one: TestBar) =>
    bars.some(({ grams }) => Math.abs(grams - one.grams) <= SAME_DOSE * Math.max(grams, one.grams));
  return [...earlier.filter(one => !again(one)), ...bars].slice(-MOST_BARS).sort((a, b) => a.grams - b.grams);
}
