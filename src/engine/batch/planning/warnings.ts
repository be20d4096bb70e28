import { BOILING_C } from '../../heat/estimate.ts';
import { CITRIC_MOLES_PER_GRAM, CITRIC_MONOHYDRATE_MOLES_PER_GRAM } from '../additives/additive.ts';
import type { FragranceAsk } from '../additives/fragrance.ts';
import { isSaltBar } from '../bar-kind.ts';
import { aboutBlend, aboutJug, acidWarning, gramsPerMole } from '../liquids/jug-warnings.ts';
import { DEFAULT_PURITY, type PlanSuperfat, superfatPercent } from '../lye/lye.ts';
import { portionCalled } from '../portions/portion-name.ts';
import type { Filled } from '../portions/portions.ts';
import { potSuperfat } from '../portions/pot.ts';
import { type Recipe, saltGrams, saltPercentOf } from '../recipe.ts';
import type { PlanRequest, Swirl } from '../request.ts';
import { HOTTEST_START } from '../start.ts';
import type { PlanWarning } from './plan-warning.ts';

/** Percents at which a plan starts to warn (common practice). */
const HIGH_SUPERFAT = 20;
/** A salt bar is mostly coconut and made at 15 to 20 %, which carriers and rounding lift (common practice). */
const HIGH_IN_SALT_BAR = 25;
/** Percent of lauric acid: coconut and its like hold 45 to 50 (Codex CXS 210-1999). */
const MOSTLY_LAURIC = 35;
const STRONG_LYE = 40;
const WEAK_LYE = 25;
/** A rinse-off product rarely carries more fragrance; the maker's own certificate decides (IFRA category 9). */
const MUCH_FRAGRANCE = 5;
/** Rounding that moves superfat by less is within what a scale shows anyway. */
const WORTH_SAYING = 0.05;
/** Points of superfat that one who asked for another figure wants to hear of (common practice). */
const SHIFTED = 1;
/** Vanillin in the fragrance itself, percent, from which a bar turns so (common practice). */
const BROWNING = [
  [10, 'dark'],
  [5, 'brown'],
  [1, 'tan'],
  [0, 'slight'],
] as const;

/** Kilograms of oils that a household pot and stick blender still take (common practice). */
const HOUSEHOLD_KG = 10;

/** Everything worth a warning in a plan, what can hurt at once first, then the lye. `peakCoreC` as estimated. */
export function planWarnings(
  request: PlanRequest,
  recipe: Recipe,
  filled: Filled,
  { superfat, peakCoreC }: { readonly superfat: PlanSuperfat; readonly peakCoreC: number },
): readonly PlanWarning[] {
  const { startC, process } = request.heat;
  const isWrapped = (process === 'insulated' || process === 'oven') && peakCoreC < BOILING_C;
  const kilograms = recipe.oilGrams / 1000;
  return [
    ...aboutStart(startC),
    ...(peakCoreC >= BOILING_C
      ? [
          {
            id: 'boils-over',
            values: { peakC: peakCoreC, startC, sweet: recipe.totals.sugarGrams > 0 },
          } as const,
        ]
      : []),
    ...(kilograms > HOUSEHOLD_KG
      ? [{ id: 'batch-large', values: { kilograms, most: HOUSEHOLD_KG } } as const]
      : []),
    ...aboutSuperfat(request, recipe, superfat),
    ...aboutLye(request, recipe),
    ...aboutJug(recipe, filled),
    ...aboutBlend(recipe, request.heat.startC),
    ...aboutPortions(recipe, filled, superfat),
    ...(request.fragrance === undefined ? [] : aboutFragrance(request.fragrance, request.swirl)),
    ...aboutAdditives(recipe, isWrapped),
  ];
}

function aboutStart(startC: number): PlanWarning[] {
  return startC > HOTTEST_START ? [{ id: 'start-hot', values: { startC } }] : [];
}

function aboutSuperfat(
  { superfatPercent: asked }: PlanRequest,
  recipe: Recipe,
  superfat: PlanSuperfat,
): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  if (superfat.effective - asked >= SHIFTED)
    warnings.push({ id: 'superfat-shifted', values: { asked, comes: superfat.effective } });
  const usedHigh = isSaltBar(saltPercentOf(recipe)) || isMostlyLauric(recipe);
  if (superfat.effective > (usedHigh ? HIGH_IN_SALT_BAR : HIGH_SUPERFAT)) {
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

/** Soap of coconut, babassu or palm kernel strips skin, and is made at 15 to 20 % (common practice). */
const isMostlyLauric = ({ oils, oilGrams }: Recipe): boolean =>
  oils.reduce((sum, { oil, grams }) => sum + grams * (oil.profile?.['C12:0'] ?? 0), 0) >
  MOSTLY_LAURIC * oilGrams;

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
    // Dissolved lye says in a sentence of its own what its percent is of.
    if (stated === undefined && request.lye.solutionPercent === undefined)
      warnings.push({ id: 'purity-assumed', values: { alkali, percent: assumed } });
  }
  return warnings;
}

