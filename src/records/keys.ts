import { bucketOf } from './due-buckets.ts';
import type { Span } from './store.ts';

/*
 * The layout of everything that is remembered: one function for each kind of record, one key for each fact.
 * `/` separates parts; within a part only [A-Za-z0-9_-] occurs, anything else is written as `_` and the two
 * hexadecimal digits of each of its UTF-8 bytes (and `_` itself as `_5f`), so no name can reach across a `/`,
 * and every store orders keys alike.
 */

const utf8 = new TextEncoder();

/** One part of a key; two different texts never give the same part. */
export function part(text: string): string {
  if (/^[A-Za-z0-9-]+$/.test(text)) return text;
  // An empty part would make `a//b`, which some stores fold into `a/b`.
  if (text === '') return '_';
  let encoded = '';
  for (const byte of utf8.encode(text)) {
    const character = String.fromCharCode(byte);
    encoded += /[A-Za-z0-9-]/.test(character) ? character : `_${byte.toString(16).padStart(2, '0')}`;
  }
  return encoded;
}

/** The text that a part of a key stands for. */
export function textOfPart(encoded: string): string {
  if (encoded === '_') return '';
  const bytes = encoded.replaceAll(/_([0-9a-f]{2})/g, '%$1');
  return decodeURIComponent(bytes);
}

/** A key of a kind of record, from parts in any script. Kinds are made below, in this file only. */
function key(kind: string, ...parts: readonly string[]): string {
  return [kind, ...parts.map(part)].join('/');
}

/** The span of every key that lies under a key: `a/b/...`, but neither `a/b` itself nor `a/bc`. */
export function under(parent: string): Span {
  // '0' is the character after '/'.
  return { from: `${parent}/`, to: `${parent}0` };
}

const serial = (n: number) => String(n).padStart(6, '0');

/** Whole numbers from 0, written so that the highest comes first in key order. */
const newestFirst = (n: number) => String(999_999_999 - n).padStart(9, '0');

// A member's shelf: it is theirs in every group, so no group is in the key.
/** Everything current about a member's shelf lies under this key. */
export const shelf = (member: string) => key('shelf', member);
/** What an item is: its name, its colourant, its pigment fraction. */
export const shelfItem = (member: string, item: string) => key('shelf', member, item);
/** How much is there now, as of the last line of its ledger. */
export const shelfStock = (member: string, item: string) => key('shelf', member, item, 'stock');
/** From how little on the member wants to be told. */
export const shelfLowMark = (member: string, item: string) => key('shelf', member, item, 'low-mark');
/** What the label lists. */
export const shelfIngredients = (member: string, item: string) => key('shelf', member, item, 'ingredients');
/** A lot: what is found out about one lot lies under it, so a new lot knows nothing of it. */
export const shelfLot = (member: string, item: string, lot: number) =>
  key('shelf', member, item, 'lot', serial(lot));
/** What can be found out about one lot. */
export const lotFacts = ['dish-test', 'spoon-weight', 'calibration', 'learnt'] as const;
export type LotFact = (typeof lotFacts)[number];
/** Something found out about one lot. */
export const shelfLotFact = (member: string, item: string, lot: number, fact: LotFact) =>
  key('shelf', member, item, 'lot', serial(lot), fact);
/** Holds a name: two items of one shelf cannot both add it. */
export const shelfName = (member: string, foldedName: string) => key('shelf-name', member, foldedName);
/** An item that was removed: whatever changes an item demands that this is absent. */
export const shelfGone = (member: string, item: string) => key('shelf-gone', member, item);
/** The changes that a member's interactions made lie under this key. */
export const shelfIdempotencies = (member: string) => key('shelf-once', member);
/** The change that an interaction made, so that its second delivery makes none. */
export const shelfIdempotency = (member: string, cause: string) => key('shelf-once', member, cause);
/** The changes that one interaction made at once, one behind the other. */
export function shelfIdempotencyParts(member: string, cause: string): Span {
  const first = shelfIdempotency(member, cause);
  // '.' is the character after '-'.
  return { from: `${first}-`, to: `${first}.` };
}
/** The lines of an item's ledger lie under this key. */
export const ledger = (member: string, item: string) => key('ledger', member, item);
/** One line of an item's ledger; the newest comes first. */
export const ledgerLine = (member: string, item: string, line: number) =>
  key('ledger', member, item, newestFirst(line));

