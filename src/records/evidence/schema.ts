import { z } from 'zod';
import { moment, recordKind } from '../record.ts';

/** What became of a colour in a finished bar. */
export const results = ['held', 'shifted', 'faded', 'bled'] as const;
/** How the soap was made: cool and left alone, brought through gel, or otherwise. */
export const processes = ['ambient', 'gel', 'other'] as const;
export type Process = (typeof processes)[number];

/** One report. Who made it, on what and in which process stands in its key. */
export const reportKind = recordKind('evidence report', {
  /** Of the colour, as the chemistry names it. */
  identity: z.string().min(1),
  result: z.enum(results),
  process: z.enum(processes),
  at: moment,
  /** Age of the bar when it was looked at, weeks. */
  weeks: z.number().min(0).optional(),
  note: z.string().optional(),
  /** How strong it was, as the engine prints strengths: `pastel`, `0.5 tsp/cup`. */
  strength: z.string().optional(),
  /** What the batter was made of or looked like, in the member's words. */
  base: z.string().optional(),
  /** Where the photo was handed in; the picture itself is never kept. */
  photo: z
    .strictObject({
      channel: z.string().optional(),
      interaction: z.string(),
      attachment: z.string().optional(),
    })
    .optional(),
});

/** That an interaction has reported. */
export const idempotencyKind = recordKind('evidence once', { at: moment });
/** That a group shares. */
export const sharingKind = recordKind('evidence sharing', { group: z.string(), since: moment });
