import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';

const LIMIT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:before|until) (?:it|it ?['’]?s|they|the \p{L}+)(?: \p{L}+){0,4} (?:stain\p{L}*|gr[ae]y|lather|suds|towels?|cloths?|facecloths?|
    brittle|bleed\p{L}*)|(?:won ?['’]?t|without|doesn ?['’]?t|not) (?:\p{L}+ ){0,3}(?:stain\p{L}*|gr[ae]y|colou?red|tinted|coloring|
    colouring|tinting) (?:\p{L}+ )?(?:lather|suds|towels?|cloths?|hands|skin|bubbles|tub|bath)|(?:the )?(?:most|max(?:imum)?|limit) (?:i|we|you|that|before)|
    how (?:much|high|far) (?:can|could) (?:i|we|you) (?:go|push)|hasta (?:cuanto|donde)|(?:sin que|antes de que|que no) (?:me |le |les )?
    (?:manche|ensucie|tina|pinte|destina)\p{L}*|como maximo|(?:el )?(?:tope|limite|maximo))(?!\p{L})
  `,
  'u',
);

/** Whether the most of a colour is asked, beyond which lather, cloths or the bar suffer. Pure. */
export const asksForLimit = (question: string): boolean => LIMIT.test(unaccented(question));

const IN_GRAMS =
  /(?<!\p{L})(?:how many (?:grams?|g)|cuant[oa]s (?:gramos|g|gr)|in grams|en gramos|(?:how much|cuanto) (?:do i |should i )?(?:weigh|peso))(?!\p{L})/u;

/** Whether a dose is asked for by weight. Pure. */
export const asksInGrams = (question: string): boolean => IN_GRAMS.test(unaccented(question));