// A member.
/** One wish about how a member is answered. */
export const preference = (member: string, wish: string) => key('preference', member, wish);

/** That a member was given a standing caution in full. */
export const met = (member: string, caution: string) => key('met', member, caution);

// Recipes and plans.
/** A member's own recipes lie under this key: theirs in every group. */
export const recipes = (member: string) => key('recipe', member);
/** One of a member's recipes, by its folded name. */
export const recipe = (member: string, foldedName: string) => key('recipe', member, foldedName);
/** The recipes shared to a group lie under this key. */
export const sharedRecipes = (group: string) => key('shared-recipe', group);
/** One recipe shared to a group, by its folded name. */
export const sharedRecipe = (group: string, foldedName: string) => key('shared-recipe', group, foldedName);
/** That a recipe was taken away for an interaction, so that its second delivery takes nothing. */
export const recipeIdempotency = (member: string, cause: string) => key('recipe-once', member, cause);
/** The plans a member was lately answered with lie under this key. */
export const recentPlans = (member: string) => key('late-plan', member);
/** One plan a member was lately answered with: what its buttons go on with. */
export const recentPlan = (member: string, id: string) => key('late-plan', member, id);

// Batches that were really made. A batch's id is the interaction that noted it.
/** A member's batches lie under this key: theirs in every group. */
export const batches = (member: string) => key('batch', member);
/** What was poured. */
export const batch = (member: string, id: string) => key('batch', member, id);
/** What became of a member's batches lies under this key. */
export const allBatchEvents = (member: string) => key('batch-event', member);
/** What became of one batch lies under this key. */
export const batchEvents = (member: string, id: string) => key('batch-event', member, id);
/** One thing that happened to a batch, by when it happened. */
export const batchEvent = (member: string, id: string, at: number, cause: string) =>
  key('batch-event', member, id, String(at).padStart(14, '0'), cause);
/** The photos of a batch lie under this key. */
export const batchPhotos = (member: string, id: string) => key('batch-photo', member, id);
/** A small photo of a batch, as the event that brought it is called. */
export const batchPhoto = (member: string, id: string, cause: string) =>
  key('batch-photo', member, id, cause);
/** The batches that members show to a group lie under this key. */
export const sharedBatches = (group: string) => key('shared-batch', group);
/** That a member shows a batch to a group. */
export const sharedBatch = (group: string, member: string, id: string) =>
  key('shared-batch', group, member, id);
/** Whose batch it is that reminders in a group's span are about. */
export const batchReminder = (group: string, id: string) => key('batch-reminder', group, id);
/** What a member's cured bars said of their jars lies under this key. */
export const lessons = (member: string) => key('lesson', member);
/** One reading of a cured bar, or that one no longer counts, in the order they came. */
export const lesson = (member: string, line: number) => key('lesson', member, serial(line));

// Colours matched.
/** Lines and questions of a member that buttons go on with. */
export const askedLines = (member: string) => key('asked', member);
/** One of them, under the id of the answer that offered the buttons. */
export const askedLine = (member: string, id: string) => key('asked', member, id);

/** What answers to a member folded away lies under this key. */
export const foldedAnswers = (member: string) => key('late-fold', member);
/** What one answer folded away, under the id that its buttons carry. */
export const foldedAnswer = (member: string, id: string) => key('late-fold', member, id);

/** What changes of everybody took away of late lies under this key. */
export const allUndoables = () => key('late-undo');
/** What a member's changes took away of late lies under this key. */
export const undoables = (member: string) => key('late-undo', member);
/** What one change took away, by its cause. */
export const undoable = (member: string, cause: string) => key('late-undo', member, cause);
/** That changes were taken back lies under this key. */
export const allUndone = () => key('undone');
/** That a change was taken back: whatever it made must not be made once more. */
export const undone = (member: string, cause: string) => key('undone', member, cause);

/** The matches a member was lately answered with lie under this key. */
export const recentMatches = (member: string) => key('late-match', member);
/** One match a member was lately answered with: what its buttons and its menu go on with. */
export const recentMatch = (member: string, id: string) => key('late-match', member, id);

