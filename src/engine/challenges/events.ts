import type { Terms } from './terms.ts';

/** Every event states when its interaction was made (ms since 1970 UTC), its id, and who made it. */
type Made = {
  readonly id: string;
  readonly at: number;
  readonly by: string;
  /** The name of a steward when they did it, for the list that members read. */
  readonly name?: string | undefined;
};

/** What a steward did: this is the list that members can read. */
export type StewardEvent = Made &
  (
    | { readonly kind: 'opened'; readonly terms: Terms }
    | {
        readonly kind: 'extended';
        readonly entriesUntil?: number | undefined;
        readonly votesUntil?: number | undefined;
        readonly reason: string;
      }
    | { readonly kind: 'cancelled'; readonly reason: string }
    | { readonly kind: 'disqualified'; readonly entry: string; readonly reason: string }
  );

/** What the one who entered a bar did with it. */
export type EntryEvent = Made & { readonly entry: string } & (
    | { readonly kind: 'entered' }
    | { readonly kind: 'replaced' }
    | { readonly kind: 'withdrawn' }
  );

/** The assistant closed the challenge; `at` is when it did, never when it should have. */
export type ClosedEvent = Made & { readonly kind: 'closed' };

export type ChallengeEvent = StewardEvent | EntryEvent | ClosedEvent;

/** `counting`: the vote is over and the result not yet out. */
export type Phase = 'announced' | 'entering' | 'voting' | 'counting' | 'closed' | 'cancelled';
