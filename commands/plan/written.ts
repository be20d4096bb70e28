import { choice, number, text } from '../../src/conversation/option.ts';
import type { WrittenPlan } from '../../src/engine/batch/planning/written-plan.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';
import { phrases } from '../../src/words/declared.ts';

const says = phrases('plan');

/** What is picked from a list, in options and forms alike. */
export const PICKS = {
  swirl: says.swirl.choices,
  process: says.process.choices,
  material: says.material.choices,
} as const;

const long = { most: 1500 };

/** What amounts of a plan are read as, in options and forms alike. */
export const READS = { oils: 'oils', size: 'size' } as const;

/** The options that are the plan's own words. */
export const written = {
  oils: text(says.oils, { ...long, reads: READS.oils }).optional(),
  size: text(says.size, { reads: READS.size }).optional(),
  superfat: number(says.superfat, { least: -100, most: 100 }).optional(),
  lye: text(says.lye).optional(),
  water: text(says.water).optional(),
  portions: text(says.portions, long).optional(),
  fragrance: text(says.fragrance).optional(),
  additives: text(says.additives, { most: 500 }).optional(),
  liquid: text(says.liquid).optional(),
  swirl: choice(says.swirl).optional(),
  process: choice(says.process).optional(),
  material: choice(says.material).optional(),
  start: text(says.start).optional(),
  room: text(says.room).optional(),
  oven: text(says.oven).optional(),
  purity: number(says.purity, { least: 1, most: 100 }).optional(),
  scale: number(says.scale, { least: 0.001, most: 10 }).optional(),
  reserve: number(says.reserve, { least: 0, most: 100 }).optional(),
};
const WRITTEN = Object.keys(written) as (keyof WrittenPlan)[];

/** The plan's own words among what was given. */
export const wordsGiven = (given: Readonly<Record<string, unknown>>): Partial<WrittenPlan> =>
  Object.fromEntries(WRITTEN.flatMap(key => (given[key] === undefined ? [] : [[key, given[key]]])));

/** Words that are written anew count once, whatever the plan was rescaled by. */
export function changed(plan: KeptPlan, words: Partial<WrittenPlan>, spoons: KeptPlan['spoons']): KeptPlan {
  const sizeless = plan.written.size === undefined && words.oils !== undefined;
  return {
    ...plan,
    written: { ...plan.written, ...words },
    // The cups are those of whoever wrote the portions.
    spoons: words.portions === undefined ? plan.spoons : spoons,
    times: {
      size: words.size !== undefined || sizeless ? 1 : plan.times.size,
      portions: words.portions === undefined ? plan.times.portions : 1,
      additives: words.additives === undefined ? plan.times.additives : 1,
      ...(words.liquid === undefined && plan.times.liquids !== undefined && { liquids: plan.times.liquids }),
    },
  };
}
