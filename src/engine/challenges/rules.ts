import type { Challenge } from './challenge.ts';
import { standing } from './challenge.ts';
import type { Terms } from './terms.ts';
import { dateAt, daysBetween } from './wall-time.ts';

/** What is known about a bar that somebody wants to enter. */
export type Bid = {
  readonly by: string;
  /** When it is entered, ms since 1970 UTC. */
  readonly at: number;
  /** The entry it takes the place of, if any. */
  readonly replaces?: string | undefined;
  /** Names of the colourants in it. */
  readonly colourants: readonly string[];
  /** Those of them that do not lie on the shelf of the one who enters. */
  readonly notOnShelf: readonly string[];
  /** The day it was made, `YYYY-MM-DD`. */
  readonly madeOn?: string | undefined;
  /** What was done, where the class asks for a technique. */
  readonly technique?: string | undefined;
  /** Challenges this member won in this group. */
  readonly wins: number;
};

/** What a challenge allows and a bid does not keep to. */
export type Violation =
  | { readonly id: 'entries-most'; readonly most: number }
  | { readonly id: 'colourants-most'; readonly most: number; readonly used: number }
  | { readonly id: 'one-pigment'; readonly used: number }
  | { readonly id: 'own-shelf'; readonly missing: readonly string[] }
  | { readonly id: 'made-on-missing' }
  | { readonly id: 'made-on-future'; readonly madeOn: string }
  | { readonly id: 'made-too-early'; readonly madeOn: string; readonly from: string }
  | { readonly id: 'cure-short'; readonly days: number; readonly least: number; readonly missing: number }
  | { readonly id: 'not-beginner'; readonly wins: number }
  | { readonly id: 'technique-missing' };

/** Everything about a bid that breaks the terms, all of it at once; nothing when it may enter. */
export function violations({ terms, ...challenge }: Challenge, bid: Bid): readonly Violation[] {
  const mine = standing({ terms, ...challenge }).filter(
    ({ by, entry }) => by === bid.by && entry !== bid.replaces,
  );
  const found: Violation[] = [];
  if (mine.length >= terms.entriesPerMember) found.push({ id: 'entries-most', most: terms.entriesPerMember });
  found.push(...ofColourants(terms, bid), ...ofAge(terms, bid));
  if (terms.class === 'beginner' && bid.wins > 0) found.push({ id: 'not-beginner', wins: bid.wins });
  if (terms.class === 'technique' && !bid.technique?.trim()) found.push({ id: 'technique-missing' });
  return found;
}

function ofColourants({ constraint, mostColourants }: Terms, bid: Bid): readonly Violation[] {
  const used = new Set(bid.colourants).size;
  const found: Violation[] = [];
  if (mostColourants !== undefined && used > mostColourants)
    found.push({ id: 'colourants-most', most: mostColourants, used });
  if (constraint === 'one-pigment' && used !== 1) found.push({ id: 'one-pigment', used });
  if (constraint === 'own-shelf' && bid.notOnShelf.length > 0)
    found.push({ id: 'own-shelf', missing: bid.notOnShelf });
  return found;
}

function ofAge({ madeFrom, leastCureDays = 0, zone }: Terms, { madeOn, at }: Bid): readonly Violation[] {
  if (madeFrom === undefined && leastCureDays === 0) return [];
  if (madeOn === undefined) return [{ id: 'made-on-missing' }];
  const days = daysBetween(madeOn, dateAt(at, zone));
  if (days < 0) return [{ id: 'made-on-future', madeOn }];
  const found: Violation[] = [];
  if (madeFrom !== undefined && madeOn < madeFrom)
    found.push({ id: 'made-too-early', madeOn, from: madeFrom });
  if (days < leastCureDays)
    found.push({ id: 'cure-short', days, least: leastCureDays, missing: leastCureDays - days });
  return found;
}
