import type { Result } from '../../src/engine/challenges/result.ts';
import type { Tally } from '../../src/engine/challenges/voting/election.ts';
import type { Words } from '../../src/words/index.ts';

/** The numbers that bars are known by. */
type Numbers = ReadonlyMap<string, { readonly number: number }>;

/** What put an entry in its place, in words; empty where nothing is known of it. */
export function placedBy(result: Result, entry: string, numbers: Numbers, say: Words): string {
  const { challengeSteps: steps } = say;
  switch (result.decidedBy) {
    case 'both': {
      const sum = result.sums.find(one => one.entry === entry);
      return sum ? steps.twoPlaces({ votes: sum.byVotes, colour: sum.byColour }) : '';
    }
    case 'votes':
      return votedFor(result, entry, numbers, say);
    case 'colour': {
      const measured = result.colour.get(entry);
      return measured && 'score' in measured ? steps.nearPalette({ score: measured.score.score }) : '';
    }
    case 'nothing':
      return '';
  }
}

/** Votes where they are counted one by one, else how many bars it is preferred to. */
export function votedFor(
  { tally }: Result,
  entry: string,
  numbers: Numbers,
  { challengeSteps: steps }: Words,
): string {
  if (!tally) return '';
  const votes = tally.votes[entry];
  if (votes !== undefined) return steps.votes({ votes });
  const others = Object.keys(tally.pairwise[entry] ?? {});
  const pairs = steps.pairsWon({ won: pairsWon(tally, entry), of: others.length });
  const next = alikeBehind(tally, entry);
  const bar = next === undefined ? undefined : numbers.get(next)?.number;
  if (next === undefined || bar === undefined) return pairs;
  const [ahead, behind] = [prefer(tally, entry, next), prefer(tally, next, entry)];
  return ahead > behind ? `${pairs}; ${steps.aheadOf({ bar, ahead, behind })}` : pairs;
}

const prefer = ({ pairwise }: Tally, one: string, other: string) => pairwise[one]?.[other] ?? 0;

const pairsWon = (tally: Tally, entry: string): number =>
  Object.keys(tally.pairwise[entry] ?? {}).filter(
    other => prefer(tally, entry, other) > prefer(tally, other, entry),
  ).length;

/** The next place's entry where it won as many pairs: only the pair of both tells why one is before the other. */
function alikeBehind(tally: Tally, entry: string): string | undefined {
  const place = tally.ranking.findIndex(tied => tied.includes(entry));
  const next = place < 0 ? undefined : tally.ranking[place + 1];
  return next?.find(other => pairsWon(tally, other) === pairsWon(tally, entry));
}
