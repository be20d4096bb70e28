import { refuse } from '../../engine/refusal.ts';
import type { Question } from '../question.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'text-too-long': { readonly most: number };
  }
}

/** As much as any option of the platform takes, in UTF-16 units. */
export const mostTyped = 6_000;
/** What is typed into an option that suggests; what is longer is no beginning of a name. */
const mostSuggested = 200;

/** U+FDFA, the longest of them (Unicode FAQ, Normalization: how far a text can grow). */
const MOST_SPELLED = 18;

/** Fractions and squared units become up to four; a text that grows more, on the whole, is no words. */
const MOST_GROWN = 4;

/** The most characters that a text may have once compatibility characters are spelled out: `most`, less for ligatures alone. */
const mostSpelled = (text: string, most: number) =>
  Math.min(most, Math.max(mostSuggested, MOST_GROWN * text.length));

/** True while the text is no longer than that, also once it is spelled out: some characters become eighteen. */
const fits = (text: string, most: number) =>
  text.length * MOST_SPELLED <= Math.min(most, mostSuggested) ||
  (text.length <= most && text.normalize('NFKC').length <= mostSpelled(text, most));

/** Whether a text that is being typed is worth suggestions. */
export const isShort = (typed: string): boolean => fits(typed, mostSuggested);

/** Throws a Refusal `text-too-long` for a question with a text that would take long to read, before anything reads it. */
export function checkLegible(question: Question): void {
  for (const text of textsOf(question))
    if (!fits(text, mostTyped)) refuse('text-too-long', { most: mostSpelled(text, mostTyped) });
}

function textsOf(question: Question): readonly string[] {
  const texts = (given: Readonly<Record<string, unknown>>) =>
    Object.values(given).filter(value => typeof value === 'string');
  switch (question.kind) {
    case 'command':
    case 'typing':
      return texts(question.given);
    case 'follow':
      return [...question.values, ...texts(question.fields)];
    case 'point':
      return [question.message.text];
  }
}
