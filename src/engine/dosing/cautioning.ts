import { testedCarrier } from '../dispersion/carrier.ts';
import type { Measures } from '../quantities/units.ts';
import type { Caution } from './cautions.ts';
import { isAboveCeiling, tidy, type Wanted } from './dose.ts';
import type { Dose, DoseAnswer, DoseAsked, DoseRequest } from './request.ts';

/** All that a caution may follow from. */
export type Dosed = {
  readonly request: DoseRequest;
  readonly wanted: readonly Wanted[];
  readonly doses: readonly Dose[];
  /** Sum of dose over ceiling before scaling, of all colourants and of white pigments alone. */
  readonly fullness: { readonly all: number; readonly whites: number };
  /** What every dose was multiplied by to fit; 1 when they fitted. */
  readonly scale: number;
  readonly shifts: Pick<DoseAnswer, 'superfatShift' | 'lyeShift'>;
  readonly measures: Measures;
  readonly portionMillilitres: number;
  /** Oils in the portion, g. */
  readonly oilsGrams: number;
};

/** Millilitres below which a colour is no matter of spoons: the tip of a toothpick (common practice). */
const SMALL_PORTION = 50;
/** Half a percent point either way is within the error of a kitchen scale: not worth a caution. */
const WORTH_SAYING = 0.5;

/** What to be careful of, the hand's safety first, then the numbers that were changed, then the bar. */
export function cautionsFor(dosed: Dosed): readonly Caution[] {
  const { request, wanted, doses } = dosed;
  const cautions: Caution[] = [{ id: 'raw-batter', values: {} }];
  if (request.colourants.some(({ premix }) => premix === undefined))
    cautions.push({ id: 'dust', values: {} });
  const { portionMillilitres } = dosed;
  if (
    portionMillilitres < SMALL_PORTION - 0.5 &&
    request.colourants.some(({ premix }) => premix === undefined)
  )
    cautions.push({ id: 'portion-small', values: { millilitres: portionMillilitres } });
  cautions.push(...aboutAmounts(dosed));
  cautions.push(...wanted.flatMap((one, at) => aboutColourant(one, doses[at]!, dosed)));
  cautions.push(...aboutPortion(dosed));
  return unrepeated(cautions);
}

function howSaid({ strength, timesKind = 1 }: DoseAsked): 'amount' | 'depth' | 'depth-of-weak-jar' {
  if (strength.by !== 'name' && strength.by !== 'share') return 'amount';
  return timesKind < 1 ? 'depth-of-weak-jar' : 'depth';
}

function aboutAmounts({ wanted, fullness, scale, measures }: Dosed): Caution[] {
  const { teaspoon } = measures;
  const capped = wanted.filter(isAboveCeiling).map(
    ({ asked, askedMillilitres, ceilingMillilitres }): Caution => ({
      id: 'capped-at-ceiling',
      values: {
        colourant: asked.colourant.names,
        said: howSaid(asked),
        askedTeaspoons: tidy(askedMillilitres / teaspoon),
        ceilingTeaspoons: tidy(ceilingMillilitres / teaspoon),
      },
    }),
  );
  const percent = Math.round(scale * 100);
  if (scale === 1) return capped;
  return [...capped, { id: fullness.whites > 1 ? 'whites-scaled' : 'mix-scaled', values: { percent } }];
}

function aboutColourant(wanted: Wanted, dose: Dose, { measures, oilsGrams }: Dosed): Caution[] {
  const { colourant, strength, premix, dishTest, carrier } = wanted.asked;
  const named = { colourant: colourant.names };
  const ceilingTeaspoons = tidy(wanted.ceilingMillilitres / measures.teaspoon);
  const { behaviour } = colourant.alkali;
  const tested = testedCarrier(colourant, dishTest);
  const aboveFull = isAboveFull(wanted, dose);
  const cautions: (Caution | false)[] = [
    strength.by === 'percent-of-oils' && {
      id: 'percent-of-oils',
      values: { ...named, percent: strength.percent, oilsGrams: Math.round(oilsGrams) },
    },
    colourant.legal !== undefined && {
      id: 'capped-by-law',
      values: {
        ...named,
        law: colourant.legal.law,
        percent: Number((colourant.legal.share * 100).toPrecision(3)),
      },
    },
    premix?.by === 'unknown' && { id: 'premix-strength-unknown', values: named },
    dose.carrier.why === 'untested-lot' && {
      id: 'dish-test-first',
      values: { ...named, carrier: dose.carrier.choice },
    },
    premix === undefined &&
      carrier !== undefined &&
      tested !== undefined &&
      carrier !== tested &&
      carrier !== 'glycerin' && { id: 'dish-test-disagrees', values: { ...named, tested, asked: carrier } },
    colourant.kind === 'white' && { id: 'brittle', values: { ceilingTeaspoons } },
    LATHERING.has(colourant.kind) &&
      aboveFull && { id: 'coloured-lather', values: { ...named, ceilingTeaspoons } },
    STAINING.has(colourant.kind) && { id: 'staining', values: named },
    behaviour !== 'stable' && behaviour !== 'never' && { id: 'lye-changes', values: { ...named, behaviour } },
    colourant.light !== 'holds' && { id: 'fades-in-light', values: named },
  ];
  return cautions.filter(caution => caution !== false);
}

const LATHERING: ReadonlySet<string> = new Set(['oxide', 'ultramarine', 'chromium', 'carbon']);
const STAINING: ReadonlySet<string> = new Set(['lake', 'dye', 'carbon']);

/** Above the full dose, up to the ceiling: where the lather begins to take colour. */
function isAboveFull({ asked }: Wanted, { ceilingShare }: Dose): boolean {
  return (
    ceilingShare > (asked.colourant.dose.fullTspPerCup / asked.colourant.dose.ceilingTspPerCup) * (1 + 1e-6)
  );
}

function aboutPortion({ request, doses, shifts }: Dosed): Caution[] {
  const { superfatShift: oil, lyeShift: water } = shifts;
  const converted =
    request.batter === undefined && (request.portion.of === 'oils' || request.portion.measure === 'mass');
  const cautions: (Caution | false)[] = [
    doses.some(({ carrier }) => carrier.wet === 'froth') && { id: 'froth-cup-only', values: {} },
    doses.some(({ carrier }) => carrier.blend === 'stick-blend') && {
      id: 'stick-blend-thickens',
      values: {},
    },
    oil !== undefined &&
      oil.toPercent - oil.fromPercent >= WORTH_SAYING && {
        id: 'superfat-rises',
        values: { from: oil.fromPercent, to: oil.toPercent },
      },
    water !== undefined &&
      water.fromPercent - water.toPercent >= WORTH_SAYING && {
        id: 'lye-thins',
        values: { from: water.fromPercent, to: water.toPercent },
      },
    converted && { id: 'typical-batter', values: {} },
  ];
  return cautions.filter(caution => caution !== false);
}

/** The same sentence twice helps nobody. */
function unrepeated(cautions: readonly Caution[]): readonly Caution[] {
  const seen = new Map(cautions.map(caution => [JSON.stringify(caution), caution]));
  return [...seen.values()];
}
