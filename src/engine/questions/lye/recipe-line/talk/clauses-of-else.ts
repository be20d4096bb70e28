import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { FAT, LYE } from '../../amounts/words.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';
import { BESIDE_FATS, THING_OF_ELSE, WEATHER_WORD } from './things-of-else.ts';

/*
 * Clauses that speak of something else than the recipe: their subject, or what is done in them, is the weather, the house, a meal, an
 * animal, the mould. What such a clause says of it (lost, halved, late, left) is said of that thing, and the pot stays as it is. A clause
 * goes only where it is of nothing in the recipe: no fat, no figure, no vessel, no word that points back.
 */

const DET =
  '(?:(?:the|my|our|his|her|their|its|that|this|a|an|some|el|la|los|las|mi|mis|tu|su|sus|nuestr[oa]s?|un|una|unos|unas|ese|esa|este|esta)(?: own)?)';
const ADJ = unbroken`
  (?:old|new|big|little|wee|poor|bloody|blasted|darn|damn|stupid|silly|wretched|front|back|cold|hot|wet|
  good|best|lovely|washing-up|wooden|vieja|viejo|nueva|nuevo|grande|chica|chico|bendit[oa]|maldit[oa]|pobre|
  fri[oa]|caliente|buen[oa]?)
`;
const LEAD = unbroken`
  (?:and|but|so|oh|ah|also|well|anyway|because|cos|since|as|while|when|plus|now|just|only|still|then|today|
  tonight|meanwhile|sorry|btw|y|e|pero|que|porque|mientras|aunque|asi que|pues|bueno|hoy|ahora|ya|ay|uf|
  encima|ademas|perdon|justo|aqui|aca|ahi|recien|eso si|por cierto)
`;
const SHARE =
  '(?:(?:half|most|some|all|a bit|a piece|the rest|the end|a corner|(?:la )?mitad|medi[oa]|casi|un poco|un pedazo|un trozo|parte)(?: (?:of|de))? )';
const WHO = unbroken`
  (?:i|we|she|he|they|you|yo|ella|el|ellos|nosotr[oa]s|(?:${DET} )?${PERSON}(?: (?:in law))?|
  ${DET} (?:kids?|children|boys?|girls?|lads?|baby|wee one|little one|nin[oa]s?|chic[oa]s|nen[ea]s?|bebe|
  abuelos|viej[oa]|man|woman|lady|neighbours))
`;
const AUX = unbroken`
  (?:'?ve|'?d|'?m|'?s|'?re|'?ll|am|is|are|was|were|have|has|had|just|already|still|even|also|nearly|almost|
  never|not|didn'?t|did|do|don'?t|can'?t|couldn'?t|had to|have to|got to|going to|me|te|se|nos|le|les|lo|ya|
  nomas|todavia|aun|no|casi|he|ha|hemos|han|tuve que|tengo que|voy a|vamos a|fui a)
`;

const AT_HEAD = [
  // "The car's still in the garage", "el horno sigue frío".
  `(?:${DET} )?(?:${ADJ} )?${THING_OF_ELSE}`,
  // "I spilt half the tea", "forgot my glasses", "tiré la sopa", "se me volcó el mate".
  unbroken`
    (?:${WHO}(?!\p{L}) ?)?(?:${AUX}(?!\p{L}) ?)*(?!(?:in|on|at|to|from|of|for|with|by|into|under|behind|as|
    is|was|are|were|still|en|con|de|del|al|a|para|por|desde|sobre|bajo|junto|es|esta|era|son|va|sigue|queda|
    quedo)(?!\p{L}))\p{L}{2,}(?: (?:up|down|off|out|over|on|at|in|to|for|al?|de))? ?(?:${SHARE}${DET}?|
    ${DET}) ?(?:${ADJ} )?${THING_OF_ELSE}
  `,
  // "It's raining", "what a storm".
  `(?:(?:it|is|it'?s|its|what a|such|que|hace|hay|esta|sigue|está|was|been|tremend[oa]|mucho|mucha|so|still|aca|here) ?)*${WEATHER_WORD}`,
].map(pattern => new RegExp(`^ ?(?:${LEAD},? )*(?:${pattern})(?![\\p{L}-])`, 'u'));

