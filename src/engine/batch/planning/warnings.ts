import { CITRIC_MONOHYDRATE_RATIO } from '../additives.ts';
import { DEFAULT_PURITY, superfatPercent } from '../lye/lye.ts';
import type { Oil } from '../oils/oil.ts';
import type { Filled } from '../portions/portions.ts';
import { potSuperfat } from '../portions/pot.ts';
import type { Recipe } from '../recipe.ts';
import type { AdditiveId, FragranceAsk, PlanRequest } from '../request.ts';
import type { PlanAnswer } from './plan-answer.ts';

/** Every warning a plan can carry, with the values its sentence needs. Grams, and percents 0 to 100. */
export interface PlanWarnings {
  'superfat-high': { percent: number };
  'superfat-may-go-negative': { lowest: number; oil: Oil['names']; low: number; high: number };
  'lye-strong': { percent: number };
  'lye-weak': { percent: number };
  'lye-rounded-down': { grams: number; points: number };
  'purity-assumed': { alkali: 'NaOH' | 'KOH'; percent: number };
  'hold-back-short': { carrierWaterGrams: number; heldBackGrams: number };
  'dip-lowers-pot': { percent: number };
  'portion-superfat-high': { name: string; percent: number };
  'portion-lye-weak': { name: string; percent: number };
  'fragrance-browns': { level: 'slight' | 'tan' | 'brown' | 'dark'; percentOfOils: number };
  'fragrance-limit': { percentOfOils: number };
  'additive-heats': { additive: AdditiveId };
  'additive-browns': { additive: AdditiveId };
  'additive-drinks-water': { additive: AdditiveId };
  'additive-hardens': { additive: AdditiveId };
  'milk-keep-cold': { additive: AdditiveId };
  'citric-eats-lye': { grams: number; lyeGrams: number; points: number };
}
export type PlanWarning = {
  [Id in keyof PlanWarnings]: { readonly id: Id; readonly values: PlanWarnings[Id] };
}[keyof PlanWarnings];

/** Percents at which a plan starts to warn (common practice). */
const HIGH_SUPERFAT = 20;
const STRONG_LYE = 40;
const WEAK_LYE = 25;
/** A rinse-off product rarely carries more fragrance; the maker's own certificate decides (IFRA category 9). */
const MUCH_FRAGRANCE = 5;
/** Rounding that moves superfat by less is within what a scale shows anyway. */
const WORTH_SAYING = 0.05;
/** Vanillin in the fragrance itself, percent, from which a bar turns so (common practice). */
const BROWNING = [
  [10, 'dark'],
  [5, 'brown'],
  [1, 'tan'],
  [0, 'slight'],
] as const;

/** Everything worth a warning in a plan, the lye first. */
export function planWarnings(
  request: PlanRequest,
  recipe: Recipe,
  filled: Filled,
  superfat: PlanAnswer['superfat'],
): readonly PlanWarning[] {
  return [
    ...aboutSuperfat(recipe, superfat),
    ...aboutLye(request, recipe),
    ...aboutPortions(recipe, filled),
    ...(request.fragrance === undefined ? [] : aboutFragrance(request.fragrance)),
    ...aboutAdditives(recipe),
  ];
}

function aboutSuperfat(recipe: Recipe, superfat: PlanAnswer['superfat']): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  if (superfat.effective > HIGH_SUPERFAT) {
    warnings.push({ id: 'superfat-high', values: { percent: superfat.effective } });
  }
  if (superfat.band.low < 0) {
    const { oil } = widestOil(recipe);
    const { low, high } = oil.saponification;
    const values = { lowest: superfat.band.low, oil: oil.names, low, high };
    warnings.push({ id: 'superfat-may-go-negative', values });
  }
  return warnings;
}

/** The oil whose range makes the lye least certain. */
function widestOil(recipe: Recipe) {
  const below = ({ oil, grams }: Recipe['oils'][number]) =>
    grams * (oil.saponification.typical - oil.saponification.low);
  return recipe.oils.reduce((widest, one) => (below(one) > below(widest) ? one : widest));
}

