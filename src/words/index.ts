import type { Refusal } from '../engine/refusal.ts';
import * as en from './en/index.ts';
import * as es from './es/index.ts';
import type { Language, RefusalSentences } from './sentence.ts';

export { LOCALES, languageOf } from './locales.ts';

type Subjects = Omit<typeof en, 'refusals'>;

/** Everything that can be said in one language, by subject, and the sentence of any refusal. */
export type Words = Subjects & {
  readonly language: Language;
  refusal(refusal: Refusal): string;
};

const voice = (language: Language, subjects: Subjects, refusals: RefusalSentences): Words => ({
  ...subjects,
  language,
  refusal: ({ id, values }) => (refusals[id] as (given: typeof values) => string)(values),
});

const words: Readonly<Record<Language, Words>> = {
  en: voice('en', en, en.refusals),
  es: voice('es', es, es.refusals),
};

/** The words of a language. */
export const wordsIn = (language: Language): Words => words[language];
