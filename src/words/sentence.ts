import { LANGUAGES, type Language } from '../engine/language.ts';
import type { ReasonId, Reasons } from '../engine/refusal.ts';

export { LANGUAGES, type Language };

/** One sentence for every reason that exists anywhere: a reason without words does not compile. */
export type RefusalSentences = { readonly [Id in ReasonId]: (values: Reasons[Id]) => string };

/** A fixed sentence in every language. */
export type Phrase = Readonly<Record<Language, string>>;
