import { PLAIN_WORDS } from '../../flaws/reading/lexicon/plain.ts';
import { spaced, unbroken } from '../../over-lines.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { readOnce } from '../../remembered.ts';
import { plantNamed } from '../../stability/plant-classes.ts';
import { barsPutRight } from '../../text/amounts/bars-put-right.ts';
import { withUpperEnd } from '../../text/amounts/upper-end.ts';
import { figuresHeard } from '../../text/spelling/chat-spelling.ts';
import { slipsAmong } from '../../text/spelling/trade/respelt.ts';
import { unaccented } from '../../text/unaccented.ts';
import { DIALECT } from '../dialect.ts';
import { kitchenColoursNamed } from './names/kitchen-colours.ts';

/** A correction of a slip of the finger. */
export type Correction = {
  readonly from: string;
  readonly to: string;
  /** Which of the words it is. */
  readonly at: number;
};

const LONGEST = 2000;
const MOST_WORDS = 300;

/** Everyday words of questions, which no slip of the finger turns into a colourant. */
export const PLAIN = new Set(
  spaced`
    ${PLAIN_WORDS.join(' ')} about allowed number numbers colouring coloring powdery anyone bring chart
    check color colour could create cream dough dump exactly first frost frosting going gonna grind label
    like little looks maybe melt mostly paint plain please quick really recipe recipie right shelf shift
    should spoon still stripe stuff swirl tbsp teaspoon tonight tracing trying want wanna weird whole
    without would write years bored batch batter layers three cousin market reds blues greens pinks whites
    estilo algo color colores rojo roja rojos verde azul rosa claro clarito aceite aceites mezcla jabon
    oscuro quiero tengo puedo hacer hago cuanto cuanta cuantos cuantas poner pongo echar echarlo antes
    aguanta queda quede vender capas todo lote polvo agua sobre tambien porque estan estados unidos europa
    legal taza tazas gramos grasa grasas completo completa glicerina media libra libras onzas litro molde
    barra barras noche manana casa perfume centimetro centimetros milimetro milimetros centimeter
    centimeters centimetre centimetres millimeters millimetres
  `.split(/\s+/u),
);

/** A question's words: lower case, no accents, marks that matter kept; and what slips were put right in them. */
export type Words = {
  readonly words: readonly string[];
  readonly text: string;
  readonly corrections: readonly Correction[];
};

/** Phones' short hands, word by word. */
const SHORT: ReadonlyMap<string, string> = new Map([
  ['u', 'you'],
  ['ur', 'your'],
  ['r', 'are'],
  ['pls', 'please'],
  ['plz', 'please'],
  ['tumeric', 'turmeric'],
  ['td', 'titanium dioxide'],
  ['tio2', 'titanium dioxide'],
  ['neones', 'pigmentos neon'],
  ['ti02', 'titanium dioxide'],
  ['um', 'ultramarine'],
  ['eoo', 'olive oil'],
  ['xa', 'para'],
  ['pa', 'para'],
  ['q', 'que'],
  ['k', 'que'],
  ['ke', 'que'],
  ['kiero', 'quiero'],
  ['cuanto', 'cuanto'],
  ['cnto', 'cuanto'],
  ['mezclo', 'mezclo'],
  ['wht', 'what'],
  ['hw', 'how'],
  ['mch', 'much'],
  ['tsps', 'tsp'],
]);

const FRACTION = /(?<=(\d)?)\s?([½¼¾⅓⅔⅛⅜⅝⅞])/gu;
/** One sign for a fraction, with what keeps it from the figure before it. */
const fractionOf = (_sign: string, before: string | undefined, sign: string): string =>
  `${before === undefined ? '' : ' '}${sign.normalize('NFKD').replace('⁄', '/')}`;

/** Recipes tell the large spoon by a capital: "2 T", "1 T. of", "half a T". */
const TABLESPOON =
  /(?<=\d|(?<!\p{L})(?:[Aa]n?|[Oo]ne|[Hh]alf|[Mm]edia|[Uu]na?)(?= T))\s?T(?:\.(?=\s?\p{Ll})|(?=[\s.,;:)]|$))/gu;
