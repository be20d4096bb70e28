import { unaccented } from '../../text/unaccented.ts';
import type { Correction } from './words-of.ts';

/** A question with the slips that its reader put right. Pure. */
export const withSlipsRight = (question: string, corrections: readonly Correction[]): string =>
  question.replace(/\p{L}[\p{L}\p{M}]*/gu, word => {
    const typed = unaccented(word);
    return corrections.find(({ from }) => from === typed)?.to ?? word;
  });
