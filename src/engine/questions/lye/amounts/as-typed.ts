import { unbroken } from '../../../over-lines.ts';
import { MISSPELT_ACEITE } from '../../../text/spelling/unit-spelling.ts';
import { withBrackets } from './in-brackets.ts';
import { knownAs } from './recipe-tokens.ts';
import { LYE, plainWords, UNIT } from './words.ts';

/** A full stop behind a short unit: it ends a sentence unless an ingredient follows, "4 oz. castor". */
const STOP_BEHIND_UNIT =
  /(?<=\d ?(?:g|kg|gr|oz|lbs?|ml))\.(?=\s+\d{1,2}(?:[.,]\d)? ?%)|(?<=\d ?(?:g|kg|gr|oz|lbs?|ml))\.(?=\s+(\p{L}[^;.,]*))/gu;
const isIngredient = (words: readonly string[]): boolean =>
  words.slice(0, 3).some((_, more) => knownAs(words.slice(0, more + 1).join(' ')));
function endsSentence(_: string, after: string | undefined): string {
  // "200g. 4%".
  if (after === undefined) return ' ;';
  // "Meant 140. olive is 400".
  if (/^\S+(?: \S+)? (?:is|are|es|son) \d/u.test(after)) return ' ;';
  const words = plainWords(after).split(' ');
  return (isIngredient(words) && !/^\p{Lu}/u.test(after)) || /^(?:of|de)$/u.test(words[0]!) ? '.' : ' ;';
}
/** "KOH no, NaOH". */
const NOT_THIS = /(?<!\p{L})(koh|naoh|potasa|sosa) no(?= ?[,;.])/giu;
/** "1 kilo 200 gramos de aceites en total". */
const KILO_AND_GRAMS = new RegExp(
  unbroken`
    (?<![\d.,])(\d+) ?(?:kg|kilos?) (?:y |and |con )?(\d{2,3}) ?(?:gr?|gramos?|grams?)(?= (?:(?:de|
    of) )?(?:aceites?|grasas?|oils?|fats?|en total|in total|total)(?!\p{L}))
  `,
  'giu',
);
/** "Only 150g. Lye?": what stands behind the stop is asked for. */
const STOP_BEFORE_LYE = new RegExp(
  String.raw`(?<=\d ?(?:g|kg|gr|oz|lbs?|ml))\.(?=\s+(?:the |la |el )?(?:${LYE}|soda(?! (?:ash|crystals|water|bicarb)))(?!\p{L})(?![ :=]*\d))`,
  'giu',
);
const AND_A_HALF =
  /(?<!\d\s?)(?<!\p{L})(?:an? |un |una )?(kilo|libra|pound) (?:y medi[oa]|(?:and|an|n|&) an? half)(?!\p{L})/giu;
/** "A quarter of a kilo". */
const PART_OF_UNIT =
  /(?<!\p{L})(?:an? |un |una )?(half|quarter|cuarto|mitad|media) (?:of an?|de) (kilo|pound|libra)(?!\p{L})/giu;
