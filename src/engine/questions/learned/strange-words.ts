import { ideaCounts } from '../../text/learned/hashes.ts';
import { stem } from '../../text/tokens.ts';

/** Shorter words tell little of a field. */
const SHORTEST = 4;
/** Endings beyond are of grammar. */
const LONGEST_STEM = 7;
const MOST = 4;
const SHARES = 5;
const WORD = /^\p{L}+$/u;

/** The telling words of a question as they are kept: numbers and marks, short words and what stands for a thing are left out. */
export const tellingStems = (said: readonly string[]): readonly number[] =>
  said
    .filter(word => word.length >= SHORTEST && WORD.test(word))
    .map(word => [...ideaCounts([`word ${stem(word).slice(0, LONGEST_STEM)}`]).keys()][0]!);

/** How many of the words no maker used who asked for something of ours, and which share of all they are. */
export function strangeness(said: readonly string[], known: ReadonlySet<number>): readonly string[] {
  const stems = tellingStems(said);
  const strange = stems.filter(word => !known.has(word)).length;
  const share = Math.floor((SHARES * strange) / Math.max(1, stems.length));
  return [`strange words ${Math.min(strange, MOST)}`, `strange share ${share}`];
}
