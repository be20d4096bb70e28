import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { FAT, LYE, POTASSIUM, plainWords, UNIT } from './words.ts';

/* Turns of phrase that a line is rid of, or that are told otherwise, before its recipe is read; each takes plain words. */

/** Courtesies in which a word stands that elsewhere turns the sense. */
const COURTESIES = new RegExp(
  unbroken`
    (?<!\p{L})(?:if (?:it s|it'?s|its|thats|that s|that'?s) (?:no|not too much) (?:bother|trouble)|
    if you (?:please|can|could|would|don t mind|dont mind|don'?t mind|have (?:a|the) (?:minute|moment|
    second|sec|time))(?: please)?|no (?:rush|hurry|worries|pressure|bother)(?: on you| at all)?|
    nothin['’]?g? else(?: (?:in it|in the pot|in there|at all|mixing|mixed in|added|with it))?|nowt else|
    nothing more|and nothing else|sin (?:prisas?|apuros?)|
    no hay (?:prisa|apuro)|si (?:me )?(?:puede[ns]?|pueden|podria[ns]?|puedes|hace(?:n|s)? el favor|
    es (?:tan )?amable)|sin otra cosa|sin nada mas|y nada mas|sin decir mas|(?:would|could|can|
    will) you (?:please |kindly |possibly )?(?:work|figure|sort) (?:it |that )?out|(?:do|can|could|
    should) (?:i|we) (?:work|figure) (?:it |that )?out|digo mal|no (?:confio|se|entiendo|me fio|
    estoy segur[oa])|(?:i am |i'?m )?not (?:so |very |too )?sure|(?:i )?(?:don'?t|do not|can'?t|cannot|
    couldn'?t) (?:know|trust|remember|read)|(?:and )?i do mean|(?:it (?:is|was) )?meant to be|more or less|
    mas o menos|o sea|por favor)(?!\p{L})
  `,
  'gu',
);
/** "sosa al 5", "lye at 5%": no lye water is so weak, so that it is the superfat. */
const AT_LYE = new RegExp(
  unbroken`
    (?<=(?<!\p{L})${LYE}(?: (?:and|y|n) (?:water|agua))?) (?:(?:at|al|a|for|con|del|
    de) )?(\d{1,2}(?:[.,]\d)?)(?: ?(%|percent|por ciento))?(?= *(?:;|,|$|superfat|(?:but|
    pero)(?!\p{L})))(?!,\d)
  `,
  'u',
);
const WEAKEST = 12;

/** "600 g olive and 400 g coconut 5%", "300 g de coco al 5%:": behind the last of the weighed oils, where no other percent stands. */
const BEHIND_LAST = new RegExp(
  unbroken`
    (?<=\d ?${UNIT}(?: (?:of|de))? (?:aceite de |manteca de )?\p{L}+(?: (?:oil|butter))?),? (?:at |al |a |@ ?)?(\d{1,2}(?:[.,]\d)?) ?(?:%|percent|
    por ciento) ?(?=[;:]|$)
  `,
  'u',
);
const withPercentBehind = (plain: string): string =>
  (plain.match(/\d ?(?:%|percent|por ciento)/gu)?.length ?? 0) === 1
    ? plain.replace(BEHIND_LAST, (whole, figure: string) =>
        Number.parseFloat(figure.replace(',', '.')) <= HIGHEST ? ` ; superfat ${figure}% ; ` : whole,
      )
    : plain;
const HIGHEST = 12;

