import type { Result } from '../../src/engine/challenges/result.ts';
import type { Words } from '../../src/words/index.ts';

/** What put an entry in its place, in words; empty where nothing is known of it. */
export function placedBy(result: Result, entry: string, { challengeSteps: steps }: Words): string {
  switch (result.decidedBy) {
    case 'both': {
      const sum = result.sums.find(one => one.entry === entry);
      return sum ? steps.twoPlaces({ votes: sum.byVotes, colour: sum.byColour }) : '';
    }
    case 'votes':
      return votedFor(result, entry, steps);
    case 'colour': {
      const measured = result.colour.get(entry);
      return measured && 'score' in measured ? steps.nearPalette({ score: measured.score.score }) : '';
    }
    case 'nothing':
      return '';
  }
}

/** Votes where they are counted one by one, else how many bars it is preferred to. */
export function votedFor({ tally }: Result, entry: string, steps: Words['challengeSteps']): string {
  const votes = tally?.votes[entry];
  if (votes !== undefined) return steps.votes({ votes });
  if (!tally) return '';
  const against = Object.entries(tally.pairwise[entry] ?? {});
  const won = against.filter(([other, count]) => count > (tally.pairwise[other]?.[entry] ?? 0)).length;
  return steps.pairsWon({ won, of: against.length });
}
