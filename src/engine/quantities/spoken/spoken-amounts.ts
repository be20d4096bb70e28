import { unbroken } from '../../over-lines.ts';
import { readOnce } from '../../remembered.ts';
import { type Rewriting, rewritten } from '../../text/patterns/fitting.ts';
import { chatSpelt } from '../../text/spelling/chat-spelling.ts';
import { UNIT_SPELLINGS } from '../../text/spelling/unit-spelling.ts';
import { figureText } from '../for-readers.ts';
import { figuresOf } from './number-words.ts';
import { PARTS, UNIT } from './parts-of-units.ts';

/** Before a unit these tell only how it is filled, or which measure it is; "heaping" and the like are left to who doses by them. */
const LEVEL = new RegExp(
  unbroken`
    (?<=(?:\d|\b(?:an?|one|una?|half|media|medio))\s)(?:level(?:led|ed)?|scant|measuring|standard|
    flat)\s+(?=\p{L})|(?<=\p{L})\s+(?:rasas?|rasos?|al ras|soperas?|level)\b(?=\s|$)
  `,
  'giu',
);
/** A cup or a jug that is well filled is one. */
const FILLED = new RegExp(
  unbroken`
    (?<=(?:\d|\b(?:an?|one|una?|half|media))\s)(?:full|generous|heap(?:ed|ing)|brimming|whole|large|big|
    small|wee|proper)\s+(?=(?:half )?(?:cup|pint|quart|lit(?:er|re)|kilo|pound)s?\b)
  `,
  'giu',
);

/** "A cup and three quarters", "2 tazas y 3/4", "taza y media", "kilo y cuarto"; what stands before a unit of its own is a sum. */
const UNIT_AND_PART = new RegExp(
  unbroken`
    (?<!\d[.,/]?\s?)(?:(\d{1,4}) )?\b(${UNIT}) (?:(?:and|an|n|y|con|&|\+) (?:(?:an?|one|un|una|1) )?|
    (?=\d\/\d$))(?:([1-7])\s?\/\s?([2-8])|((?:three|tres|3|two|dos|2) )?(half|medi[ao]|(?:third|tercio|
    quarter|fourth|cuarto|eighth|octavo)s?))\b(?!\s*(?:of |de |an? |una? )*(?:${UNIT}))
  `,
  'giu',
);
const UNDER: readonly (readonly [RegExp, number])[] = [
  [/^(?:half|medi)/iu, 2],
  [/^(?:third|terci)/iu, 3],
  [/^(?:quarter|fourth|cuart)/iu, 4],
  [/^(?:eighth|octav)/iu, 8],
];
type Part = [whole?: string, unit?: string, over?: string, under?: string, several?: string, part?: string];
const unitAndPart = (all: string, ...[whole = '1', unit, over, under, several = '1', part = '']: Part) => {
  if (over !== undefined) return `${whole} ${over}/${under} ${unit}`;
  const parts = UNDER.find(([pattern]) => pattern.test(part))?.[1];
  const count = /^[t3]/iu.test(several) && !/^two/iu.test(several) ? 3 : /^[d2t]/iu.test(several) ? 2 : 1;
  return parts === undefined ? all : `${whole} ${count}/${parts} ${unit}`;
};
/** "two and a quarter cups", "one and a half kilos", "2 and three quarter cups": the part was put in figures before. */
const COUNT_AND_PART = new RegExp(
  String.raw`(?<![\p{L}\d.,/])(\d{1,3}|one|una?|uno) (?:and|an|n|y|&) (?:(?:1|an?) )?(\d\/\d) (?=${UNIT})`,
  'giu',
);

/** A decimal as it is dictated: "two point five", "uno coma dos", "point five". */
const DECIMAL = new RegExp(
  unbroken`
    (?<![\d.,/\p{L}])(?:(\d+|one|una?|uno|zero|cero|nought|naught)\s(?:point|punto|coma)|point)\s((?:\d+|
    one|uno|zero|cero|oh)(?:\s(?:\d|one|uno|zero|cero|oh)(?!\p{L}))*)(?![\d/.,\p{L}])
  `,
  'giu',
);
const digits = (words: string): string =>
  words
    .toLowerCase()
    .replace(/\b(?:one|una?|uno)\b/gu, '1')
    .replace(/\b(?:zero|cero|oh|nought|naught)\b/gu, '0')
    .replace(/\s/gu, '');

