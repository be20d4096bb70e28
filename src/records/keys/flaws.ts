import { key } from './key.ts';

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
