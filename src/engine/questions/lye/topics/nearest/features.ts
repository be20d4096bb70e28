import { ideaCounts, wordCounts } from '../../../../text/learned/hashes.ts';
import type { Features, Model } from '../../../../text/learned/model.ts';
import { FIGURE, questionWords, stemmed, wordFeatures } from '../../../../text/learned/question-words.ts';
import { ideasIn } from './ideas.ts';

const LENGTHS = { words: 0.8, stems: 1, pieces: 0.9, ideas: 1.2 } as const;

/** Each idea and each two of them, whatever stands between. */
const withPairs = (ideas: readonly string[]): readonly string[] => [
  ...ideas,
  ...ideas.flatMap((one, at) => ideas.slice(at + 1).map(other => `${one}+${other}`)),
];

/** A question's words, their stems and pieces, and what they stand for in either language; figures all alike. */
export function featuresOf(question: string): Features {
  const words = questionWords(question);
  return [
    ...wordFeatures(words, LENGTHS),
    { counts: ideaCounts(withPairs(ideasIn(words))), length: LENGTHS.ideas },
  ];
}

/** Shorter words hold a sentence together and tell nothing. */
const LEAST_LETTERS = 4;

/** Which share of a question's telling words a model knows, 0 to 1; 1 where it has none. */
export function shareKnown(question: string, { rows }: Pick<Model, 'rows'>): number {
  const words = questionWords(question).filter(word => word !== FIGURE && word.length >= LEAST_LETTERS);
  const known = words.filter(
    word =>
      ideasIn([word]).length > 0 ||
      [word, stemmed(word)].some(one => [...wordCounts([one]).keys()].some(key => rows.has(key))),
  );
  return words.length === 0 ? 1 : known.length / words.length;
}