/** Ounces that are poured. */
const POURED =
  /\b(?:liquid|fluid) (?:oz|ounces?)\b|\b(?:oz|ounces?|onzas?),? (?:(?:by|in|de|en|por) volum\p{L}*|liquid|l[ií]quidas?|fluidas?)(?!\p{L})/giu;
/** A mass that is said to be one. */
const WEIGHED =
  /(?<=\b(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)) (?:by|in|de|en|por) (?:weight|peso)(?!\p{L})/giu;
/** "2 out of 6 cups", "2 tazas de las 6": the whole is told beside the part. */
const OUT_OF = new RegExp(
  String.raw`(?<![\d.,/])(\d+(?:[.,]\d+)?|\d+\/\d+) ?(${UNIT})? (?:out of|de (?:las|los)|of (?:the|my)) (?:the |my )?\d+(?: (${UNIT}))?(?![\d/])`,
  'giu',
);
const DOZENS = /\b(\d{1,2}) (?:dozens?|docenas?)\b(?: de| of| at| @)?(?= ?(\d)?)/giu;
/** "24 bars of 3 oz bars" is what a dozen of named pieces came to. */
export const SIZE_OF_BARS = new RegExp(
  unbroken`
    (\d{1,3}) bars of (?=\d[\d.,/ ]*[\s-]*\p{L}+\.?[\s-]+(?:\p{L}+ )?(?:bars?|soaps?|cavit\p{L}*|
    cavidad\p{L}*|huecos?|pastillas?|barras?|jabones|jaboncitos|mou?lds?|moldes?|rounds?|hearts?|loaves|
    loaf|cakes?)(?!\p{L}))
  `,
  'giu',
);
const DOZEN_AND_HALF =
  /\b(?:(?:a|one|1|una) )?(?:dozen and (?:a )?half|docena y media)\b(?: de| of| at| @)?(?= ?(\d)?)/giu;
/** "2 x 3 cups": two portions alike, in measures that no mould is told in. */
const TIMES =
  /(?<![\d.,/] ?|[x×] ?)(\d{1,2}) ?(?:x|×|times|veces|por) ?(\d+(?:[.,]\d+)?|\d+\/\d+) ?(?=(?:cups?|tazas?|pints?|pintas?)\b)/giu;
const product = (count: string, size: string): string => {
  const [over = 0, under = 1] = size.replace(',', '.').split('/').map(Number);
  return `${figureText((Number(count) * over) / under, 4)} `;
};
/** "un kilo doscientos": the grams go without saying, as in "2 kilos 300" and "1 kilo 50"; no figure that counts something else. */
const KILOS =
  /(?<![\d.,/]\s?)\b(?:(\d{1,3}) )?(?:kilos?|kgs?) (?:y |and |con )?(\d{3}(?!\s*(?:g|ml|\d))|\d0(?=\s*(?:$|[).,;!?](?!\d)|(?:of|de) )))/giu;

/** "1 litro 800", "one litre eight hundred": the millilitres go without saying. */
const LITRES =
  /(?<!\d[.,/]?\s?)\b(?:(\d{1,2}) )?(?:litros?|lit(?:er|re)s?) (?:y |and |con )?(\d{3})(?!\s*(?:g|ml|\d))(?!\d)/giu;
/** Where a pound is 500 g, makers say so, and name nothing that the 500 g are of: "dos libras de aceite, de las de 500 gramos". */
const METRIC_POUNDS = new RegExp(
  unbroken`
    (\d+(?:[.,]\d+)?) (?:libras?|pounds?|lbs?)( (?:de |of )?(?:aceites?|oils?|mezcla|masa|
    batter))?\b[^\d]*\b(?:de|of|a|at|son|is|are|=|cada una?|each) 500 ?(?:g|gr|gramos|grams)\b(?=\s*(?:$|
    [).,;?!]|each|cada|la libra|(?:the|a|per) pound|por libra)).*$
  `,
  'iu',
);

/** "Medio kilo de girasol y otro medio de oliva", "half a kilo of lard and another half of olive". */
const ANOTHER_HALF = new RegExp(
  unbroken`
    \b(medi[oa]|half an?) (kilo|kg|libra|litro|pound|lb|lit(?:er|re))((?: (?:de|
    of))? [\p{L} ]{3,30}?),? (?:y|and|n|&) (?:otr[oa] medi[oa]|another half)(?! (?:kilo|kg|libra|litro|
    an? )) (?=de |of )
  `,
  'giu',
);

