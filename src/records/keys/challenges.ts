import { key, serial } from './key.ts';

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