// Test bars that members of a group share, by the product in the jar.
/** What members of a group found of one product lies under this key. */
export const calibrationsOf = (group: string, colourant: string, product: string) =>
  key('calibration', group, colourant, product);
/** What a member found with one of their jars of it. */
export const calibrationBy = (
  group: string,
  product: { readonly colourant: string; readonly product: string },
  jar: { readonly member: string; readonly item: string },
) => key('calibration', group, product.colourant, product.product, jar.member, jar.item);

// The house.
/** The key that follow-ups are signed with. */
export const signingKey = () => key('meta', 'signing-key');

/** In which format the store as a whole is. */
export const formatKey = () => key('meta', 'format');
/** What is written and dropped to see whether the store can be written to. */
export const probeKey = (who: string) => key('meta', 'probe', who);
/** That it is written down whose every record is, and of which kinds. */
export const ownedMarker = () => key('meta', 'owned');
/** That a store is being filled from a backup or another store. */
export const fillingKey = () => key('meta', 'filling');

// A group.
/** What the stewards of a group have set. */
export const groupSettingsKey = (group: string) => key('group', group, 'settings');

// What a group has seen of colours. `filed` is what `evidence/filed.ts` makes of an identity.
/** Every report of a group lies under this key. */
export const evidence = (group: string) => key('evidence', group);
/** The reports of a group on one colour lie under this key. */
export const evidenceOn = (group: string, filed: string) => key('evidence', group, filed);
/** One report: a member's on one colour in one process. */
export const evidenceReport = (group: string, filed: string, member: string, process: string) =>
  key('evidence', group, filed, member, process);
/** That an interaction has reported, so that its second delivery does not. */
export const evidenceIdempotency = (group: string, cause: string) => key('evidence-once', group, cause);
/** The groups that share what they have seen lie under this key. */
export const evidenceSharing = () => key('evidence-sharing');
/** That a group shares what it has seen with other groups that also do. */
export const evidenceSharedBy = (group: string) => key('evidence-sharing', group);

// What went wrong with bars of a group's members. A case's id is the interaction that opened it: the oldest come first.
/** The cases of a group lie under this key; they are dropped after some days. */
export const flawCases = (group: string) => key('flaw-case', group);
/** What a case was opened with. */
export const flawCase = (group: string, id: string) => key('flaw-case', group, id.padStart(20, '0'));
/** The answer to one question of a case. */
export const flawAnswer = (group: string, id: string, finding: string) =>
  key('flaw-case', group, id.padStart(20, '0'), 'answer', finding);
/** That something noticed was taken back. */
export const flawWithdrawn = (group: string, id: string, finding: string) =>
  key('flaw-case', group, id.padStart(20, '0'), 'withdrawn', finding);
/** What the cases of a group turned out to be lies under this key, for good. */
export const flawOutcomes = (group: string) => key('flaw-outcome', group);
/** What a case turned out to be. */
export const flawOutcome = (group: string, id: string) => key('flaw-outcome', group, id.padStart(20, '0'));

/** The pictures that members of a group gave lie under this key. */
export const flawPictures = (group: string) => key('flaw-picture', group);
/** The pictures that one member gave a group lie under this key. */
export const flawPicturesOf = (group: string, member: string) => key('flaw-picture', group, member);
/** The picture of a case. */
export const flawPicture = (group: string, member: string, id: string) =>
  key('flaw-picture', group, member, id.padStart(20, '0'));

/** The members of a group who keep a shelf lie under this key. */
export const groupShelves = (group: string) => key('group-shelf', group);
/** That a member of a group keeps a shelf. */
export const groupShelf = (group: string, member: string) => key('group-shelf', group, member);

/** When a member was first found to have left a group: from then on the clock runs. */
export const leftAt = (group: string, member: string) => key('left', group, member);
/** The members found to have left a group lie under this key. */
export const leftOf = (group: string) => key('left', group);

