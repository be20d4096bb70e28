import { z } from 'zod';
import { moment, recordKind } from '../record.ts';

/* What is written down of a plan: its own words, and what they meant when it was written. */

const line = z.string();

const writtenPlan = z.object({
  oils: line,
  size: line.exactOptional(),
  superfat: z.number().exactOptional(),
  lye: line.exactOptional(),
  purity: z.number().exactOptional(),
  water: line.exactOptional(),
  portions: line.exactOptional(),
  additives: line.exactOptional(),
  liquid: line.exactOptional(),
  fragrance: line.exactOptional(),
  scale: z.number().exactOptional(),
  reserve: z.number().exactOptional(),
  swirl: z.enum(['in-the-pot', 'drop', 'layered', 'hanger', 'single']).exactOptional(),
  process: z.enum(['ambient', 'insulated', 'oven', 'fridge']).exactOptional(),
  material: z.enum(['silicone', 'wood', 'plastic', 'cardboard']).exactOptional(),
  room: line.exactOptional(),
  start: line.exactOptional(),
  oven: line.exactOptional(),
});

export const planFields = {
  written: writtenPlan,
  /** Whose spoons and cups its words count in. */
  spoons: z.enum(['us', 'label', 'metric']),
  /** How many times as much as its words say, once it was rescaled. */
  times: z.object({
    size: z.number().positive(),
    portions: z.number().positive(),
    additives: z.number().positive(),
    /** Missing in recipes kept before liquids were an option of their own. */
    liquids: z.number().positive().exactOptional(),
  }),
  /** What its colours were found to be: others have other jars, and jars are emptied. */
  colours: z.array(
    z.object({
      text: z.string(),
      colourant: z.string(),
      pigmentFraction: z.number().gt(0).max(1).exactOptional(),
    }),
  ),
};

export const recipeKind = recordKind('recipe', {
  name: z.string().min(1),
  ...planFields,
  /** The member who saved or shared it, and how they were called then. */
  by: z.string(),
  byName: z.string(),
  at: moment,
  cause: z.string(),
});

/** A plan as it was last answered, and what one press takes off the shelf for it. */
export const recentPlanKind = recordKind('late plan', {
  ...planFields,
  uses: z.array(z.object({ item: z.string(), milligrams: z.int().positive() })),
  at: moment,
});

export const removalKind = recordKind('recipe removal', { name: z.string(), at: moment });
