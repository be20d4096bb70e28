import { pieceCounts, wordCounts } from '../../text/learned/hashes.ts';
import type { Features } from '../../text/learned/model.ts';
import { stem, tokenise } from '../../text/tokens.ts';

/** Words beyond these tell a story. */
const MOST_WORDS = 60;
/** So much is read of a text, in UTF-16 units. */
const LONGEST = 600;
const FIGURE = '<figure>';

/** How much words, stems and pieces of words count beside each other; chosen by leaving out one writer at a time. */
const LENGTHS = { words: 1, stems: 1, pieces: 1 } as const;

/** A question's words with their neighbours, their stems and pieces; figures all alike. */
export function featuresOf(question: string): Features {
  const words = tokenise(question.slice(0, LONGEST))
    .filter(({ kind }) => kind !== 'mark')
    .slice(0, MOST_WORDS)
    .map(({ kind, text }) => (kind === 'number' ? FIGURE : text));
  return [
    { counts: wordCounts(words), length: LENGTHS.words },
    { counts: wordCounts(words.map(word => `~${stem(word)}`)), length: LENGTHS.stems },
    { counts: pieceCounts(words.filter(word => word !== FIGURE)), length: LENGTHS.pieces },
  ];
}
