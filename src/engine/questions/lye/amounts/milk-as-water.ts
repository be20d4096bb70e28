import { additiveById, knownAdditive } from '../../../batch/additives/additives.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { unlessRefused } from '../../../refusal.ts';
import type { LyeQuestion } from '../question.ts';
import { gramsOf, MASS } from './words.ts';

const ONE_LIQUID = new RegExp(`^(.+?) (${MASS})$`, 'u');
const OIL_MASS = new RegExp(MASS, 'gu');
/** Water, percent of the oils, within which lye dissolves and a bar still sets (common practice, no source). */
const [LEAST_WATER, MOST_WATER] = [26, 45];

/**
 * Milk that was weighed to stand in for all the water is the water of its recipe: a little more than is usual is no reason to refuse
 * it. Takes a line of `prepared`, in which that is “as the liquid”. Any other recipe comes back as it was. Pure.
 */
export function withMilkAsWater(told: LyeQuestion, line: string): LyeQuestion {
  const { oils, water, additives, size } = told.given;
  if (!line.includes('as the liquid') || oils === undefined || water !== undefined || additives === undefined)
    return told;
  const [, name = '', mass = ''] = ONE_LIQUID.exec(additives) ?? [];
  const id = knownAdditive(name);
  if (id === undefined) return told;
  const additive = additiveById(id);
  const oilGrams = size === undefined ? weighed(oils) : gramsOf(size);
  if (additive.liquid === undefined || oilGrams === undefined || !(oilGrams > 0)) return told;
  const share = (100 * gramsOf(mass) * additive.water) / oilGrams;
  if (!(share >= LEAST_WATER && share <= MOST_WATER)) return told;
  return { ...told, given: { ...told.given, water: `${figureText(share)}% of oils` } };
}

/** What oils weigh that are all told by weight; undefined where one is not. */
function weighed(oils: string): number | undefined {
  const masses = oils.match(OIL_MASS) ?? [];
  const list = unlessRefused(() => parseOils(oils));
  return list?.shares.length === masses.length
    ? masses.reduce((sum, mass) => sum + gramsOf(mass), 0)
    : undefined;
}
