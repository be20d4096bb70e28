import { z } from 'zod';
import { milligrams, moment, recordKind } from '../record.ts';

/* What a shelf writes down. Masses are whole milligrams in here and grams everywhere else. */

const action = z.enum([
  'add',
  'use',
  'restock',
  'remove',
  'dish-test',
  'weigh',
  'new-lot',
  'low-mark',
  'ingredients',
  'describe',
  'calibrate',
]);

export const itemKind = recordKind('shelf item', {
  /** The cause that added it; also a part of its key, encoded there. */
  id: z.string().min(1),
  name: z.string().min(1),
  colourant: z.string().optional(),
  pigmentFraction: z.number().gt(0).max(1).optional(),
  /** So much money for so many grams of what is in it. */
  price: z
    .object({ amount: z.number().positive(), currency: z.string().min(1), grams: z.number().positive() })
    .optional(),
  since: moment,
});

/** The checkpoint of the ledger: written with each of its lines, so that no one ever adds them all up. */
export const stockKind = recordKind('stock', { line: z.int().min(1), left: milligrams.min(0) });

export const ledgerKind = recordKind('ledger line', {
  at: moment,
  action: z.enum(['add', 'use', 'restock', 'new-lot']),
  change: milligrams,
  left: milligrams.min(0),
  lot: z.int().min(1),
  cause: z.string(),
});

export const lowMarkKind = recordKind('low mark', { at: milligrams.min(0) });

export const ingredientsKind = recordKind('ingredients', {
  text: z.string(),
  kind: z.string().optional(),
  components: z.array(z.string()).optional(),
  verdict: z.string().optional(),
  permitted: z.object({ us: z.string(), eu: z.string() }).optional(),
});

export const lotKind = recordKind('lot', { label: z.string().optional(), since: moment });
export const dishTestKind = recordKind('dish test', {
  result: z.enum(['water', 'oil', 'neither']),
  at: moment,
});
export const spoonWeightKind = recordKind('spoon weight', {
  grams: z.number().positive(),
  spoonMillilitres: z.number().positive(),
  at: moment,
});
export const calibrationKind = recordKind('calibration', {
  found: z.record(z.string(), z.json()),
  at: moment,
});

/** What test bars and cured batches together say of one lot, as the colourant it then was. */
export const learntKind = recordKind('learnt jar', {
  colourant: z.string(),
  parameters: z.array(z.number()).length(4),
  covariance: z.array(z.array(z.number()).length(4)).length(4),
  /** What its bars were off beyond their readings, CIEDE2000. */
  unexplained: z.number().exactOptional(),
  /** How many cured bars it rests on. */
  bars: z.int().min(1),
  at: moment,
});

export const nameKind = recordKind('shelf name', { item: z.string() });
export const goneKind = recordKind('removed item', { at: moment });

/** What a change did, so that its second delivery can be told the same. */
export const idempotencyKind = recordKind('shelf change', {
  action,
  id: z.string(),
  name: z.string(),
  change: milligrams.optional(),
  left: milligrams.optional(),
  lowAt: milligrams.optional(),
  low: z.boolean(),
  lot: z.int().min(1),
  /** When it was made; absent in what an earlier program wrote, until a night dates it. */
  at: moment.optional(),
  /** The interaction that made it, where its cause is a button's. */
  press: z.string().optional(),
});
