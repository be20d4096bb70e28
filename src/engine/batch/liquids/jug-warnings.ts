import type { AdditiveId } from '../additives/additive.ts';
import { additiveById } from '../additives/additives.ts';
import { isPaste, isSaltBar, isSoft, SALT_BAR_HOURS } from '../bar-kind.ts';
import { solidAt } from '../blend-limits.ts';
import { hydroxideDemand, superfatPercent } from '../lye/lye.ts';
import { oilById } from '../oils/find-oil.ts';
import type { PlanWarning } from '../planning/plan-warning.ts';
import type { Filled } from '../portions/portions.ts';
import { batchWaterGrams, kohShareOf, type Recipe, saltPercentOf } from '../recipe.ts';

/** Grams of lye below which nobody need hear of it. */
const WORTH_WEIGHING = 0.1;

/** What a sour liquid uses up; nothing where it is next to nothing. */
export function acidWarning(
  additive: AdditiveId,
  grams: number,
  moles: number,
  recipe: Recipe,
): PlanWarning[] {
  const lyeGrams = moles * gramsPerMole(recipe);
  return lyeGrams < WORTH_WEIGHING ? [] : [{ id: 'liquid-eats-lye', values: { additive, grams, lyeGrams } }];
}

/** Grams of alkali, as weighed, in a mole of its hydroxide. */
export const gramsPerMole = ({ lyeGrams, hydroxide, totals }: Recipe) =>
  lyeGrams / (hydroxide + totals.acidMoles);

/** Percent of lye in the jug from which it comes near boiling (common practice). */
const HOT_JUG = 40;

/** Liquids whose gas alone makes lye boil over. */
const FIZZES: ReadonlySet<AdditiveId> = new Set(['beer', 'cider', 'kombucha']);

/** How the lye is dissolved, and what each liquid asks for. */
export function aboutJug(recipe: Recipe, { jug, carrierWaterGrams }: Filled): PlanWarning[] {
  const warnings: PlanWarning[] = [];
  if (jug.solution) warnings.push({ id: 'lye-kept-dissolved', values: { percent: jug.solution.percent } });
  if (!jug.solution && jug.strength > HOT_JUG + 1e-9) {
    warnings.push({ id: 'jug-strong', values: { percent: jug.strength } });
  }
  const over = batchWaterGrams(recipe) - recipe.askedWaterGrams;
  if (over > 0.5 && carrierWaterGrams === 0)
    warnings.push({ id: 'water-over-asked', values: { grams: over } });
  for (const { id: additive, grams, into, frozen } of jug.liquids) {
    const percent = additiveById(additive).liquid?.alcoholPercent ?? 0;
    if (percent > 0)
      warnings.push({ id: 'boil-off-alcohol', values: { additive, percent, fizzes: FIZZES.has(additive) } });
    if (additive === 'hydrosol') warnings.push({ id: 'liquid-read-label', values: { additive } });
    if (into === 'oils') warnings.push({ id: 'liquid-goes-into-oils', values: { additive, grams } });
    if (frozen && additive !== 'ice') warnings.push({ id: 'milk-keep-cold', values: { additive } });
  }
  return [...warnings, ...aboutLiquidFat(recipe)];
}

/** Points of superfat from which the fat of a liquid is told. */
const FELT_FAT = 0.3;

function aboutLiquidFat({ additives, demand, hydroxide }: Recipe): PlanWarning[] {
  return additives.flatMap(({ additive, grams }): PlanWarning[] => {
    if (additive.fat === undefined) return [];
    const fat = { oil: oilById(additive.fat.oil), grams: grams * additive.fat.share };
    const without = demand.typical - hydroxideDemand([fat]).typical;
    const points = superfatPercent(hydroxide, demand.typical) - superfatPercent(hydroxide, without);
    return points < FELT_FAT ? [] : [{ id: 'liquid-fat', values: { additive: additive.id, points } }];
  });
}

/** Percent of the oils from which a fatty acid is felt at the blender, and a wax in the bar (common practice). */
const FELT_ACID = 3;
const FELT_WAX = 5;

/** What kind of soap the blend and its lye make. */
export function aboutBlend(recipe: Recipe, startC: number): PlanWarning[] {
  const kohShare = kohShareOf(recipe);
  const salt = saltPercentOf(recipe);
  const percentOf = (grams: number) => (100 * grams) / recipe.oilGrams;
  return [
    ...solidAt(recipe.oils, startC).map(
      ({ oil, percent, meltsC }): PlanWarning => ({
        id: 'melts-above-pour',
        values: { oil: oil.names, percent, meltsC, startC },
      }),
    ),
    ...recipe.oils.flatMap(({ oil, grams }): PlanWarning[] => {
      const values = { oil: oil.names, percent: percentOf(grams) };
      if (oil.oilClass === 'fatty-acid' && values.percent >= FELT_ACID) {
        return [{ id: 'acid-thickens-at-once', values }];
      }
      return oil.oilClass === 'wax' && values.percent >= FELT_WAX ? [{ id: 'wax-stays', values }] : [];
    }),
    ...(isPaste(kohShare) ? [{ id: 'koh-paste', values: { percent: 100 * kohShare } } as const] : []),
    ...(isSoft(kohShare) ? [{ id: 'koh-soft', values: { percent: 100 * kohShare } } as const] : []),
    ...(isSaltBar(salt) && !isPaste(kohShare)
      ? [{ id: 'salt-bar', values: { percent: salt, toHours: SALT_BAR_HOURS[1] } } as const]
      : []),
  ];
}