/** The point of a short form ends no sentence: "2 t. of madder", "2 lbs. of oils"; "400 g. sosa al 5" does end one. */
const COUNTED = String.raw`(?<!\p{L})(?:\d|an?|half|media|una?|one|two|three)\s?`;
const SHORT_FORM = new RegExp(
  unbroken`
    (?<=${COUNTED}(?:tsps?|tbsps?|tbs|cdt?as?|cditas?|t))\.(?=\s?\p{Ll})|(?<=${COUNTED}(?:oz|lbs?|grs?|g|
    gms?|kgs?|mls?|pts?|qts?|gals?))\.(?=\s?(?:of|de|oils?|aceites?|batter|masa|mezcla|per|por)(?!\p{L}))
  `,
  'giu',
);
/** "2lb4oz", "1kg500". */
const TIGHT = /(\d)(lbs?|kgs?|kilos?|l)(?=\d)/gu;

/** "500g" is told as "500 g"; what is no unit stays as it is. */
const apart = (whole: string, figure: string, unit: string): string =>
  unitOfWord(unit) === undefined ? whole : `${figure} ${unit}`;

/** Reads a question's words. Only the first 2,000 letters and 300 words count. */
export const wordsOf = readOnce((question): Words => {
  const plain = unaccented(
    figuresHeard(barsPutRight(question).replace(FRACTION, fractionOf))
      .replace(TABLESPOON, ' tbsp')
      .replace(SHORT_FORM, ''),
    LONGEST,
  )
    .replace(/[’‘`´]/gu, "'")
    .replace(/(\p{L})\1{2,}/gu, '$1$1')
    .replace(/¿|¡/gu, ' ')
    .replace(/\bgray/gu, 'grey')
    .replace(/\bultra[ -](?=marin)/gu, 'ultra')
    // A name keeps its own letters: "cochineal's not allowed".
    .replace(/(?<=\p{L}{4})'s(?= (?:not|ok|okay|allowed|banned|legal|safe|stable)\b)/gu, ' is')
    .replace(/\bdecimetros? cubicos?\b/gu, 'litro')
    .replace(/\bcubic decimet(?:er|re)s?\b/gu, 'litre')
    .replace(/\bcoco powder\b/gu, 'cocoa powder')
    .replace(/\bcolor(?!e|ad[oa]s?\b)/gu, 'colour')
    // Of the dioxides only one is a soap maker's.
    .replace(/\bdioxido(?! de\b)/gu, 'dioxido de titanio')
    .replace(/\bti(?:e|t)?(?: ?tan\w*|t\w*)? dioxide\b/gu, 'titanium dioxide')
    .replace(/\bbutterfly pee\b/gu, 'butterfly pea')
    .replace(TIGHT, '$1 $2 ')
    .replace(/(?<![#\p{L}\d])(\d[\d.,/]*)(\p{L}+)/gu, apart)
    .replace(/([?!;()]|,(?!\d)|\.(?!\d)|:(?!\d)| [-–—]+ )/gu, ' $1 ')
    .replace(/\s+/gu, ' ')
    .trim();
  const typed = kitchenColoursNamed(withUpperEnd(spokenAmounts(plain)))
    .split(' ')
    .slice(0, MOST_WORDS)
    .flatMap(word => (SHORT.get(word) ?? word).split(' '));
  const found = slipsAmong(
    typed,
    word => PLAIN.has(word) || NO_SLIPS.has(word) || plantNamed(word) !== undefined,
  );
  const slips = new Map([...found].filter(([at]) => !DIALECT.has(typed[at]!)));
  const words = typed.map((word, at) => slips.get(at) ?? word);
  const corrections = [...slips].map(([at, to]) => ({ from: typed[at]!, to, at }));
  return { words, text: words.join(' ').replaceAll('colour', 'color'), corrections };
});

/** Words of flaws that lie one letter from a colour's name. */
const NO_SLIPS: ReadonlySet<string> = new Set(['mancha', 'manchas', 'manchado', 'manchada', 'manchar']);
