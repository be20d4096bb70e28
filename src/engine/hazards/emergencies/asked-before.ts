import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

const LONGEST = 200;
/** Who asks which goes into which may tell a story before. */
const LONGEST_ORDER = 400;
const LYE =
  '(?:lye|naoh|caustic(?: soda)?|sodium hydroxide|lye flakes|lye crystals|sosa|soda caustica|lejia)';
const METAL = '(?:alumini?um|zinc|tin|galvani[sz]ed|aluminio|hojalata|galvanizad[oa])';
const VESSEL =
  '(?:pots?|pans?|bowls?|jugs?|buckets?|spoons?|saucepans?|ollas?|cazos?|bol(?:es)?|jarras?|cubos?|cucharas?)';

/** What is asked about: water that goes onto lye, or a metal that lye eats. */
const MATTERS = [
  new RegExp(String.raw`\bwater\b.{0,12}\b(?:on ?to|on|in ?to|over|to)\b(?: the| my)? ${LYE}\b`, 'u'),
  new RegExp(String.raw`\bagua\b.{0,12}\b(?:sobre|encima de|en|a)\b(?: la)? (?:${LYE}|soda)\b`, 'u'),
  new RegExp(String.raw`\b${METAL}\b.{0,40}\b${LYE}\b|\b${LYE}\b.{0,40}\b${METAL}\b`, 'u'),
];
const HELLO =
  '^(?:(?:hi|hello|hey|so|ok|okay|please|hola|oye|and|y|una pregunta|quick question|question)[ ,:]+)*';
/** Opens a question whether something may be done. */
const MAY = new RegExp(
  unbroken`
    ${HELLO}(?:can|could|may|should|shall|is it (?:ok|okay|safe|fine)|do i|puedo|podria|se puede|debo|
    deberia|es seguro|da igual|(?:in )?(?:what|which) order|which goes (?:in )?first|en que orden|que (?:va|
    se echa) primero)\b
  `,
  'u',
);
/** A thing to do, or to use, and a question mark. */
const BARE = new RegExp(
  String.raw`${HELLO}(?:pour|add|put|mix|use|water|lye|${METAL}|${VESSEL}|agua|sosa|echar|verter|usar|mezclar|echo|vierto)\b[^?]*\?+\s*$`,
  'u',
);
/** "Aluminium pot for lye": a thing and its use, and nothing that was done. */
const FOR_LYE = new RegExp(
  `${HELLO}(?:an? |una? |the |la )?(?:${METAL} ${VESSEL}|${VESSEL} de ${METAL}) (?:for|para)(?: mixing| mezclar)?(?: the| my| la| mi)? ${LYE}[ ?.!]*$`,
  'u',
);
const HOLDS =
  '(?:aguantan?|resisten?|soportan?|sobreviven?|survives?|withstands?|tolerates?|hold up (?:to|in))';
const NAME = String.raw`\p{L}+(?: \p{L}+){0,3}`;
/** What lye does to a colour, in one bare sentence: "la curcuma aguanta la soda caustica", "aguanta la sosa la mica rosa?". */
const WITHSTANDS = [
  new RegExp(
    `${HELLO}(?:(?:does|do|will|si|sabes si) )?(${NAME}) ${HOLDS}(?: a)?(?: la| the)? ${LYE}[ ?.!]*$`,
    'u',
  ),
  new RegExp(`${HELLO}${HOLDS}(?: a)?(?: la| the)? ${LYE} (${NAME})[ ?.!]*$`, 'u'),
];
/** Somebody or a part of somebody is no colour. */
const SOMEBODY = new RegExp(
  unbroken`
    \b(?:nin[oa]s?|hij[oa]s?|beb[ea]s?|madre|padre|abuel[oa]|herman[oa]|espos[oa]|marido|vecin[oa]|senora?|
    perr[oa]s?|gat[oa]s?|manos?|piel|ojos?|boca|cara|dedos?|brazos?|lengua|estomago|nadie|alguien|quien|yo|
    ella?|child|children|kids?|baby|son|daughter|husband|wife|mum|mom|dad|dog|cat|hands?|skin|eyes?|mouth|
    face|fingers?|arms?|tongue|he|she|they|nobody|somebody|who|i|we|you)\b
  `,
  'u',
);

