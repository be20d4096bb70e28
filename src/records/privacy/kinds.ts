/*
 * Who every kind of record belongs to, and what becomes of it when they want it gone. A key's first part is its kind;
 * a kind that is missing here does not pass its test.
 */

/** What members call what is kept of them. */
export const topics = [
  'shelf',
  'preferences',
  'recipes',
  'batches',
  'recent',
  'evidence',
  'flaws',
  'challenges',
] as const;
export type Topic = (typeof topics)[number];

/** By what the member shows whose record it is. */
type OwnedBy =
  /** The part of the key after the kind, 1 for the first. */
  | { readonly part: number }
  /** A field of the value. */
  | { readonly field: 'by' | 'member' }
  /** The part of the key that names a group, where that group is the member's own talk with us. */
  | { readonly direct: number }
  /** A field of the record at the first three parts of the key, under which this one lies. */
  | { readonly head: 'member' }
  /** Whoever made the event that the last part of the key names. */
  | { readonly event: true };

/**
 * `drop`: gone. `rename`: what others rely on stays, under a name that leads to nobody. `drop-or-rename`: gone while
 * the challenge runs, renamed once it has ended, so that its count stays what it was.
 */
export type Erasure = 'drop' | 'rename' | 'drop-or-rename';

export type OwnedKind = { readonly topic: Topic; readonly owner: OwnedBy; readonly erasure: Erasure };

const mine = (topic: Topic, part = 1): OwnedKind => ({ topic, owner: { part }, erasure: 'drop' });

/**
 * What belongs to no member: `group` lies under a group and goes with it, `house` lies under none, and `index` only
 * tells where records are and goes with them.
 */
type Unowned = 'group' | 'house' | 'index';

/** Kinds of record by the first part of their key, and whose they are. */
export const kinds: ReadonlyMap<string, OwnedKind | Unowned> = new Map<string, OwnedKind | Unowned>([
  ['shelf', mine('shelf')],
  ['shelf-name', mine('shelf')],
  ['shelf-gone', mine('shelf')],
  ['shelf-once', mine('shelf')],
  ['ledger', mine('shelf')],
  ['group-shelf', mine('shelf', 2)],
  ['calibration', mine('shelf', 4)],
  ['swap', mine('shelf', 2)],
  ['preference', mine('preferences')],
  ['met', mine('preferences')],
  ['recipe', mine('recipes')],
  ['shared-recipe', { topic: 'recipes', owner: { field: 'by' }, erasure: 'drop' }],
  ['recipe-once', mine('recipes')],
  ['batch', mine('batches')],
  ['batch-event', mine('batches')],
  ['batch-photo', mine('batches')],
  ['shared-batch', mine('batches', 2)],
  ['batch-reminder', { topic: 'batches', owner: { field: 'member' }, erasure: 'drop' }],
  ['lesson', mine('batches')],
  ['late-plan', mine('recent')],
  ['late-match', mine('recent')],
  ['asked', mine('recent')],
  ['late-fold', mine('recent')],
  ['late-undo', mine('recent')],
  ['undone', mine('recent')],
  ['evidence', mine('evidence', 3)],
  ['flaw-case', { topic: 'flaws', owner: { head: 'member' }, erasure: 'drop' }],
  ['flaw-outcome', { topic: 'flaws', owner: { field: 'member' }, erasure: 'rename' }],
  ['flaw-picture', mine('flaws', 2)],
  ['challenge', { topic: 'challenges', owner: { field: 'by' }, erasure: 'rename' }],
  ['challenge-event', { topic: 'challenges', owner: { field: 'by' }, erasure: 'rename' }],
  // Behind the events: they tell whose a photo is.
  ['challenge-photo', { topic: 'challenges', owner: { event: true }, erasure: 'drop' }],
  ['challenge-slot', { topic: 'challenges', owner: { part: 3 }, erasure: 'rename' }],
  ['challenge-ballot', { topic: 'challenges', owner: { part: 3 }, erasure: 'drop-or-rename' }],
  ['placing', mine('challenges', 2)],
  ['season-palette', mine('challenges', 2)],
  ['season-vote', mine('challenges', 2)],
  ['left', mine('shelf', 2)],
  ['notice', mine('challenges')],
  ['challenge-end', 'group'],
  ['challenge-post', 'group'],
  // What is due in a group is nobody's; what is due between one member and us is theirs.
  ['due', { topic: 'batches', owner: { direct: 3 }, erasure: 'drop' }],
  // Says that an interaction was done, not whose.
  ['evidence-once', 'group'],
  ['evidence-sharing', 'group'],
  // What the group settled on: colours and a title, nobody's name.
  ['season', 'group'],
  ['group', 'group'],
  ['group-left', 'group'],
  ['meta', 'house'],
  ['owned', 'index'],
]);

/** Kinds whose values are pictures: a page of them is read a few at a time. */
export const PICTURES: ReadonlySet<string> = new Set([
  'batch-photo',
  'flaw-picture',
  'challenge-photo',
  'late-fold',
]);

/**
 * Which part of the keys of a kind names the group that a record lies in, the kind being part 0; undefined where it
 * lies in none: what a member has in every group, and what is the house's.
 */
export function groupPartOf(held: OwnedKind | Unowned): number | undefined {
  if (held === 'house' || held === 'index') return undefined;
  if (held === 'group') return 1;
  if ('direct' in held.owner) return held.owner.direct;
  return 'part' in held.owner && held.owner.part === 1 ? undefined : 1;
}

/** True for what belongs to a member. */
export const isOwned = (held: OwnedKind | Unowned | undefined): held is OwnedKind => typeof held === 'object';