/** "Fragrance and mica aside", "sin contar fragancia ni arcilla", "not counting the scent". */
const SET_ASIDE = new RegExp(
  unbroken`
    ^ ?(?:${LEAD},? )*(?:(?:not counting|leaving (?:out|aside)|apart from|aside from|besides|
    without counting|ignoring|forget(?:ting)?|sin contar|aparte(?: de)?|ademas de|dejando (?:aparte|fuera|
    de lado))(?: (?:the|my|el|la|los|las|mi|de))* )?(?:(?:the|my|el|la|los|
    las) )?${BESIDE_FATS}(?:(?:,| and| or| y| e| ni| o|/)+(?: (?:the|my|el|la|los|
    las))* ?${BESIDE_FATS})*(?: (?:aside|apart|not counted|not included|aparte|a parte|separad[oa]s?))? ?$
  `,
  'u',
);

/** The same where its list has a comma, or figures of its own: "la fragancia (30 g) va aparte, no se cuenta". */
const SET_ASIDE_ALL = new RegExp(
  unbroken`
    (?<=^|[;,] ?)(?:and |y |oh |ah )?(?:(?:the|my|el|la|los|las|mi) )?${BESIDE_FATS}(?: (?:and|y|e|ni|o|
    or) (?:(?:the|my|el|la) )?${BESIDE_FATS})* ?(?:\d[\d.,]* ?(?:g|gr|gramos|grams?|ml|oz|%))?(?: (?:goes|
    go|is|are|comes?|va|van|es|son))?(?: (?:in))?(?: (?:later|aside|apart|separate\p{L}*|extra|at trace|
    after|aparte|al final|despues|en (?:la )?traza))(?: ?, ?(?:and )?(?:(?:do ?n['’]?t|dont|do not|
    not) (?:to be )?count(?:ed)?(?: (?:it|them|that))?|(?:ya )?no (?:se|la|lo|los|las) cuent\p{L}+|
    sin contar(?:la|lo)?))?(?= ?[;,]|$)
  `,
  'gu',
);

/** What points back at the recipe, or stands for something in it. */
const POINTS_BACK = new RegExp(
  unbroken`
    (?<!\p{L})(?:them|these|those|this|ones?|both|each|everything|rest|first|second|third|last one|other|
    another|instead|half|halves|double\p{L}*|tripl\p{L}+|twice|some(?= (?:of|was|is|went|got|fell))|most|
    lot|bit|mix\p{L}*|blend|batter|oils?|oily|fats?|fatty|butters?|butter\p{L}+|lard\p{L}*|grease|wax\p{L}*|
    recipes?|batch\p{L}*|weigh\p{L}*|scales?|grams?|ounces?|pounds?|kilos?|amounts?|figures?|numbers?|
    lists?|notes?|card|book|pots?|pans?|bowls?|jars?|jugs?|tubs?|tins?|bottles?|bucket|containers?|packets?|
    bags?|cups?|water|wet|milk|es[oea]s?|est[oa]s?|est[oa] que|aquell[oa]s?|un[oa] de|amb[oa]s|cada|todo|
    todos|todas|resto|demas|primer[oa]?|segund[oa]|tercer[oa]?|ultim[oa]|otr[oa]s?|mitad|medi[oa]|doble|
    dupli\p{L}+|tripl\p{L}+|lote|tandas?|mezcla\p{L}*|masa|aceites?|mantecas?|mantequillas?|grasas?|sebo|
    cera|recetas?|pes(?:o|os|e|ar|ado|ada|aba|amos)|balanza|bascula|gramos|onzas|libras|kilos|
    cantidad(?:es)?|cifras?|numeros?|listas?|hoja|papel|cuaderno|libreta|ollas?|cazos?|cazuela|bol|cuencos?|
    frascos?|botes?|tarros?|latas?|botellas?|balde|cubo|cubeta|recipiente|bolsas?|tazas?|vasos?|jarras?|
    agua|mojad[oa]|leche|(?:se|me|te|nos) l[oa]s?|\p{L}{3,}(?:ar|er|ir|ando|endo|iendo)l[oa]s?)(?!\p{L})
  `,
  'u',
);
/** "It" and "lo" of the recipe; the weather's and the clock's "it" stands at the head. */
const IT = /(?<!\p{L})(?:it|it['’]s|that|that['’]s|thats|they|lo|la|los|las)(?!\p{L})/u;
const LO = new RegExp(
  unbroken`
    (?<!\p{L})(?:lo|l[oa]s?(?= (?:he|ha|hemos|han|voy|puse|eche|tire|deje|di|vendi|tome|comi|use|guarde|
    perdi|cambie|olvide|pase|saque|volque|derrame|bote|preste|regale|lleve)(?!\p{L})))
  `,
  'u',
);
const OF_LYE = new RegExp(`(?<!\\p{L})(?:${LYE}|${FAT})(?!\\p{L})`, 'u');
/** Figures of the clock and the calendar. */
const OF_TIME = new RegExp(
  unbroken`
    (?<![\d.,])\d{1,4} ?(?:hrs?|hours?|mins?|minutes?|days?|weeks?|months?|years?|am|pm|o'?clock|degrees|
    below|horas?|minutos?|dias?|semanas?|meses|anos?|grados|bajo cero)(?!\p{L})|(?<!\p{L})(?:at|by|a las?|
    till|until) \d{1,2}(?!\d)
  `,
  'gu',
);
const SHARED = new RegExp(`(?<!\\p{L})(?:${SHARE})(?:${DET} )?(?:${ADJ} )?${THING_OF_ELSE}(?!\\p{L})`, 'gu');
const IN_TWO = new RegExp(
  `(?<=${THING_OF_ELSE}) (?:in (?:half|2)|a la mitad|en 2|por la mitad)(?!\\p{L})`,
  'gu',
);

