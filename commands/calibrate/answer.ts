import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { POOR_FIT } from '../../src/engine/colour/calibration/calibrate.ts';
import type { JarCalibration } from '../../src/engine/colour/calibration/calibrate-jar.ts';
import type { TestBar } from '../../src/engine/colour/calibration/scale-estimation.ts';
import { gramsPerHundred } from '../../src/engine/colour/jars/colourant-optics.ts';
import {
  barGrams,
  ceilingPerCup,
  fullGrams,
  pigmentPerTeaspoon,
} from '../../src/engine/colour/jars/jar-spoons.ts';
import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { type BarDose, parseBar, parseBarDose } from '../../src/engine/colour/reading/bar-text.ts';
import { parseBase } from '../../src/engine/colour/reading/base-text.ts';
import { hexOfLab } from '../../src/engine/colour/spectra/cielab.ts';
import { excerpt } from '../../src/engine/quantities/excerpt.ts';
import { MEASURES, type Measures } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { spooned, timesItsKind } from '../../src/presenting/colour/jars.ts';
import { learnAgain } from '../../src/presenting/colour/learn.ts';
import {
  isShared,
  poolFor,
  type SharedJar,
  shareCalibration,
  withdrawCalibration,
} from '../../src/records/calibrations/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import {
  calibrationOf,
  calibrationRecord,
  type LotCalibration,
} from '../../src/records/shelf/calibration.ts';
import { findItem, keepCalibration } from '../../src/records/shelf/index.ts';
import { type Jar, jarOf } from '../../src/records/shelf/jar.ts';
import type { ShelfItem } from '../../src/records/shelf/shelf.ts';
import {
  type CalibrationView,
  calibrationBlocks,
  calibrationCautions,
  calibrationHeadline,
  calibrationPlot,
} from './view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'calibration-photo-without-dose': Record<never, never>;
    'calibration-photo-without-white': Record<never, never>;
  }
}

export type CalibrateAsked = {
  readonly item: string;
  readonly bar: readonly string[];
  readonly photo?: Attachment | undefined;
  readonly dose?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
  readonly share?: boolean | undefined;
  readonly afresh?: boolean | undefined;
};

/** Error of a colour that was typed after looking, CIEDE2000 (from memory: naming and picking by eye scatter so). */
const TYPED_PLUS_MINUS = 3;
/** Doses as near as this are one bar made again. */
const SAME_DOSE = 0.03;
const MOST_BARS = 20;

/** Fits a jar to its test bars, keeps what they say with the lot, and tells how well they fit. */
export async function calibrateReply(asked: CalibrateAsked, context: Context): Promise<Reply> {
  const { store, asker, group, workers, say } = context;
  const owner = { owner: asker.id };
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const item = await findItem(context.shelf, asked.item);
  const jar = jarOf(item);
  const { colourant } = jar;
  const product = { id: item.id, name: item.name, colourant: colourant.id };
  const shared: SharedJar = { store, group, member: asker.id, item: product };
  const batch = await barsOf(asked, { item, jar, measures }, context);
  const pool = await poolFor(shared);
  const { bars, shades, gelled } = batch;
  const found = await workers.run(
    'calibrateJar',
    { colourant: colourant.id, bars, shades, gelled, pool },
    owner,
  );
  const outcome = await keep(asked.share, { found, batch, shared }, context);
  const view: CalibrationView = {
    item,
    jar,
    found,
    bars,
    photo: batch.photo,
    outcome,
    others: pool.length,
    otherBase: batch.otherBase,
    teaspoonsPerCup: grams => grams / perTeaspoon(jar, measures),
    fullGrams: fullGrams(spooned(jar, measures), measures),
    mostPerCup: (ceilingPerCup(spooned(jar, measures), measures) * measures.cup) / MEASURES.us.cup,
    times: timesItsKind(jarOf(await findItem(context.shelf, item.id))) ?? 1,
    say,
  };
  const { plot, alt } = calibrationPlot(view);
  const png = await workers.run('fitPlot', plot, owner);
  return {
    kind: 'reply',
    headline: calibrationHeadline(view),
    data: dataOf(view, batch),
    blocks: calibrationBlocks(view, { kind: 'picture', name: 'fit.png', png, alt }),
    cautions: calibrationCautions(view),
  };
}