/** How an oil was made ready, of which its lye knows nothing. */
const MADE_READY = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:home|freshly|twice|well|already|ya|bien|muy|reci[eé]n) ?)?(?:rendered(?! suet)|strained|
    filtered|melted|colad[oa]s?|filtrad[oa]s?|derretid[oa]s?|usad[oa]s?|usao|reciclad[oa]s?|ib[eé]ric[oa]s?|
    caser[oa]s?|ecol[oó]gic[oa]s?|org[aá]nic[oa]?s?|
    home ?made)(?: down)?(?: (?:del? )?(?:de )?fre[ií]r)?(?: (?:(?:two|three|dos|tres|[23]) (?:times|veces)|
    twice))?(?!\p{L})|(?<!\p{L})(?:leaf (?=lard)|back (?=fat))|\(?(?<!\p{L})not high oleic(?!\p{L})\)?
  `,
  'giu',
);
/** The melting point in degrees Fahrenheit that tells a coconut oil from the other kind; both take the same lye (common practice, no source). */
const MELTING =
  /(?<=(?:coconut|coco)(?: oil)?\s*\(?\s*)(?:76|92)\s?(?:°\s?)?(?:f(?!\p{L})|deg(?:rees)?)?(?=[\s):=,-]*\s\d)/giu;
/** "Aceite de oliva de freír": what it was used for. */
const FROM_FRYING = /(?<=aceite(?: de \p{L}+)? *) de fre[ií]r(?!\p{L})/giu;
/** What a telephone hears for lye, and a stop that was spoken. */
const DICTATED_LYE = /(?<=(?<!\p{L})how (?:much|many grams of) )(?:lie|lies|lay)(?!\p{L})/giu;
const DICTATED_STOP = /(?<=[.;,] )(?:period|full stop|punto|coma|comma)(?=[.;,])/giu;

/** "And coconut... 200". */
const HESITATES = /(\p{L})\s*(?:\.{2,}|…)\s*(?=\d)/gu;

/**
 * A question as it was typed, with what only its stops, capitals and brackets tell made plain: where a sentence ends behind a short
 * unit, halves and quarters of a unit, a kilo and grams as one weight; how an oil was made ready is taken out. Pure.
 */
export const asTyped = (question: string): string =>
  withBrackets(question)
    .replace(MADE_READY, ' ')
    .replace(FROM_FRYING, '')
    .replace(DICTATED_LYE, 'lye')
    .replace(DICTATED_STOP, '')
    .replace(/super fat/giu, 'superfat')
    .replace(MELTING, ' ')
    .replace(MISSPELT_ACEITE, 'aceite')
    .replaceAll('’', "'")
    .replace(/\s[—–]\s/gu, ', ')
    // "1.5 lb olive .5 lb coconut".
    .replace(/(?<![\p{L}\d.,])\.(?=\d)/gu, '0.')
    .replace(/[.…]+\s*(?=[¿¡])/gu, ' ; ')
    .replace(STOP_BEFORE_LYE, ' ;')
    .replace(STOP_BEHIND_UNIT, endsSentence)
    .replace(NOT_THIS, 'no es $1')
    .replace(KILO_AND_GRAMS, (_, kilos: string, grams: string) => `${1000 * Number(kilos) + Number(grams)} g`)
    .replace(/(?<!\p{L})cera de (?:mis|nuestras|las|sus) abejas/giu, 'cera de abejas')
    .replace(BARE_WAX, 'cera de abejas')
    .replace(OF_A_KILO, (told: string, kilos: string | undefined) => gramsOfShare(kilos, told))
    .replace(/(?<!\p{L})de (?:don|do[nñ]a) \p{L}+(?: (?:el|la) \p{L}+)?/giu, ' ')
    .replace(HESITATES, '$1 ')
    .replace(AND_A_HALF, '1 1/2 $1')
    .replace(
      PART_OF_UNIT,
      (_, part: string, unit: string) => `${/half|media|mitad/iu.test(part) ? '1/2' : '1/4'} ${unit}`,
    );

/** "50 de cera", "cera 30 g": bees' wax, as Spanish makers say it; of waxes in soap hardly any takes less lye (common practice). */
const BARE_WAX = new RegExp(
  unbroken`
    (?<=\d ?(?:${UNIT})? ?(?:de )?)(?<!\p{L})cera(?=\s*(?:[,;.()]|$|y\s|al\s))|(?<!\p{L})cera(?=,? ?[:=]? ?\d)
  `,
  'giu',
);
/** "Cuarto y mitad de coco", "medio cuarto", "un kilo y cuarto": shares of a kilo, as Spanish markets sell by them (common practice). */
const OF_A_KILO =
  /(?<![\p{L}\d.,])(?:(?:(un|\d+) )?kilos? y cuarto|cuarto y mitad|medio cuarto)(?= de | d )/giu;
const SHARES_OF_A_KILO: Readonly<Record<string, number>> = {
  cuarto: 250,
  'cuarto y mitad': 375,
  'medio cuarto': 125,
};
function gramsOfShare(kilos: string | undefined, share: string): string {
  const whole = /kilo/iu.test(share) ? Number(/\d+/u.exec(kilos ?? '1')?.[0] ?? 1) * 1000 : 0;
  return `${whole + (SHARES_OF_A_KILO[share.toLowerCase().replace(/^.*kilos? y /u, '')] ?? 0)} g`;
}

/** "Dos libras de sebo y una de coco, media de oliva": of the unit told before. */
const ONE_MORE = new RegExp(
  unbroken`
    (\d ?(libras?|kilos?|onzas?|partes?|pounds?|lbs?|ounces?|parts?)(?!\p{L})(?:(?!\d)[^;])*?(?: (?:y|and|
    por|to|for|e|&)|,) )(una|un|uno|one|1|(?:a )?half (?:of |a )?(?:one|1)|1\/2 (?:of |a )?(?:one|1)|media|
    medio|1\/2) (?=(?:de|of) ([^;,.\d]*))
  `,
  'iu',
);
const MOST_MORE = 6;
/** A line of `plainWords` with the unit of "one more" of an ingredient told: "2 libras sebo y 1 libra de coco". Pure. */
export function withOneMore(plain: string): string {
  let line = plain;
  // Each told one is the unit of the next.
  for (let more = 0; more < MOST_MORE; more += 1) {
    const next = line.replace(ONE_MORE, (whole, head: string, unit: string, one: string, after: string) =>
      isIngredient(after.split(' ')) ? `${head}${/half|1\/2|medi/u.test(one) ? '1/2' : '1'} ${unit} ` : whole,
    );
    if (next === line) break;
    line = next;
  }
  return line;
}