const namesOil = (clause: string): boolean => {
  const words = clause.split(/[^\p{L}]+/u).filter(word => word !== '');
  return words.some(
    (word, at) =>
      (word.length > 2 && !NO_OIL.test(word) && knownOil(word) !== undefined) ||
      knownOil(words.slice(at, at + 2).join(' ')) !== undefined,
  );
};
/** Names of oils that are also another word. */
const NO_OIL = /^(?:soy|arroz|rice)$/u;

/** Whether a clause speaks of something else than the recipe; lower case without accents. Pure. */
export function isOfElse(clause: string): boolean {
  if (SET_ASIDE.test(clause)) return true;
  if (!AT_HEAD.some(pattern => pattern.test(clause))) return false;
  const said = clause.replace(OF_TIME, ' ').replace(SHARED, ' ').replace(IN_TWO, ' ');
  if (/\d/u.test(said) || POINTS_BACK.test(said) || OF_LYE.test(said) || LO.test(said)) return false;
  const behind = said.replace(AT_HEAD[2]!, ' ');
  return !IT.test(behind.replace(/(?<!\p{L})(?:la|los|las|that) (?=\p{L})/gu, ' ')) && !namesOil(clause);
}

const PARTED = /(;|,(?!\d)|:(?= )| - )/u;
const JOINED = /( (?:and|but|so|y|pero|asi que) )/u;
const dropped = (line: string, parted: RegExp, isIdle: (part: string) => boolean): string =>
  line
    .split(parted)
    .map((part, at) => (at % 2 === 0 && part.trim() !== '' && isIdle(part) ? ' ; ' : part))
    .join('');

/**
 * A line without its clauses that speak of something else than the recipe, "the kettle's still full". Takes what `plainWords` gives with
 * its clauses. Pure.
 */
export function withoutElse(plain: string): string {
  const rest = dropped(plain, PARTED, isOfElse);
  // "Mother in law is here and the kitchen looks like a lab": of a clause with no figure each half for itself.
  return rest
    .split(PARTED)
    .map((part, at) =>
      at % 2 === 0 && JOINED.test(part) && !/\d(?! ?(?:hrs?|hours?|mins?))/u.test(part) && !OF_LYE.test(part)
        ? dropped(part, JOINED, isOfElse)
        : part,
    )
    .join('');
}

/** A line without what is set aside of it, "fragrance and mica aside", before any reader of scents. Pure. */
export const withoutSetAside = (plain: string): string =>
  dropped(plain.replace(SET_ASIDE_ALL, ' ; '), /(;|:(?= ))/u, part => SET_ASIDE.test(part));