// Challenges of a group. Ids of challenges, entries and events are the interactions that made them.
/** The challenges of a group lie under this key. */
export const challenges = (group: string) => key('challenge', group);
/** What a challenge was opened with. */
export const challenge = (group: string, id: string) => key('challenge', group, id);
/** That it was closed or cancelled: whatever must not come after that demands that this is absent. */
export const challengeEnd = (group: string, id: string) => key('challenge-end', group, id);
/** What happened in a challenge lies under this key. */
export const challengeEvents = (group: string, id: string) => key('challenge-event', group, id);
/** One thing that happened, by the time its interaction was made. */
export const challengeEvent = (group: string, id: string, at: number, event: string) =>
  key('challenge-event', group, id, String(at).padStart(14, '0'), event);
/** Holds one of the entries that a member may have. */
export const challengeSlot = (group: string, id: string, member: string, slot: number) =>
  key('challenge-slot', group, id, member, serial(slot));
/** The ballots of a challenge lie under this key. */
export const challengeBallots = (group: string, id: string) => key('challenge-ballot', group, id);
/** The ballots of one member lie under this key: the newest counts. */
export const challengeBallotsOf = (group: string, id: string, member: string) =>
  key('challenge-ballot', group, id, member);
/** One ballot, by the time its interaction was made. */
export const challengeBallot = (group: string, id: string, member: string, at: number, event: string) =>
  key('challenge-ballot', group, id, member, String(at).padStart(14, '0'), event);
/** The message in which the group was told something about a challenge. */
export const challengePost = (group: string, id: string, what: string) =>
  key('challenge-post', group, id, what);
/** The small photo of an entry, as the event `event` gave it. */
export const challengePhoto = (group: string, id: string, event: string) =>
  key('challenge-photo', group, id, event);
/** What became of a member's entries in a group lies under this key. */
export const placings = (group: string, member: string) => key('placing', group, member);
/** What became of one entry. */
export const placing = (group: string, member: string, id: string, entry: string) =>
  key('placing', group, member, id, entry);

// Whose what is.
/** What groups keep of a member is written down under this key. */
export const ownedRecords = (member: string) => key('owned', member);
/** That a record, by its key, is a member's. */
export const ownedRecord = (member: string, record: string) => `${ownedRecords(member)}/${record}`;

// What did not reach a group.
/** What a member is to be told with their next answer lies under this key. */
export const notices = (member: string) => key('notice', member);
/** That a group could not be told of something a member is responsible for. */
export const notice = (member: string, group: string, id: string) => key('notice', member, group, id);

// Groups that put us out.
/** The groups that put us out lie under this key. */
export const groupsLeft = () => key('group-left');
/** That a group put us out, and when: its records stay until the time for keeping them is over. */
export const groupLeft = (group: string) => key('group-left', group);

// What members of a group do together beside challenges.
/** The jars that members offer for swapping lie under this key. */
export const swaps = (group: string) => key('swap', group);
/** That a member offers one of their jars. */
export const swap = (group: string, member: string, item: string) => key('swap', group, member, item);
/** The palettes put forward for the season lie under this key. */
export const seasonPalettes = (group: string) => key('season-palette', group);
/** What a member puts forward: one palette each. */
export const seasonPalette = (group: string, member: string) => key('season-palette', group, member);
/** The votes for the season's palette lie under this key. */
export const seasonVotes = (group: string) => key('season-vote', group);
/** Whose palette a member votes for. */
export const seasonVote = (group: string, member: string) => key('season-vote', group, member);
/** The season's palette of a group, once it was settled. */
export const season = (group: string) => key('season', group);

// Deadlines.
const inBucket = (bucket: number) => String(bucket).padStart(2, '0');
/** Something to do at a time: in its group's bucket, the time first, so that what is due there is one span. */
export const dueKey = (at: Date, group: string, what: string, id: string) =>
  key('due', inBucket(bucketOf(group)), at.toISOString(), group, what, id);
/** All that is to be done in a bucket, at whatever time. */
export const dues = (bucket: number): Span => under(key('due', inBucket(bucket)));
/** What is due in a bucket by a time, that millisecond included. */
export const dueBy = (now: Date, bucket: number): Span => ({
  from: dues(bucket).from,
  to: key('due', inBucket(bucket), new Date(now.getTime() + 1).toISOString()),
});
/** Where programs before format 2 wrote what is due: the year (of four digits, in this century) where the bucket is. */
export const duesBeforeBuckets = (): Span => ({ from: 'due/200', to: 'due/21' });
