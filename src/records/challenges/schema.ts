import { z } from 'zod';
import { LANGUAGES } from '../../engine/language.ts';
import { recordKind } from '../record.ts';

const lab = z.object({ l: z.number(), a: z.number(), b: z.number() }).readonly();
const instant = z.int();

const terms = z.object({
  title: z.string(),
  brief: z.string(),
  palette: z.array(z.object({ hex: z.string(), lab, share: z.number().optional() })).readonly(),
  paletteSeed: z.string().optional(),
  constraint: z.enum(['none', 'one-pigment', 'own-shelf']),
  mostColourants: z.int().optional(),
  class: z.enum(['beginner', 'open', 'technique']),
  zone: z.string(),
  opensAt: instant,
  entriesUntil: instant,
  votesUntil: instant,
  method: z.enum(['schulze', 'approval', 'single']),
  decides: z.enum(['votes', 'colour', 'both']),
  ties: z.union([z.literal('shared'), z.object({ brokenBySeed: z.string() })]),
  entriesPerMember: z.int(),
  madeFrom: z.string().optional(),
  leastCureDays: z.int().optional(),
  joinedBefore: instant.optional(),
  quorum: z.int().optional(),
  anonymous: z.boolean(),
  runningTotals: z.boolean(),
});

/** A colour of the bar, as measured; or why nothing was. */
const colour = z.union([
  z.object({
    colours: z.array(z.object({ lab, share: z.number(), plusMinus: z.number() })).readonly(),
  }),
  z.object({ unscored: z.enum(['no-white', 'neon', 'pearl', 'no-colours']) }),
]);

const bar = z.object({
  title: z.string(),
  /** The name of its maker when they entered it. */
  maker: z.string(),
  note: z.string().optional(),
  colourants: z.array(z.string()).readonly(),
  /** Ids in the catalogue of those that are known there. */
  kinds: z.array(z.string()).readonly().optional(),
  madeOn: z.string().optional(),
  technique: z.string().optional(),
  /** Where the photo was handed in: its address would expire, this does not. */
  photo: z.object({ channel: z.string(), message: z.string(), attachment: z.string() }).optional(),
  /** The part of the photo that was measured: corner and size, as fractions of its width and height. */
  region: z
    .strictObject({ left: z.number(), top: z.number(), width: z.number(), height: z.number() })
    .optional(),
  colour,
});

const madeShape = { id: z.string(), at: instant, by: z.string(), name: z.string().optional() };

/** What a challenge was opened with, by whom, and where the group hears of it. */
export const openingKind = recordKind('challenge', {
  ...madeShape,
  terms,
  channel: z.string(),
  language: z.enum(LANGUAGES),
});

/** One thing that happened in a challenge after its opening. */
export const eventKind = recordKind('challenge event', {
  ...madeShape,
  did: z.discriminatedUnion('kind', [
    z.object({
      kind: z.literal('extended'),
      entriesUntil: instant.optional(),
      votesUntil: instant.optional(),
      reason: z.string(),
    }),
    z.object({ kind: z.literal('cancelled'), reason: z.string() }),
    z.object({ kind: z.literal('disqualified'), entry: z.string(), reason: z.string() }),
    z.object({ kind: z.literal('entered'), entry: z.string(), slot: z.int(), bar }),
    z.object({ kind: z.literal('replaced'), entry: z.string(), bar }),
    z.object({ kind: z.literal('withdrawn'), entry: z.string() }),
  ]),
});

/** How a challenge ended. */
export const endKind = recordKind('challenge end', { how: z.enum(['closed', 'cancelled']), at: instant });

/** Which entry takes up one of those a member may have. */
export const slotKind = recordKind('challenge slot', { entry: z.string() });

/** What a member chose, the most liked first. */
export const ballotKind = recordKind('ballot', {
  ...madeShape,
  chosen: z.array(z.array(z.string()).readonly()).readonly(),
});

/** Where the group was told. */
export const postKind = recordKind('challenge post', { channel: z.string(), message: z.string() });

/** A small photo, as base64 of its file. */
export const photoKind = recordKind('challenge photo', { base64: z.string() });

/** What became of an entry; `place` is undefined where it was not placed. */
export const placingKind = recordKind('placing', {
  challenge: z.string(),
  title: z.string(),
  entry: z.string(),
  bar: z.string(),
  place: z.int().optional(),
  of: z.int(),
  closedAt: instant,
});