/** "Two 1/4 tsp scoops", "2 medidas de 1/4 cdta": so many spoons of a size, not two and a quarter. */
const SCOOPS = new RegExp(
  unbroken`
    (?<!\p{L})(two|three|four|five|six|dos|tres|cuatro|cinco|seis|[2-9]) (?:of the )?(1\/[248]|half|quarter|
    eighth)[ -]?(?:of )?(?:an? )?(tsp|teaspoon|tbsp|tablespoon|cdta|cda|cucharadita|cucharada)s? (?:scoop|
    spoon|measure|dip)(?:s|fuls?)?(?!\p{L})
  `,
  'giu',
);
const COUNTS: ReadonlyMap<string, number> = new Map(
  'two three four five six dos tres cuatro cinco seis'
    .split(' ')
    .map((word, at) => [word, 2 + (at % 5)] as const),
);
const SPOKEN_PARTS: ReadonlyMap<string, string> = new Map([
  ['half', '1/2'],
  ['quarter', '1/4'],
  ['eighth', '1/8'],
]);
const scoops = (_: string, count: string, part: string, unit: string): string =>
  `${product(String(COUNTS.get(count.toLowerCase()) ?? count), SPOKEN_PARTS.get(part.toLowerCase()) ?? part)}${unit}`;

/** "Two to three hundred": both ends are hundreds. */
const HUNDREDS =
  /(?<!\p{L})(one|two|three|four|five|six|seven|eight) (to|or) (two|three|four|five|six|seven|eight|nine) hundred(?!\p{L})/giu;
/** "A pound ten of oil": the ounces go without saying; sixteen would be a pound more. */
const POUND_AND = new RegExp(
  unbroken`
    (?<!\p{L})(an?|one|two|three|four|five|[1-9]) (?:pounds?|lbs?) (?:and )?(one|two|three|four|five|six|
    seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen)(?= (?:of )?(?:oils?|fats?|batter|tallow|
    lard|olive)(?!\p{L})|[\s.!]*$)
  `,
  'giu',
);

/** What is put right while numbers still are words. */
const BEFORE_FIGURES: readonly Rewriting[] = [
  [SCOOPS, scoops],
  [HUNDREDS, '$1 hundred $2 $3 hundred'],
  [POUND_AND, '$1 lb $2 oz'],
  [ANOTHER_HALF, '$1 $2$3, $1 $2 '],
];
/** What is put right once they are figures. */
const IN_FIGURES: readonly Rewriting[] = [
  [DECIMAL, (_, whole = '0', part: string) => `${digits(whole)}.${digits(part)}`],
  ...UNIT_SPELLINGS,
  [LEVEL, ''],
  [FILLED, ''],
  ...PARTS,
  [TIMES, (_, count: string, size: string) => product(count, size)],
  [POURED, 'fl oz'],
  [WEIGHED, ''],
  [
    OUT_OF,
    (all, part: string, one = '', other = '') =>
      one === '' && other === '' ? all : `${part} ${one === '' ? other : one}`,
  ],
  [COUNT_AND_PART, (_, count: string, part: string) => `${Number(count) || 1} ${part} `],
  [UNIT_AND_PART, unitAndPart],
  [DOZEN_AND_HALF, (_, next?: string) => (next === undefined ? '18 ' : '18 bars of ')],
  [
    DOZENS,
    (_, count: string, next?: string) => `${Number(count) * 12} ${next === undefined ? '' : 'bars of '}`,
  ],
  [SIZE_OF_BARS, '$1 '],
  [KILOS, (_, kilos: string | undefined, grams: string) => `${Number(kilos ?? 1) * 1000 + Number(grams)} g`],
  [
    LITRES,
    (_, litres: string | undefined, more: string) => `${Number(litres ?? 1) * 1000 + Number(more)} ml`,
  ],
  [METRIC_POUNDS, (_, count: string, of = '') => `${Number(count.replace(',', '.')) * 500} g${of}`],
];

/**
 * An amount as it is spoken, in figures: spellings of chats, spelt numbers, parts and articles before a unit, slips in units, dozens, and "un kilo
 * doscientos". Names beside it stay as they are.
 * @example spokenAmounts('doce jabones de cien gramos') // '12 jabones de 100 gramos'
 * @example spokenAmounts('a tsp n a half') // '1 tsp n a half'
 */
export const spokenAmounts = readOnce((text): string =>
  rewritten(figuresOf(rewritten(chatSpelt(text), BEFORE_FIGURES)), IN_FIGURES)
    .replace(/\s+/gu, ' ')
    .trim(),
);
