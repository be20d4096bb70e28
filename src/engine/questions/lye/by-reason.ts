import { refuse, unlessRefused } from '../../refusal.ts';
import { asTyped } from './amounts/as-typed.ts';
import { plainWords } from './amounts/words.ts';
import { type LyeQuestion, readLyeQuestion } from './question.ts';
import type { Way } from './recipe-line/items/item.ts';
import type { Unclear } from './recipe-line/unclear.ts';
import { readyLyeNamed } from './sums/ready-solution.ts';

/** The recipe without the words that are not understood, where it reads whole without them. */
export type Passed = { readonly ways?: readonly Way[] };

/**
 * Throws what asks about an unclear recipe where its reason alone tells that; else the recipe as it reads without the words that are
 * not understood, where it does.
 */
export function refuseByReason(read: Unclear, question: string): Passed {
  switch (read.why) {
    case 'fats':
      return refuse('superfat-twice', read.fats);
    case 'sum':
      return refuse('oils-percent-sum', { sum: read.sum });
    case 'twice':
      return refuse('oil-told-twice', read.twice);
    case 'doubt':
      return refuse('oil-in-pot', {
        names: read.doubt.names.map(({ text }) => text),
        text: read.doubt.text.slice(0, 60),
        ways: strictWays(read.ways, question),
      });
    case 'another':
      return refuse('recipe-of-another', { text: read.unclear });
    case 'planned':
      return refuse('recipe-planned', { text: read.unclear });
    case 'words': {
      const ways = strictWays(read.ways, question);
      return ways.length > 0 ? { ways } : {};
    }
    case 'place':
    case 'alkalis':
      return {};
  }
}

/** The recipes that the strict reader takes; none of ready-made lye, of which another weight is told than these lines would. */
const strictWays = (ways: readonly Way[], question: string): readonly Way[] =>
  readyLyeNamed(plainWords(asTyped(question), { clauses: true })) === undefined
    ? ways.filter(({ line }) => strictly(line) !== undefined)
    : [];

/** What the strict reader takes of a line; undefined where it refuses it. */
export const strictly = (line: string): LyeQuestion | undefined => unlessRefused(() => readLyeQuestion(line));