/** True where a bare sentence asks whether a colour withstands lye. */
const isOfColour = (text: string): boolean =>
  WITHSTANDS.some(pattern => pattern.test(text)) && !SOMEBODY.test(text);

/** Anything of this was done already, is going on, or hurts. */
const HAPPENED = new RegExp(
  unbroken`
    \b(?:poured|added|mixed|used|spil\w*|fizz\w*|bubbl\w*|boil\w*|foam\w*|froth\w*|smok\w*|steam\w*|hiss\w*|
    erupt\w*|help|now|burn\w*|hurt\w*|splash\w*|hot|melt\w*|just|already|black|gr[ae]y|i put|we put|got|
    eche|echamos|echaron|puse|pusimos|puso|verti\w*|use|usamos|mezcle|derram\w*|hierv\w*|hirv\w*|burbuj\w*|
    humo|humea\w*|quem\w*|ayuda|auxilio|ya|ahora|acab\w*|salpic\w*|espuma|negr[oa]|caliente)\b
  `,
  'u',
);
/** "Do I pour the lye in the water or the water on the lye": both orders, of which one is asked, wherever it stands. */
const IN = '(?:in|into|on|onto|to|en|al|a|sobre)';
const THE = '(?:the |la |el )?';
const WATER = '(?:water|agua)';
const LYE_IN_WATER = `${THE}${LYE} ${IN} ${THE}${WATER}`;
const WATER_IN_LYE = `${THE}${WATER} ${IN} ${THE}${LYE}`;
const ADDS = unbroken`
  (?:(?:do|should|shall|must) (?:i|we|you) (?:pour|put|add|tip)|echo|pongo|vierto|agrego|va|se (?:echa|pone|agrega|vierte))
`;
const BOTH_ORDERS = new RegExp(
  String.raw`\b${ADDS} (?:${LYE_IN_WATER},? (?:or|o) ${WATER_IN_LYE}|${WATER_IN_LYE},? (?:or|o) ${LYE_IN_WATER})\b`,
  'u',
);
const NOW = /\b(?:now|ahora|ya|used to)\b/gu;
const asksOrder = (words: string): boolean => {
  const text = unaccented(words);
  return BOTH_ORDERS.test(text) && !HAPPENED.test(text.replace(NOW, ' '));
};

const USE_OPENS = new RegExp(String.raw`${HELLO}use\b`, 'u');
const MAY_USE = /\b(?:can|could|may|should|shall) (?:i|we|you) (?:use|put)\b/u;

/** Done by somebody: without its accent the same word is what is to be done. */
const DONE = /ech[óé]|vert[íi][óo]?\b/u;

/** True where a word says that something was done already, is going on, or hurts. Reads the first 200 characters. */
export const hasHappened = (words: string): boolean =>
  DONE.test(words) || HAPPENED.test(unaccented(words, LONGEST));

/**
 * True where somebody asks before doing it whether water may go onto lye, or whether lye may meet a metal that it eats:
 * that is answered as a question of handling. One word of what happened, or of what hurts, and it is none.
 */
export function isAskedBefore(words: string): boolean {
  if (DONE.test(words)) return false;
  if (words.length <= LONGEST_ORDER && asksOrder(words)) return true;
  if (words.length > LONGEST) return false;
  const text = unaccented(words, LONGEST).replace(/[¿¡]/gu, '').trim();
  if (isOfColour(text) && !HAPPENED.test(text)) return true;
  if (!MATTERS.some(matter => matter.test(text))) return false;
  const told =
    MAY_USE.test(text) || USE_OPENS.test(text) ? text.replace(/\b(?:use|(?:i|we) put)\b/u, '') : text;
  if (HAPPENED.test(told)) return false;
  return MAY.test(text) || BARE.test(text) || FOR_LYE.test(text);
}