function aboutPortions(recipe: Recipe, filled: Filled, { band }: PlanSuperfat): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  const { carrierWaterGrams, taken } = filled;
  if (carrierWaterGrams > taken.holdBackGrams + 0.05) {
    const values = { carrierWaterGrams, heldBackGrams: taken.holdBackGrams };
    warnings.push({ id: 'hold-back-short', values });
  }
  if (taken.dipped.length > 0) {
    warnings.push({ id: 'dip-lowers-pot', values: { percent: potSuperfat(filled.pot) } });
  }
  for (const { name: kept, superfat, lyeConcentration } of filled.portions) {
    const name = portionCalled(kept);
    // As far below as the whole batch may be; where the whole may be lye-heavy, that is said of it already.
    const lowest = superfat - (band.typical - band.low);
    if (lowest < 0 && band.low >= 0)
      warnings.push({ id: 'portion-superfat-negative', values: { name, percent: superfat, lowest } });
    if (superfat > HIGH_SUPERFAT && potSuperfat(filled.pot) <= HIGH_SUPERFAT) {
      warnings.push({ id: 'portion-superfat-high', values: { name, percent: superfat } });
    }
    if (lyeConcentration < WEAK_LYE - 1e-9 && recipe.ways.lyeStrength >= WEAK_LYE) {
      warnings.push({ id: 'portion-lye-weak', values: { name, percent: lyeConcentration } });
    }
  }
  return warnings;
}

/** What takes its time in the pour. */
const DRAWN: ReadonlySet<Swirl> = new Set(['hanger', 'drop', 'layered']);

function aboutFragrance(
  { percentOfOils, vanillinPercent, risky = [], speeds, unknown }: FragranceAsk,
  swirl: Swirl,
): PlanWarning[] {
  const warnings = risky.map(
    ({ name: scent, risk }): PlanWarning => ({
      id: 'scent-hurts',
      values: { scent, risk },
    }),
  );
  if (vanillinPercent > 0) {
    const level = BROWNING.find(([from]) => vanillinPercent >= from)![1];
    const inSoap = (percentOfOils * vanillinPercent) / 100;
    warnings.push({ id: 'fragrance-browns', values: { level, percentOfOils: inSoap } });
  }
  if (speeds) {
    const name = speeds.how === 'often' ? speeds.name : undefined;
    warnings.push({ id: 'fragrance-speeds', values: { name, drawn: DRAWN.has(swirl) } });
  }
  if (unknown !== undefined) warnings.push({ id: 'fragrance-unknown', values: { text: unknown } });
  if (percentOfOils > MUCH_FRAGRANCE) warnings.push({ id: 'fragrance-limit', values: { percentOfOils } });
  return warnings;
}

/** What an additive's effect is warned of as; lye eaten and water replaced have numbers of their own. */
const EFFECT_WARNINGS = {
  browns: 'additive-browns',
  'drinks-water': 'additive-drinks-water',
  hardens: 'additive-hardens',
} as const;

function aboutAdditives(recipe: Recipe, wrapped: boolean): PlanWarning[] {
  return recipe.additives.flatMap(({ additive, grams }) =>
    additive.effects.flatMap((effect): PlanWarning[] => {
      if (effect === 'replaces-water') return [];
      if (effect === 'salts') {
        const salt = saltGrams(additive, grams);
        const percent = (100 * salt) / recipe.oilGrams;
        return [{ id: 'liquid-salt', values: { additive: additive.id, grams: salt, percent } }];
      }
      if (effect === 'heats') return [{ id: 'additive-heats', values: { additive: additive.id, wrapped } }];
      if (effect !== 'eats-lye') return [{ id: EFFECT_WARNINGS[effect], values: { additive: additive.id } }];
      return additive.liquid === undefined
        ? [citricWarning(grams, additive.id === 'citric-anhydrous' ? 'anhydrous' : 'monohydrate', recipe)]
        : acidWarning(additive.id, grams, grams * additive.acid, recipe);
    }),
  );
}

/** How much lye the acid eats, and how far superfat would be off if the jar holds the other of the two that are sold. */
function citricWarning(grams: number, form: 'monohydrate' | 'anhydrous', recipe: Recipe): PlanWarning {
  const perGram = { monohydrate: CITRIC_MONOHYDRATE_MOLES_PER_GRAM, anhydrous: CITRIC_MOLES_PER_GRAM };
  const other = form === 'monohydrate' ? 'anhydrous' : 'monohydrate';
  const now = superfatPercent(recipe.hydroxide, recipe.demand.typical);
  const less = grams * (perGram[other] - perGram[form]);
  const then = superfatPercent(recipe.hydroxide - less, recipe.demand.typical);
  const lyeGrams = grams * perGram[form] * gramsPerMole(recipe);
  return { id: 'citric-eats-lye', values: { grams, lyeGrams, points: Math.abs(then - now), form } };
}
