import { ideaCounts } from '../../text/learned/hashes.ts';
import type { Features } from '../../text/learned/model.ts';
import { questionWords, wordFeatures } from '../../text/learned/question-words.ts';
import { chatSpelt } from '../../text/spelling/chat-spelling.ts';
import { ideasIn } from './ideas.ts';

const LENGTHS = { words: 1, stems: 1, pieces: 1, ideas: 1.8 } as const;

/** Each idea and each two of them, whatever stands between. */
const withPairs = (ideas: readonly string[]): readonly string[] => [
  ...ideas,
  ...ideas.flatMap((one, at) => ideas.slice(at + 1).map(other => `${one}+${other}`)),
];

/** A question's words with their neighbours, their stems and pieces, and what they stand for in either language; figures all alike. */
export function featuresOf(question: string): Features {
  const words = questionWords(chatSpelt(question));
  return [
    ...wordFeatures(words, LENGTHS),
    { counts: ideaCounts(withPairs(ideasIn(words))), length: LENGTHS.ideas },
  ];
}
