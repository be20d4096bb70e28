/*
 * The challenges of a group: what stewards opened, what members entered and voted, how it came out. Everything
 * here takes a {@link ChallengeScope}; whatever an interaction does happens once, however often it is delivered.
 */

export { type ChallengeDue, closingGrace, isStillDue } from './due.ts';
export {
  enterBar,
  type HandedIn,
  photosOf,
  replaceBar,
  type StandingBar,
  standingBars,
  withdrawBar,
} from './entries.ts';
export { type Changed, requireChallenge } from './mutations.ts';
export * from './outcome.ts';
export * from './queries.ts';
export { reviveChallenges } from './revive.ts';
export {
  cancelChallenge,
  disqualify,
  type Extension,
  extendChallenge,
  type Opening,
  openChallenge,
} from './steward.ts';
export { ballotsOf, type Cast, castBallot, choiceOf, undoBallot } from './votes.ts';
