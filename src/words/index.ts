import { createRequire } from 'node:module';
import type { Refusal } from '../engine/refusal.ts';
import * as en from './en/index.ts';
import type * as spanish from './es/index.ts';
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

/** At once, as a sentence cannot wait; English is what faults and logs speak, so it is always there. */
const load = createRequire(import.meta.url);

const voices: Readonly<Record<Language, () => Words>> = {
  en: () => voice('en', en, en.refusals),
  es() {
    const es = load('./es/index.ts') as typeof spanish;
    return voice('es', es, es.refusals);
  },
};
const words = new Map<Language, Words>();

/** The words of a language, which are loaded with the first who reads it. */
export function wordsIn(language: Language): Words {
  const known = words.get(language) ?? voices[language]();
  words.set(language, known);
  return known;
}
