import { clearLanguageOf } from '../engine/hazards/index.ts';
import type { Language } from '../engine/language.ts';
import { cut } from '../engine/text/cut.ts';
import { freeTexts } from './first-aid.ts';
import type { Question } from './question.ts';

/** So many characters tell it. */
const ENOUGH = 600;
/** Fewer characters are a name, and names are written in any language. */
const SENTENCE = 16;

/**
 * The language that a member's own sentences are clearly written in, else the one they read the platform in. The message
 * of somebody else, and what a button sends back, tell nothing about who asks.
 */
export function languageWritten(question: Question): Language {
  if (question.kind !== 'command') return question.language;
  const sentences = freeTexts(question).filter(text => text.length >= SENTENCE);
  return clearLanguageOf(cut(sentences.join('\n'), ENOUGH)) ?? question.language;
}
