/** Refusals on the way through a challenge; the rest stand beside the challenge itself. */
export type ChallengeStepReason =
  | 'challenge-none-such'
  | 'challenge-which'
  | 'challenge-title-taken'
  | 'challenge-bar-taken-out'
  | 'challenge-date-unreadable'
  | 'challenge-entry-unfit'
  | 'challenge-entry-which'
  | 'challenge-entry-none'
  | 'challenge-bar-title-unfit'
  | 'challenge-colourants-missing'
  | 'challenge-shares-unfit'
  | 'vote-unreadable'
  | 'vote-number-unknown';