/** Kinds of soap, named before or behind their recipe. */
const KINDS = new RegExp(
  unbroken`
    (?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:coffee|oatmeal|honey|charcoal|clay|lavender|castile|salt|hemp|beer|shampoo|(?:goats? ?)?milk|bar|
    hand|face|dish|laundry|cold process|bastille) (?:soaps?|bars?)|barras? de sal|
    jabon(?:es)? (?:de )?(?:castilla|sal|leche(?: de cabra)?|cerveza|lavar|ropa|cocina|platos|
    tocador|cafe|avena|miel|carbon|arcilla|lavanda))(?!\p{L})(?: ?:)?
  `,
  'gu',
);
/** Kinds that only potassium hydroxide makes. */
const SOFT_KINDS = new RegExp(
  unbroken`
    (?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:liquid|soft|shaving|shave|cream|soft shave) soaps?(?: paste)?|shaving (?:cream|pucks?)|
    liquid (?:shampoo|hand ?wash|body ?wash)|(?:champu|shampoo) liquido|
    crema de afeitar|jabon(?:es)? (?:de )?(?:liquido|blando|blanco|pasta|afeitar))(?!\p{L})
  `,
  'gu',
);
/** "1 kg olive oil paste": what potash makes of it. */
const OIL_PASTE = /(?<=\d.*(?:oil|aceite de \p{L}+)) (?:soap )?(?:paste|pasta)(?= ?(?:[,;]|$))/gu;
/** Figures of times, people and pieces. */
const COUNTED = new RegExp(
  unbroken`
    (?<![\d.,])(?:(?<!\p{L})(?:day|dia) \d{1,3}(?! ?(?:g|gr|gramos|grams|kg|oz|lbs?|%|ml|de|of)(?!\p{L})|[.,]\d)|
    \d{1,3} (?:double |long |late |night )*(?:shifts?|turnos?|guardias?)(?: (?:dobles?|
    largos?|seguid[oa]s))?|\d{1,3} (?:below|degrees|grados|bars|pastillas|barras|people|personas|of us|
    years?|anos|days?|dias|weeks?|semanas|minutes?|minutos|hours?|horas|months?|meses|am|pm|
    o ?clock))(?!\p{L})|(?<!\p{L})(?:at \d{1,2} ?(?:am|pm|o ?clock)|(?:by|until|till|'?til|
    a las) \d{1,2}(?: ?(?:am|pm|o ?clock))?|at \d{1,2} (?:tonight|today|this (?:morning|evening|afternoon))|
    (?<=(?:start|melt|goes|going|went|meet|pour|party|class|dinner|tea|home|back|leave|open|clos|pick|
    tonight|today|tomorrow|morning|afternoon|evening)\p{L}*(?: \p{L}+){0,3} )at \d{1,2})(?= ?(?:;|,|$)|
    (?<=tonight|today|morning|evening|afternoon) )
  `,
  'gu',
);

const EQUAL_PARTS =
  /(?<!\p{L})(?:equal parts|partes iguales)(?: of| de)? ((?:\p{L}+ ?){1,3}(?:, (?:\p{L}+ ?){1,3})*(?: (?:and|y|e) (?:\p{L}+ ?){1,3}))(?=[,;]|$)/u;
/** "equal parts olive, coconut and rice bran" as percents, where each is an oil. */
function inEqualParts(said: string, list: string): string {
  const oils = list.split(/, ?| (?:and|y|e) /u).map(one => one.trim());
  if (oils.length < 2 || oils.some(oil => knownOil(oil) === undefined)) return said;
  return oils.map(oil => `${figureText(100 / oils.length)}% ${oil}`).join(', ');
}

