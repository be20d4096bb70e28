import { stem, tokenise } from '../tokens.ts';
import { pieceCounts, wordCounts } from './hashes.ts';
import type { Features } from './model.ts';

/** Words beyond these tell a story. */
const MOST_WORDS = 60;
/** So much is read of a text, in UTF-16 units. */
const LONGEST = 600;
/** Stands for every figure. */
export const FIGURE = '<figure>';

/** The words of a question that a model of matters learns from; figures all alike. */
export const questionWords = (question: string): readonly string[] =>
  tokenise(question.slice(0, LONGEST))
    .filter(({ kind }) => kind !== 'mark')
    .slice(0, MOST_WORDS)
    .map(({ kind, text }) => (kind === 'number' ? FIGURE : text));

/** A word's stem, apart from the word that is written like it. */
export const stemmed = (word: string): string => `~${stem(word)}`;

/** How much words, stems and pieces of words count beside each other. */
export type WordLengths = Readonly<Record<'words' | 'stems' | 'pieces', number>>;

/** Words with their neighbours, their stems and their pieces. */
export const wordFeatures = (words: readonly string[], lengths: WordLengths): Features => [
  { counts: wordCounts(words), length: lengths.words },
  { counts: wordCounts(words.map(stemmed)), length: lengths.stems },
  { counts: pieceCounts(words.filter(word => word !== FIGURE)), length: lengths.pieces },
];