/** All bars of the lot that count, and the soap they are of. */
type Batch = Given & {
  readonly base: string;
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  /** Earlier bars were of another base, so they were dropped. */
  readonly otherBase: boolean;
};

/** The bars of this question and the earlier ones of the same lot and base. */
async function barsOf(
  asked: CalibrateAsked,
  known: { readonly item: ShelfItem; readonly jar: Jar; readonly measures: Measures },
  context: Context,
): Promise<Batch> {
  const kept = asked.afresh ? undefined : calibrationOf(known.item);
  const base = baseKey(asked, kept);
  const gelled = asked.gel ?? kept?.gelled ?? false;
  const { shades } = parseBase(base);
  const given = await givenBars(asked, known, context);
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
): Promise<CalibrationView['outcome']> {
  const { shelf, change } = context;
  if (found.after > POOR_FIT) return 'not-kept';
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
  // With what cured batches say of it.
  await learnAgain(await findItem(shelf, id), context);
  if (share === false) {
    await withdrawCalibration(shared);
    return 'withdrawn';
  }
  if (share === undefined && !(await isShared(shared))) return 'private';
  await shareCalibration(shared, found.evidence, change.at);
  return 'shared';
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

type Given = {
  readonly bars: readonly TestBar[];
  readonly photo?: { readonly hex: string; readonly plusMinus: number };
};

/** The bars of this question: typed ones, and the one in the photo. */
async function givenBars(
  asked: CalibrateAsked,
  { jar, measures }: { readonly jar: Jar; readonly measures: Measures },
  context: Context,
): Promise<Given> {
  const spoon = spooned(jar, measures);
  const typed = asked.bar.map(text => {
    const { dose, lab } = parseBar(text, measures);
    return { grams: barGrams(dose, spoon, measures), lab, plusMinus: TYPED_PLUS_MINUS };
  });
  if (!asked.photo) return { bars: typed };
  const dose = photoDose(asked.dose, measures);
  const bytes = await asked.photo.read();
  const { colours, whiteReference } = await context.workers.run(
    'photoColours',
    { bytes },
    { owner: context.asker.id },
  );
  const [main] = colours;
  if (!main) return refuse('photo-bar-unseen', {});
  if (!whiteReference) return refuse('calibration-photo-without-white', {});
  const { lab, hex, plusMinus } = main;
  const bar = { grams: barGrams(dose, spoon, measures), lab, plusMinus };
  return { bars: [...typed, bar], photo: { hex, plusMinus } };
}

function photoDose(text: string | undefined, measures: Measures): BarDose {
  if (text === undefined) return refuse('calibration-photo-without-dose', {});
  return parseBarDose(text, measures) ?? refuse('strength-unreadable', { text: excerpt(text) });
}

/** A bar made again at the same dose takes the place of the earlier one; the newest are kept. */
function withEarlier(bars: readonly TestBar[], earlier: readonly TestBar[]): readonly TestBar[] {
  const again = (one: TestBar) =>
    bars.some(({ grams }) => Math.abs(grams - one.grams) <= SAME_DOSE * Math.max(grams, one.grams));
  return [...earlier.filter(one => !again(one)), ...bars].slice(-MOST_BARS).sort((a, b) => a.grams - b.grams);
}

function dataOf(
  { item, jar, found, bars, photo, outcome, others }: CalibrationView,
  { base, shades, gelled }: Batch,
): object {
  const { scale, plusMinus, before, after, doubt } = found;
  return {
    item: item.id,
    name: item.name,
    lot: { number: item.lot.number, label: item.lot.label },
    colourant: jar.colourant.id,
    scale,
    plusMinus,
    fit: { before, after },
    doubt,
    kept: outcome !== 'not-kept',
    sharing: outcome,
    others,
    bars: bars.map(bar => {
      const fit = found.bars.find(({ grams }) => grams === bar.grams);
      return {
        ...bar,
        hex: hexOfLab(bar.lab),
        predicted: fit && { lab: fit.predicted, hex: fit.predictedHex },
        deltaE: fit?.deltaE,
      };
    }),
    photo,
    base: { written: base, shades, gelled },
  };
}
