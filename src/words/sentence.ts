import { LANGUAGES, type Language } from '../engine/language.ts';
import type { ReasonId, Reasons } from '../engine/refusal.ts';

export { LANGUAGES, type Language };

/** One sentence for every reason that exists anywhere: a reason without words does not compile. */
export type RefusalSentences = { readonly [Id in ReasonId]: (values: Reasons[Id]) => string };

/** What is told in several sentences, as one text: where it is shown, and nowhere before. */
export const oneText = (sentences: readonly string[]): string => sentences.join(' ');

/** A fixed sentence in every language. */
export type Phrase = Readonly<Record<Language, string>>;
