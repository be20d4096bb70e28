import type { Features } from '../../text/learned/model.ts';
import { questionWords, wordFeatures } from '../../text/learned/question-words.ts';

const LENGTHS = { words: 1, stems: 1, pieces: 1 } as const;

/** A question's words with their neighbours, their stems and pieces; figures all alike. */
export const featuresOf = (question: string): Features => wordFeatures(questionWords(question), LENGTHS);
