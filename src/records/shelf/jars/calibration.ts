import { z } from 'zod';
import { StoreFailure } from '../../failure.ts';
import type { Calibration, ShelfItem } from '../shelf.ts';

const belief = z.object({ ln: z.number(), spread: z.number().positive() });
/** Natural logarithms of the scales on K and S, as `engine/colour` believes them. */
export const scaleBelief = z.object({ k: belief, s: belief });

const schema = z.object({
  /** The colourant it was fitted as: described anew, the item is another one. */
  colourant: z.string(),
  scale: z.object({ k: z.number().positive(), s: z.number().positive() }),
  /** CIEDE2000 left at full dose. */
  plusMinus: z.number().positive(),
  evidence: scaleBelief,
  /** The base the bars were made of, as it was written, and whether it gelled. */
  base: z.string(),
  gelled: z.boolean(),
  bars: z.array(
    z.object({
      /** Per 100 g of batter; 0 for a plain bar. */
      grams: z.number().min(0),
      lab: z.object({ l: z.number(), a: z.number(), b: z.number() }),
      /** Of the reading, CIEDE2000. */
      plusMinus: z.number().positive(),
    }),
  ),
});

/** What test bars said of one lot. */
export type LotCalibration = z.output<typeof schema>;

/** As it is kept with the lot. */
export const calibrationRecord = (calibration: LotCalibration): Calibration => schema.parse(calibration);

/**
 * What test bars said of the item's lot as the colourant it is now; undefined where there were none. Throws a StoreFailure
 * when what is kept does not read as that.
 */
export function calibrationOf({ colourant, lot }: ShelfItem): LotCalibration | undefined {
  if (lot.calibration === undefined) return undefined;
  const kept = schema.safeParse(lot.calibration);
  if (!kept.success) throw new StoreFailure('corrupt', 'read', 'calibration of a lot');
  return kept.data.colourant === colourant ? kept.data : undefined;
}
