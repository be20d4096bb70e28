import type { Lab } from '../colour/spectra/cielab.ts';
import type { Method } from './voting/election.ts';

/** One colour of a challenge's palette. */
export type Target = {
  /** As the steward wrote it or the draw gave it, `#rrggbb`. */
  readonly hex: string;
  readonly lab: Lab;
  /** How much of the bar it should take, in parts of the whole palette; all alike where none is given. */
  readonly share?: number | undefined;
};

export type EntryClass = 'beginner' | 'open' | 'technique';

/** What may be used: anything, one pigment only, or only what lies on the shelf of the one who enters. */
export type Constraint = 'none' | 'one-pigment' | 'own-shelf';

/**
 * What a challenge was opened with. Times are instants in milliseconds since 1970 UTC, made once from the wall
 * time in `zone`; they run opens < entries end < votes end. Where measured colour decides alone nobody votes, and
 * the last two are the same.
 */
export type Terms = {
  readonly title: string;
  readonly brief: string;
  readonly palette: readonly Target[];
  /** The seed the palette was drawn with, where it was drawn. */
  readonly paletteSeed?: string | undefined;
  readonly constraint: Constraint;
  readonly mostColourants?: number | undefined;
  readonly class: EntryClass;
  /** The zone the steward wrote the times in: an IANA name. */
  readonly zone: string;
  readonly opensAt: number;
  readonly entriesUntil: number;
  readonly votesUntil: number;
  readonly method: Method;
  readonly decides: Decides;
  /** What happens to a tied vote: the place is shared, or ballots drawn by the seed decide. */
  readonly ties: 'shared' | { readonly brokenBySeed: string };
  readonly entriesPerMember: number;
  /** The bar was made on this day or later, `YYYY-MM-DD`. */
  readonly madeFrom?: string | undefined;
  /** Days between making the bar and entering it, at least. */
  readonly leastCureDays?: number | undefined;
  /** Who joined the group at this instant or later does not vote. */
  readonly joinedBefore?: number | undefined;
  /** With fewer ballots than this the vote decides nothing. */
  readonly quorum?: number | undefined;
  /** True when nobody is told whose bar is whose before the results. */
  readonly anonymous: boolean;
  /** True when the count so far is shown while the vote runs. */
  readonly runningTotals: boolean;
};

export type Decides = 'votes' | 'colour' | 'both';

/** True when the vote ends after the entries do, or with them where nobody votes. */
export const votesFollow = ({
  decides,
  entriesUntil,
  votesUntil,
}: Pick<Terms, 'decides' | 'entriesUntil' | 'votesUntil'>): boolean =>
  decides === 'colour' ? entriesUntil === votesUntil : entriesUntil < votesUntil;
