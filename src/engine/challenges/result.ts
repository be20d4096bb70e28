import { type Challenge, standing } from './challenge.ts';
import { type ColourScore, colourPlaces, type Scored, type Unscored } from './measured.ts';
import { type Combined, combinePlaces } from './voting/combine.ts';
import type { Tally } from './voting/election.ts';
import { tally } from './voting/tally.ts';
import { ballotOf, type Kept } from './voting/voting.ts';

/** The measured colour of an entry, or why there is none. */
export type Measured = { readonly score: ColourScore } | { readonly unscored: Unscored };

/** What decided: as the terms say, or less where the vote fell short of its quorum. */
export type DecidedBy = 'votes' | 'colour' | 'both' | 'nothing';

/** How a challenge came out. */
export type Result = {
  readonly decidedBy: DecidedBy;
  /** Places from the first; those tied share one. */
  readonly ranking: readonly (readonly string[])[];
  /** Entries in the running that the ranking cannot place, with the reason. */
  readonly unplaced: readonly { readonly entry: string; readonly why: Unscored }[];
  /** The vote, whatever it decided; undefined where nobody was asked to vote. */
  readonly tally: Tally | undefined;
  readonly quorum: { readonly needed: number; readonly cast: number; readonly met: boolean };
  readonly colour: ReadonlyMap<string, Measured>;
  /** Where both decide: the two places that were added up for each entry. */
  readonly sums: readonly Combined[];
};

/** Everything a result is computed from. */
export type Evidence = {
  readonly challenge: Challenge;
  readonly ballots: readonly Kept[];
  readonly colour: ReadonlyMap<string, Measured>;
};

/**
 * The result of a challenge: always the same from the same evidence, in whatever order it comes. With fewer
 * ballots than the quorum the vote decides nothing: measured colour decides alone where both were to, else
 * nobody is placed.
 */
export function resultOf({ challenge, ballots, colour }: Evidence): Result {
  const { decides, method, ties, quorum: needed = 0 } = challenge.terms;
  const entries = standing(challenge).map(({ entry }) => entry);
  const quorum = { needed, cast: ballots.length, met: ballots.length >= needed };
  const vote =
    decides === 'colour'
      ? undefined
      : tally({ candidates: entries, ballots: ballots.map(kept => ballotOf(challenge, kept)) }, method, ties);
  const decidedBy = quorum.met || decides === 'colour' ? decides : decides === 'both' ? 'colour' : 'nothing';
  const nearest = colourPlaces(entries.map(entry => scoredOf(entry, colour.get(entry))));
  const both = combinePlaces(vote?.ranking ?? [], nearest);
  const ranking = { votes: vote?.ranking ?? [], colour: nearest, both: both.ranking, nothing: [] }[decidedBy];
  return {
    decidedBy,
    ranking,
    unplaced: decidedBy === 'colour' ? entries.flatMap(entry => unplaced(entry, colour.get(entry))) : [],
    tally: vote,
    quorum,
    colour,
    sums: decidedBy === 'both' ? both.sums : [],
  };
}

const scoredOf = (entry: string, measured: Measured | undefined): Scored => ({
  entry,
  score: measured && 'score' in measured ? measured.score : undefined,
});

function unplaced(entry: string, measured: Measured | undefined): Result['unplaced'] {
  if (measured && 'score' in measured) return [];
  return [{ entry, why: measured?.unscored ?? 'no-colours' }];
}
