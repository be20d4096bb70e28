import { clearLanguageOf } from '../../engine/hazards/index.ts';
import type { Language } from '../../engine/language.ts';
import { languageTurn } from '../../engine/questions/leaning/turn/turns.ts';
import { languageOfQuestion } from '../../engine/questions/question-language.ts';
import { cut } from '../../engine/text/excerpt.ts';
import type { Question } from '../question.ts';

/** So many characters tell it. */
const ENOUGH = 600;
/** Fewer characters are a name, and names are written in any language. */
const SHORTEST = 16;
/** The options in which members write sentences; in the others stand names, lists and amounts. */
const SENTENCES = ['words'] as const;

/**
 * The language that a member's own sentences are clearly written in, else the one they read the platform in. The message
 * of somebody else, and what a button sends back, tell nothing about who asks.
 */
export function languageWritten(question: Question): Language {
  if (question.kind !== 'command') return question.language;
  const { given } = question;
  // A question is a sentence of one's own, however short.
  if (typeof given.question === 'string')
    return languageOfQuestion(cut(given.question, ENOUGH)) ?? question.language;
  const sentences = SENTENCES.flatMap(name => {
    const text = given[name];
    return typeof text === 'string' && text.length >= SHORTEST ? [text] : [];
  });
  if (sentences.length === 0) return question.language;
  return clearLanguageOf(cut(sentences.join('\n'), ENOUGH)) ?? question.language;
}

/** The language that a question asks to be answered in, where it asks for nothing else: "¿y en español?". */
export function languageAskedFor(question: Question): Language | undefined {
  const asked = question.kind === 'command' ? question.given.question : undefined;
  return typeof asked === 'string' ? languageTurn(asked) : undefined;
}
