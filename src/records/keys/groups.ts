import { key } from './key.ts';

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

/** The members of a group who keep a shelf lie under this key. */
export const groupShelves = (group: string) => key('group-shelf', group);
/** That a member of a group keeps a shelf. */
export const groupShelf = (group: string, member: string) => key('group-shelf', group, member);

/** When a member was first found to have left a group: from then on the clock runs. */
export const leftAt = (group: string, member: string) => key('left', group, member);
/** The members found to have left a group lie under this key. */
export const leftOf = (group: string) => key('left', group);

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
