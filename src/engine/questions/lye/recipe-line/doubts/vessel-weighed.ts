import { unbroken } from '../../../../over-lines.ts';
import { COUNT, LYE, UNIT } from '../../amounts/words.ts';

/*
 * A vessel whose own weight is told beside the oils': whether that is in their weights nobody here knows, and a vessel counted as oil is too much
 * lye (common practice: scales are set to nothing with the vessel on them).
 */

/** What oils stand on a scale in; batter's moulds are none. */
const VESSEL = unbroken`
  (?:bowls?|pots?|pans?|saucepans?|jugs?|jars?|tubs?|tins?|cans?|bottles?|buckets?|pails?|beakers?|basins?|crocks?|kettles?|cups?|mugs?|dish|
  dishes|containers?|lids?|bol(?:es)?|cuencos?|ollas?|ollita|cazos?|cazuelas?|jarras?|jarros?|tarros?|frascos?|botes?|latas?|botellas?|
  garrafas?|bidon|cubos?|cubetas?|baldes?|tazon(?:es)?|recipientes?|envases?|tapers?|tapas?|plastico|cristal|vidrio)
`;
const ALONE = unbroken`
  (?:alone|empty|itself|themselves|each|apiece|on (?:its|their) own|by (?:itself|themselves)|vaci[oa]s?|sol[oa]s?|cada un[oa]|por si sol[oa]s?|
  with (?:the |its |their )?lids?|and (?:the )?lids?|con (?:la |su )?tapas?|glass|plastic|steel|de \p{L}+)
`;
const ABOUT = '(?:about|around|roughly|nearly|almost|some|me|unos|unas|como|casi|seran|sus|cerca de)';
const WEIGHS =
  '(?:weighs?|weighed|weighing|comes? (?:to|in at|out at)|came to|reads?|pesan?|pesaba|pesaban|pesara|pesaran|da|dan|marca)';
const IS = "(?:'s|'re|is|are|was|were|es|son|era|eran|seran|:|=)?";
const TARE = '(?:tare|tara)';
const WEIGHT = `${COUNT} ?${UNIT}(?! (?:of |de )(?!${VESSEL})\\p{L})`;
const TOLD = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:mason|glass|plastic|empty) )?${VESSEL}(?: ${ALONE})*,?(?: (?:which|that|que|and|
    y))?(?: ${ALONE})* ${WEIGHS}(?: ${ABOUT})* (?:${WEIGHT}|\d+(?![\d.,]*\d)(?! ?(?:%|percent|por ciento)))|
    (?<!\p{L})${VESSEL}(?: ${ALONE})+,? ?${IS}(?: ${ABOUT})* ${WEIGHT}|
    (?<!\p{L})${VESSEL}(?: ${ALONE})*,? ?${IS}(?: ${ABOUT})* ${WEIGHT} ${ALONE}|
    (?<!\p{L})(?:each|every|cada) ${VESSEL}(?: ${ALONE})* (?:${IS}|${WEIGHS})(?: ${ABOUT})* ?${WEIGHT}|
    (?<!\p{L})${VESSEL},? (?:will be|must be|might be|seran|sera|puede ser|estara en)(?: ${ABOUT})* ${WEIGHT}|
    (?<!\p{L})(?:the |la |el )?${TARE} (?:${IS}|${WEIGHS}|of|de)(?: ${ABOUT})* ?${WEIGHT}
  `,
  'u',
);
/** Weighed in what it is sold in, as a habit or this time: with its glass. */
const HOLDER = unbroken`
    (?:jars?|tins?|cans?|tubs?|bottles?|cartons?|wrappers?|packag\p{L}+|containers?|tarros?|frascos?|botes?|latas?|
    botellas?|garrafas?|bidon|envases?|cartones|paquetes?)
  `;
const IN_THEM = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:i|we|i've|we've|always|usually|all) )*(?:weigh|weighed|weighing|measure|measured)(?: (?:it|them|these|those|all|everything|
    that|the oils?|my oils?|mine|always|usually))* (?:in|inside|with|still in) (?:the|their|its|my)(?: (?:\p{L}+))? ${HOLDER}(?!\p{L})|
    (?<!\p{L})(?:(?:l[oa]s? )?(?:peso|pese|pesamos|pesado|pesada)|pesan?dolo)(?: (?:siempre|todo|todos|los aceites|el aceite|tod[oa]s))* (?:en|dentro de|
    con)(?: (?:el|la|los|las|su|sus|mi|mis))? (?:mism[oa]s? )?${HOLDER}(?!\p{L})
  `,
  'u',
);
/** Nothing of the vessel is in the weight. */
const TARED = new RegExp(
  unbroken`
    (?<!\p{L})(?:tar(?:ed|ing|e|ado|ada|amos|o)|zero(?:ed|ing)?|a cero|en cero|subtract\p{L}*|deduct\p{L}*|(?:took|taken|take) (?:it|that|
    them|those|the \p{L}+|the weight)(?: of \p{L}+ \p{L}+)? (?:off|out|away)|net|neto|descont\p{L}+|rest(?:e|ado|ada|ando)|ya (?:le |les |
    se )?l[oa]s? quite|without (?:the|its|their) ${VESSEL}|
    sin (?:el |la |los |las )?${VESSEL}|(?:empty|vaci[oa])s? first)(?!\p{L})
  `,
  'u',
);
const NOT_TARED = new RegExp(
  unbroken`
    (?<!\p{L})(?:forg[eo]t\p{L}*|didn?['’]?t|did not|never|haven?['’]?t|not|without tar\p{L}*|except|but the|no (?:la|lo|los|las|le|se)? ?(?:tare|
    puse)|olvid\p{L}*|sin tarar|
    sin poner\p{L}*|menos la|salvo|excepto|nunca)(?!\p{L})
  `,
  'u',
);
const OF_NO_OIL = new RegExp(`(?<!\\p{L})(?:${LYE}|soda|water|agua|mou?lds?|moldes?)(?!\\p{L})`, 'u');

/**
 * The words of a message that tell what a vessel weighs, or that oils were weighed in what they are sold in, where nobody says that it was taken
 * off; undefined where none do. Takes what `plainWords` gives with its clauses. Pure.
 * @example vesselWeighedIn('800 g lard ; the jars are 90 g each empty') // 'jars are 90 g each'
 */
export function vesselWeighedIn(plain: string): string | undefined {
  if (TARED.test(plain) && !NOT_TARED.test(plain)) return undefined;
  const said = plain.split(';').filter(sentence => !OF_NO_OIL.test(sentence.replace(TAKES_LYE, ' ')));
  for (const sentence of said) {
    const [text] = TOLD.exec(sentence) ?? IN_THEM.exec(sentence) ?? [];
    if (text !== undefined) return text.trim();
  }
  return undefined;
}
/** What is asked for is no vessel's. */
const TAKES_LYE = new RegExp(
  `(?<!\\p{L})(?:(?:how much|what|cuant[oa]s?|que)(?: de)?(?: the| la)?|for|para|the|la) ${LYE}(?! (?:jug|jar|bowl|tub|pot|bottle|bote|jarra|tarro|frasco))`,
  'gu',
);
