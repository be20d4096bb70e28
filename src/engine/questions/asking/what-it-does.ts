import { unbroken } from '../../over-lines.ts';

/** What this can do for whoever asks, in lower case without accents; nobody is called to a bench by it. */
export const WHAT_IT_DOES = new RegExp(
  unbroken`
    (?<!\p{L})(?:what (?:all )?(?:can|do|else can) (?:you|u|ye|yous|this) (?:(?:actually|really|
    even) )?(?:do|know|help)(?: (?:me |us )?with)?(?= *(?:[?!.,;]|$|for|then|exactly|besides|here))|
    (?:what are you|whatcha|what's this|whats this) good for|how (?:can|do) you help|(?:q|que|vos que|
    tu que|usted que) (?:\p{L}+ )?(?:sab[eé]s|sabis|podis|puedes|podes|haces|sabe|puede) hacer|(?:en|con) que (?:me |
    nos )?(?:pued[eo]s?|podes|pueden) (?:ayudar(?:me|nos)?|servir)|(?:esto |tu |
    vos )?para que sirv\p{L}+ (?:esto|tu|vos|este bot)(?= *(?:[?!.,;]|$|exact)))
  `,
  'gu',
);

/** Whether a question asks what this can do. Takes lower case without accents. Pure. */
export const asksWhatItDoes = (text: string): boolean => text.search(WHAT_IT_DOES) >= 0;
