import { z } from 'zod';
import { LANGUAGES } from '../../engine/language.ts';
import { planFields } from '../recipes/schema.ts';
import { milligrams, moment, recordKind } from '../record.ts';

/* What is written down of a batch that was made. Masses of colourants are whole milligrams in here. */

const lab = z.object({ l: z.number(), a: z.number(), b: z.number() });
const band = z.object({ low: z.number(), typical: z.number(), high: z.number() });
export const shades = z.array(
  z.object({ shade: z.enum(['white', 'cream', 'yellow', 'green', 'deep']), share: z.number() }),
);

const colour = z.object({
  /** As its maker calls it. */
  name: z.string(),
  /** Id of the catalogue. */
  colourant: z.string(),
  /** The jar it came from, and its lot then. */
  item: z.string().exactOptional(),
  lot: z.int().exactOptional(),
  label: z.string().exactOptional(),
  /** Of what is in the jar: its maker's level teaspoons, and what they weigh. */
  teaspoons: z.number().min(0),
  milligrams: milligrams.min(0),
  /** Pigment, grams per 100 g of batter. */
  pigment: z.number().min(0),
});

const portion = z.object({
  name: z.string(),
  grams: z.number().positive(),
  millilitres: z.number().positive(),
  colours: z.array(colour),
  /** What was foretold when it was poured. */
  predicted: z.object({ lab, plusMinus: z.number() }).exactOptional(),
});

/** What was poured. */
export const batchKind = recordKind('batch', {
  name: z.string().min(1),
  at: moment,
  cause: z.string(),
  /** Where it was noted, and the language its maker is told things in. */
  group: z.string(),
  language: z.enum(LANGUAGES),
  /** The plan it came from, in its words, where there was one; and its name. */
  plan: z.object(planFields).exactOptional(),
  recipe: z.string().exactOptional(),
  /** What was done otherwise, and what of that is only a note. */
  changes: z.string().exactOptional(),
  asides: z.array(z.string()),
  shades,
  gelled: z.boolean(),
  /** Said by its maker, not foretold. */
  gelSaid: z.boolean(),
  peak: z.object({ hours: z.number(), celsius: z.number() }).exactOptional(),
  cure: band,
  lyeConcentration: z.number(),
  kohShare: z.number(),
  saltPercent: z.number(),
  isLoaf: z.boolean(),
  portions: z.array(portion),
  /** What left the shelf for it. */
  taken: z.array(z.object({ item: z.string(), milligrams: milligrams.positive() })),
});

/** What was measured on one portion of a cured bar. */
const measured = z.object({
  portion: z.int().min(0),
  lab,
  plusMinus: z.number().positive(),
  /** Why it teaches nothing; missing where it may. */
  unclean: z.enum(['no-white', 'neon', 'plain', 'unsure', 'retest']).exactOptional(),
});

const grams = z.array(z.number().positive());

/** One thing that happened to a batch after it was poured. */
export const eventKind = recordKind('batch event', {
  at: moment,
  cause: z.string(),
  did: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('cut'), grams: grams.exactOptional() }),
    z.object({ kind: z.literal('weighed'), grams }),
    z.object({
      kind: z.literal('cured'),
      grams: grams.exactOptional(),
      measured: z.array(measured),
      by: z.enum(['photo', 'words']).exactOptional(),
    }),
    z.object({ kind: z.literal('noted'), text: z.string() }),
    z.object({ kind: z.literal('done'), stage: z.string() }),
    z.object({ kind: z.literal('put-off'), stage: z.string(), until: moment }),
    z.object({ kind: z.literal('told'), stage: z.string(), due: moment }),
    z.object({ kind: z.literal('stopped') }),
    z.object({ kind: z.literal('resumed') }),
  ]),
});

export const photoKind = recordKind('batch photo', { base64: z.string() });
export const sharedKind = recordKind('shared batch', {
  member: z.string(),
  batch: z.string(),
  byName: z.string(),
  at: moment,
});
export const reminderKind = recordKind('batch reminder', { member: z.string() });
