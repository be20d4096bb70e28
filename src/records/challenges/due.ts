import type { Terms } from '../../engine/challenges/terms.ts';
import type { Due } from '../dues/dues.ts';

/** What is to be done about a challenge, and when. */
export type ChallengeDue =
  | 'challenge-announce'
  | 'challenge-open'
  | 'challenge-entries-soon'
  | 'challenge-vote'
  | 'challenge-votes-soon'
  | 'challenge-changed'
  | 'challenge-taken-out'
  | 'challenge-close';

/** How long after the deadline a challenge is closed, ms: what was sent in time must get through first. */
export const closingGrace = 5_000;

const HOUR = 3_600_000;
const reminder = 24 * HOUR;
/** A reminder shortly after the beginning is noise. */
const leastBefore = 12 * HOUR;

/** Everything to be done about a challenge with these terms, opened at a time (ms since 1970 UTC). */
export function duesOf(
  { opensAt, entriesUntil, votesUntil, decides }: Terms,
  { id, group, openedAt }: { id: string; group: string; openedAt: number },
): readonly (Due & { readonly what: ChallengeDue })[] {
  const due = (what: ChallengeDue, at: number) => ({ what, at: new Date(at), group, id });
  const soon = (what: ChallengeDue, from: number, until: number) =>
    until - reminder - leastBefore >= from ? [due(what, until - reminder)] : [];
  return [
    due('challenge-announce', openedAt),
    ...(opensAt > openedAt ? [due('challenge-open', opensAt)] : []),
    ...soon('challenge-entries-soon', opensAt, entriesUntil),
    ...(decides === 'colour'
      ? []
      : [due('challenge-vote', entriesUntil), ...soon('challenge-votes-soon', entriesUntil, votesUntil)]),
    due('challenge-close', votesUntil + closingGrace),
  ];
}

/** True while the terms still ask for this at this time: an extension leaves older ones behind. */
export const isStillDue = (
  terms: Terms,
  challenge: { id: string; group: string; openedAt: number },
  due: Due,
) => duesOf(terms, challenge).some(({ what, at }) => what === due.what && at.getTime() === due.at.getTime());
