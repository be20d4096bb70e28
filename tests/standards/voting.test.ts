import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Election, Pairs } from '../../src/engine/challenges/voting/election.ts';
import { tally } from '../../src/engine/challenges/voting/tally.ts';

/** Published elections; each row of the file names its source. */
type Published = Election & {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly published: {
    readonly schulze_winners?: readonly string[];
    readonly schulze_ranking?: readonly (readonly string[])[];
    readonly condorcet_winner?: string | null;
    readonly condorcet_loser?: string | null;
    readonly pairwise?: Pairs;
    readonly schulze_strengths?: Pairs;
  };
  readonly computed: { readonly plurality: Readonly<Record<string, number>> };
};

const elections: readonly Published[] = JSON.parse(
  readFileSync(new URL('fixtures/voting.json', import.meta.url), 'utf8'),
);

const beats = (pairs: Pairs, one: string, other: string) => pairs[one]![other]! > pairs[other]![one]!;
const telling = (what: keyof Published['published']) =>
  elections.filter(({ published }) => what in published);
const othersThan = ({ candidates }: Election, one: string) => candidates.filter(other => other !== one);

function beatsAll(election: Election): string | undefined {
  const { pairwise } = tally(election);
  return election.candidates.find(one =>
    othersThan(election, one).every(other => beats(pairwise, one, other)),
  );
}

describe('published elections come out as published', () => {
  test.each(telling('schulze_winners'))('winners: $title ($source)', election => {
    expect(tally(election).ranking[0]).toEqual(election.published.schulze_winners);
  });

  test.each(telling('schulze_ranking'))('order: $title ($source)', election => {
    expect(tally(election).ranking).toEqual(election.published.schulze_ranking);
  });

  test.each(telling('pairwise'))('pairs: $title ($source)', election => {
    expect(tally(election).pairwise).toEqual(election.published.pairwise);
  });

  test.each(telling('schulze_strengths'))('strongest paths: $title ($source)', election => {
    expect(tally(election).strongestPaths).toEqual(election.published.schulze_strengths);
  });

  test.each(telling('condorcet_winner'))(
    'the one who beats all others, or nobody: $title ($source)',
    election => {
      expect(beatsAll(election) ?? null).toBe(election.published.condorcet_winner);
    },
  );

  test.each(elections.filter(beatsAll))(
    'the one who beats all others is first: $title ($source)',
    election => {
      expect(tally(election).ranking[0]).toEqual([beatsAll(election)]);
    },
  );

  test.each(elections.filter(({ published }) => published.condorcet_loser))(
    'the one whom all others beat is never first: $title ($source)',
    election => {
      const { pairwise, ranking } = tally(election);
      const loser = election.candidates.find(one =>
        othersThan(election, one).every(other => beats(pairwise, other, one)),
      );
      expect(loser).toBe(election.published.condorcet_loser);
      expect(ranking[0]).not.toContain(loser);
    },
  );

  test.each(elections)('single choice counts the first choices: $title ($source)', election => {
    expect(tally(election, 'single').votes).toEqual(election.computed.plurality);
  });
});