function aboutLye(request: PlanRequest, recipe: Recipe): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  const percent = recipe.ways.lyeStrength;
  if (percent > STRONG_LYE + 1e-9) warnings.push({ id: 'lye-strong', values: { percent } });
  if (percent < WEAK_LYE - 1e-9) warnings.push({ id: 'lye-weak', values: { percent } });
  const grams = recipe.lye.reduce((sum, part) => sum + part.exactGrams - part.grams, 0);
  const exact = recipe.lye.reduce((sum, part) => sum + part.exactGrams, 0);
  const points = ((100 - request.superfatPercent) * grams) / exact;
  if (points > WORTH_SAYING) warnings.push({ id: 'lye-rounded-down', values: { grams, points } });
  for (const { alkali } of recipe.lye) {
    const stated = alkali === 'NaOH' ? request.lye.naohPurity : request.lye.kohPurity;
    const assumed = 100 * DEFAULT_PURITY[alkali];
    if (stated === undefined) warnings.push({ id: 'purity-assumed', values: { alkali, percent: assumed } });
  }
  return warnings;
}

function aboutPortions(recipe: Recipe, filled: Filled): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  const { carrierWaterGrams, taken } = filled;
  if (carrierWaterGrams > taken.holdBackGrams + 0.05) {
    const values = { carrierWaterGrams, heldBackGrams: taken.holdBackGrams };
    warnings.push({ id: 'hold-back-short', values });
  }
  if (taken.dipped.length > 0) {
    warnings.push({ id: 'dip-lowers-pot', values: { percent: potSuperfat(filled.pot) } });
  }
  for (const { name, superfat, lyeConcentration } of filled.portions) {
    if (superfat > HIGH_SUPERFAT && potSuperfat(filled.pot) <= HIGH_SUPERFAT) {
      warnings.push({ id: 'portion-superfat-high', values: { name, percent: superfat } });
    }
    if (lyeConcentration < WEAK_LYE - 1e-9 && recipe.ways.lyeStrength >= WEAK_LYE) {
      warnings.push({ id: 'portion-lye-weak', values: { name, percent: lyeConcentration } });
    }
  }
  return warnings;
}

function aboutFragrance({ percentOfOils, vanillinPercent }: FragranceAsk): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  if (vanillinPercent > 0) {
    const level = BROWNING.find(([from]) => vanillinPercent >= from)![1];
    const inSoap = (percentOfOils * vanillinPercent) / 100;
    warnings.push({ id: 'fragrance-browns', values: { level, percentOfOils: inSoap } });
  }
  if (percentOfOils > MUCH_FRAGRANCE) warnings.push({ id: 'fragrance-limit', values: { percentOfOils } });
  return warnings;
}

/** What an additive's effect is warned of as; lye eaten has numbers of its own. */
const EFFECT_WARNINGS = {
  heats: 'additive-heats',
  browns: 'additive-browns',
  'drinks-water': 'additive-drinks-water',
  hardens: 'additive-hardens',
  'replaces-water': 'milk-keep-cold',
} as const;

function aboutAdditives(recipe: Recipe): PlanWarning[] {
  return recipe.additives.flatMap(({ additive, grams }) =>
    additive.effects.map(
      (effect): PlanWarning =>
        effect === 'eats-lye'
          ? citricWarning(grams, grams * additive.acid, recipe)
          : { id: EFFECT_WARNINGS[effect], values: { additive: additive.id } },
    ),
  );
}

/** How much lye the acid eats, and what is left over if the jar holds the monohydrate instead. */
function citricWarning(grams: number, moles: number, recipe: Recipe): PlanWarning {
  const perMole = recipe.lyeGrams / (recipe.hydroxide + recipe.totals.acidMoles);
  const unused = moles * (1 - CITRIC_MONOHYDRATE_RATIO);
  const now = superfatPercent(recipe.hydroxide, recipe.demand.typical);
  const then = superfatPercent(recipe.hydroxide + unused, recipe.demand.typical);
  return { id: 'citric-eats-lye', values: { grams, lyeGrams: moles * perMole, points: now - then } };
}