/** "Straight castile, 900 g": pure olive oil, where no oil is named beside it (common practice). */
const STRAIGHT_CASTILE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:straight|plain|pure|true|real|proper|all|100 ?%|puro|pura|autentico|
    verdadero) (?:castill?e|castill?a)|castilla pur[oa])(?: soap)?(?:,|:| of| de)? ?(?=\d[\d.,]* ?(?:g|gr|
    gramos|grams|kg|kilos?|oz|onzas?|lbs?|pounds?|libras?)(?!\p{L}))|(?<=\d[\d.,]* ?(?:g|gr|gramos|grams|kg|
    kilos?|oz|onzas?|lbs?|pounds?|libras?) (?:of |de )?)(?:straight|plain|pure|true|real|
    proper) castill?e(?: soap)?(?!\p{L})
  `,
  'u',
);
const straightCastile = (_: string, ...rest: readonly unknown[]): string => {
  const line = String(rest.findLast(one => typeof one === 'string'));
  const isNamed = line.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);
  return isNamed ? ' ; ' : 'olive ';
};
/** "Batch B: 600 lard …": which of somebody's recipes, where no other one is told. */
const LABEL = new RegExp(
  unbroken`
    (?<=^|; ?|(?:for|para|de|of) (?:(?:the|my|la|el|mi) )?)(?:batch|recipe|lote|tanda|receta|
    formula) (?:no |n |num |number |numero |# ?)?(?:[a-h]|\d{1,2}(?= ?:))(?= ?(?:[:;,]|$))
  `,
  'gu',
);
/** "Batch 14, Oct", "lote 8 (romero)": its number at the head of a note, and when or what it is. */
const DATED =
  /^(?:batch|lote|tanda) (?:no |n |num |# ?)?\d{1,3}(?:(?: ?[,;(])+ ?(\p{L}{3,12}))?(?= ?[),;])\)?/u;
const isOnlyOne = (rest: readonly unknown[]): boolean =>
  String(rest.findLast(one => typeof one === 'string')).match(LABEL)?.length === 1;

/** "Soda 136", "140 soda": in much of America soda alone is the caustic one. */
const SODA_WEIGHED = new RegExp(
  unbroken`
    ((?<![\d.,])\d+(?:[.,]\d+)? ?(?:(?:g|gr|gramos|oz|onzas)? ?(?:de )?))soda(?! (?:caustica|ash|crystals|
    water|bicarb))(?!\p{L})|(?<!\p{L})soda(?! (?:caustica|ash|crystals|water|bicarb))(?=[ :=]*\d)
  `,
  'gu',
);

/** "I double checked": no multiple. */
export const withoutDoubleCheck = (plain: string): string =>
  plain.replace(/(?<!\p{L})double[ -]?check(?:ed|ing)?(?!\p{L})/gu, 'check');

/** "100 % castile": pure olive oil (common practice). */
export const withCastile = (plain: string): string =>
  plain
    .replace(/(?<=100 ?% )(?:castill?e|castill?a)(?: soap)?(?!\p{L})/u, 'olive')
    .replace(STRAIGHT_CASTILE, straightCastile);

export const withoutLabel = (plain: string): string =>
  plain
    .replace(DATED, (whole, word: string | undefined) =>
      word === undefined || knownOil(word) === undefined ? ' ; ' : whole,
    )
    .replace(LABEL, (whole, ...rest) => (isOnlyOne(rest) ? ' ; ' : whole));

const IN_PLACE_OF_WATER = new RegExp(
  unbroken`
    (?:instead|in place) of (?:all |any )?(?:of )?(?:the |my )?water(?!\p{L})|en (?:vez|lugar) de(?:l)? (?:toda )?
    (?:el |la )?agua(?!\p{L})|(?<!\p{L})(?:como (?:el )?(?:unico )?liquido|as (?:the |my )?(?:only )?
    liquid)(?!\p{L})
  `,
  'gu',
);

/** "Milk in place of all the water". */
export const withLiquid = (plain: string): string => plain.replace(IN_PLACE_OF_WATER, ' as the liquid ; ');

/** "Two parts of water for every 1 part of lye". */
export const withoutForEach = (plain: string): string =>
  plain.replace(/(?<!\p{L})(?:por|for) (?:cada|every|each) (?=\d+ part)/gu, '');

export const withEqualParts = (plain: string): string => plain.replace(EQUAL_PARTS, inEqualParts);

export const withoutCourtesies = (plain: string): string => plain.replace(COURTESIES, ' ; ');

/** Soft kinds go only where the question names their alkali: they are what tells it else. */
export function withoutKinds(plain: string, question: string): string {
  const line = plain.replace(KINDS, ' ; ');
  return POTASSIUM.test(plainWords(question)) ? line.replace(SOFT_KINDS, ' ; ').replace(OIL_PASTE, '') : line;
}

const SODA_BY_ARTICLE = new RegExp(
  String.raw`(?<=\d ?(?:${UNIT})? ?de )soda(?! caustica)|(?<=\bla )soda(?! caustica)`,
  'gu',
);
export const withCausticSoda = (plain: string): string =>
  plain.replace(SODA_BY_ARTICLE, 'soda caustica').replace(SODA_WEIGHED, '$1soda caustica');

const NAMES_FAT = new RegExp(`(?<!\\p{L})${FAT}(?!\\p{L})`, 'u');
/** "SG 5", "lye at 5 %", where no superfat is named. */
export const withSuperfat = (plain: string): string =>
  NAMES_FAT.test(plain)
    ? plain
    : withPercentBehind(plain)
        .replace(/(?<!\p{L})(?:sg (\d{1,2})(?: ?%)?|se ?[:=]? ?(\d{1,2}) ?%)(?![\d.,]\d)/u, 'superfat $1$2%')
        .replace(AT_LYE, (whole, figure: string) =>
          Number.parseFloat(figure.replace(',', '.')) <= WEAKEST ? ` ; superfat ${figure}%` : whole,
        );

export const withoutCounted = (plain: string): string => plain.replace(COUNTED, ' ; ');
