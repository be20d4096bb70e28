import type { Context } from '../../src/conversation/context.ts';
import { oilGramsFor } from '../../src/engine/batch/fit.ts';
import { rescale } from '../../src/engine/batch/planning/rescale.ts';
import { parseRescale } from '../../src/engine/batch/planning/rescale-ask.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import type { KeptPlan, Times } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';

/**
 * A kept plan made bigger or smaller: everything in it by the factor asked, or by that of the sizes' oils where a new
 * size is named. Throws a Refusal: `rescale-out-of-range`, `factor-unreadable`, or one of reading the plan.
 */
export async function rescaled(
  plan: KeptPlan,
  to: string,
  { shelf }: Context,
): Promise<{ readonly plan: KeptPlan; readonly factor: number }> {
  const ask = parseRescale(to);
  const { request } = await readKept(plan, shelf, MEASURES[plan.spoons]);
  if (ask.by === 'factor') {
    rescale(request, ask.factor);
    return { plan: { ...plan, times: timesBy(plan.times, ask.factor) }, factor: ask.factor };
  }
  // Without portions: a factor is wanted before anything is drawn from the new pot.
  const whole = { ...request, portions: [] };
  const factor = oilGramsFor({ ...whole, size: ask.size }) / oilGramsFor(whole);
  rescale(request, factor);
  const times = { ...timesBy(plan.times, factor), size: 1 };
  return { plan: { ...plan, written: { ...plan.written, size: to }, times }, factor };
}

const timesBy = ({ size, portions, additives, liquids = 1 }: Times, factor: number): Times => ({
  size: size * factor,
  portions: portions * factor,
  additives: additives * factor,
  liquids: liquids * factor,
});
