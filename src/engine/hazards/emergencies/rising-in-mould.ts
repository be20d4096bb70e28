import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/** Longer texts tell a story, and a story may hold lye in its jug or somebody who is hurt. */
const LONGEST = 120;
const word = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');
const MOULD = word('mou?lds?|moldes?|loaf(?: tin| pan)?');
const RISES = word(
  unbroken`
    ris(?:es?|ing|en)|rose|climb\w*|growing|grows|swell\w*|puff\w*|ooz\w*|overflow\w*|volcan\w*|erupt\w*|
    com(?:es|ing) (?:up )?(?:out|over)|sube|subiendo|(?:esta|sigue) creciendo|crece|infla\w*|inflando|
    desbord\w*|rebos\w*|se (?:me |esta )*(?:sal(?:e|iendo)|viene)
  `,
);
/** Lye in its jug, what runs about, spits or burns, somebody near it, and what is over: none of it is only a loaf that got too hot. */
const MORE = word(
  unbroken`
    lye|naoh|caustic\w*|sosa|soda|lejia|jugs?|jarras?|jars?|buckets?|baldes?|water|agua|pots?|ollas?|
    crock ?pot|alumin\w*|metal|counters?|worktops?|tables?|floor|sockets?|everywhere|all over|down the|mesa|
    meson|encimera|piso|suelo|enchufe|por todas? partes?|spit\w*|spat|smok\w*|steam\w*|fire|burn\w*|
    escup\w*|salpic\w*|humo|humea\w*|fuego|quem\w*|hands?|skin|eyes?|face|kids?|child\w*|dogs?|cats?|manos?|
    piel|ojos?|cara|nin[oa]s?|hij[oa]s?|perr[oa]s?|gat[oa]s?|yesterday|ayer|last (?:week|night)|anoche|
    next time|la proxima|cured?|curad[oa]s?|cold|fri[oa]|won'?t|wont|no sale|bread|dough|cake|masa de pan|
    charity|swirl\w*|mica
  `,
);

/**
 * Whether a few words tell of soap that rises in its mould or out of it, and of nothing more: heat of its own, which is stirred down and
 * cooled, where lye that boils in a jug is left alone (common practice, no source). Pure.
 * @example isRisingInMould('volcano!! its rising out the mould') // true
 */
export function isRisingInMould(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text);
  return MOULD.test(plain) && RISES.test(plain) && !MORE.test(plain);
}
