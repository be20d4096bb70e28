import { z } from 'zod';
import { CAUSE_IDS } from '../../engine/flaws/cause.ts';
import { FINDING_IDS, type FindingId } from '../../engine/flaws/findings.ts';
import { moment, recordKind } from '../record.ts';

/*
 * What is remembered of a flaw somebody asked about: numbers and words, and the picture only where they agreed to give it
 * once they knew what it was.
 */

const finding = z.enum(FINDING_IDS as readonly [FindingId, ...FindingId[]]);
const box = z.object({ x: z.number(), y: z.number(), width: z.number(), height: z.number() });
const colour = z.object({
  lab: z.object({ l: z.number(), a: z.number(), b: z.number() }),
  hex: z.string(),
  share: z.number(),
  plusMinus: z.number(),
});

/** What a photo showed, in fractions of the picture. */
const photo = z.object({
  /** How many pictures there were; the first was read. */
  pictures: z.int().positive(),
  bars: z.array(box),
  whiteReference: box.exactOptional(),
  colours: z.array(colour),
  /** Why it was not read at all. */
  unread: z.enum(['no-soap', 'dark', 'blur']).exactOptional(),
  /** What kept the picture from showing more. */
  poor: z.array(z.enum(['blur', 'noise', 'glare', 'resolution'])),
  findings: z.array(
    z.object({
      id: z.string(),
      /** What it is evidence of, where it is of anything. */
      finding: finding.exactOptional(),
      answer: z.enum(['seen', 'possibly']).exactOptional(),
      strength: z.number(),
      confidence: z.number(),
      /** How much oftener it is so answered where the finding is than where it is not. */
      ratio: z.number().positive().exactOptional(),
      region: box,
    }),
  ),
});

const rate = z.object({
  portion: z.string().exactOptional(),
  colourant: z.string(),
  kind: z.enum([
    'oxide',
    'ultramarine',
    'chromium',
    'mica',
    'neon',
    'white',
    'lake',
    'dye',
    'carbon',
    'clay',
    'botanical',
  ]),
  perCup: z.number(),
  full: z.number(),
  most: z.number(),
  timesKind: z.number().exactOptional(),
});

const lever = z.object({
  id: z.enum(['start-cooler', 'less-water', 'no-insulation', 'fridge']),
  to: z.number().exactOptional(),
  peakCoreC: z.number(),
  gelChance: z.number(),
  risk: z.enum(['none', 'low', 'some', 'high']),
});

const numbers = z.object({
  rates: z.array(rate),
  carriers: z
    .array(
      z.object({
        portion: z.string(),
        cups: z.number(),
        millilitres: z.number(),
        superfat: z.number(),
      }),
    )
    .exactOptional(),
  water: z
    .strictObject({ grams: z.number(), strength: z.number(), atThirdGrams: z.number() })
    .exactOptional(),
  superfat: z.number().exactOptional(),
  heat: z
    .strictObject({
      peakC: z.number(),
      lowC: z.number(),
      highC: z.number(),
      gelChance: z.number(),
      overheatChance: z.number(),
      levers: z.array(lever),
    })
    .exactOptional(),
});

/** What a kept plan told of the batch. */
const plan = z.object({
  name: z.string(),
  evidence: z.array(z.object({ finding, probability: z.number() })),
  numbers,
});

export const caseKind = recordKind('flaw case', {
  member: z.string(),
  words: z.string(),
  photo: photo.exactOptional(),
  plan: plan.exactOptional(),
  at: moment,
});

export const answers = ['yes', 'no', 'unsure'] as const;

export const answerKind = recordKind('flaw answer', { finding, answer: z.enum(answers), at: moment });
export const withdrawnKind = recordKind('flaw finding withdrawn', { finding, at: moment });

export const outcomes = [...CAUSE_IDS, 'something-else'] as const;

export const outcomeKind = recordKind('flaw outcome', {
  cause: z.enum(outcomes),
  member: z.string(),
  at: moment,
});

/** `at` is when the member agreed. */
export const pictureKind = recordKind('flaw picture', {
  cause: z.enum(outcomes),
  /** A JPEG without a word of where and when it was taken. */
  base64: z.base64(),
  width: z.int().positive(),
  height: z.int().positive(),
  at: moment,
});
