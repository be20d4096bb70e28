import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { OUNCE_G, POUND_G } from '../../../quantities/units.ts';
import { readOnce, rememberedWord } from '../../../remembered.ts';
import { type Rewriting, rewritten, TextToFit } from '../../../text/patterns/fitting.ts';
import { SUPERFAT_SPELLINGS } from '../../../text/spelling/unit-spelling.ts';
import { deaccented } from '../../../text/unaccented.ts';

export const LYE = unbroken`
  (?:lye|naoh|koh|caustic soda|caustic potash|(?:sodium|potassium) hydroxide|sosa caustica|sosa|
  soda caustica|lejia|potasa caustica|potasa|potash|hidroxido (?:de )?(?:sodico|sodio|potasico|potasio)|
  caustic(?! soda| potash))
`;
export const POTASSIUM =
  /\b(?:koh|potassium hydroxide|(?:caustic )?potash|potasa(?: caustica)?|hidroxido (?:de )?potas(?:ico|io))\b/u;
export const SODIUM =
  /\b(?:naoh|sodium hydroxide|caustic soda|sosa(?: caustica)?|soda caustica|hidroxido (?:de )?sod(?:ico|io))\b/u;
export const UNIT = String.raw`(?:kg|kilos?|kilograms?|kilogramos?|g|gr|grams?|gramos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\b`;
export const COUNT = String.raw`(?:\d+\/\d+|\d+(?:[.,]\d+)?(?: \d+\/\d+)?)`;
export const MASS = `${COUNT} ?${UNIT}`;
export const PERCENT = String.raw`(\d+(?:[.,]\d+)?) ?(?:%|percent|per cent|por ciento)`;
/** "del 98", "at 90%": how pure dry lye is sold, which is no weight; lye water is never so strong. */
export const DRY_PURITY = unbroken`
  (?:at|al|del|of) ((?:8|9)\d(?:[.,]\d+)?|100)(?: ?(?:%|percent|por ciento))?(?!\d|[.,]\d)(?! ?(?:kgs?|
  gr?s?|oz|lbs?|grams?|gramos?|ounces?|onzas?|kilos?)(?!\p{L}))
`;
export const FAT =
  '(?:superfat(?:ting|ted)?|(?:lye )?discount|descuento(?: de sosa)?|sf|(?:sobre|super) ?engrasado|sobre ?engrase|sobregras[ao])';

const IN_GRAMS: readonly (readonly [unit: RegExp, grams: number])[] = [
  [/^k/u, 1000],
  [/^g/u, 1],
  [/^o/u, OUNCE_G],
  [/^[lp]/u, POUND_G],
];
export const decimal = (figure: string) => Number(figure.replace(',', '.'));

/** Grams of `250 g`, `1.5 kg`, `2 libras`. */
export function gramsOf(mass: string): number {
  const [, figure = '', unit = ''] = new RegExp(String.raw`^(${COUNT}) ?(\p{L}+)`, 'u').exec(mass) ?? [];
  const [whole = '', part] = /^\d+\//u.test(figure) ? ['0', figure] : figure.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return (decimal(whole) + over / under) * (IN_GRAMS.find(([start]) => start.test(unit))?.[1] ?? Number.NaN);
}

const neat = (grams: number) => figureText(grams);

/** Lye that is named before what was put in the place of the right amount. */
const INSTEAD = new RegExp(
  unbroken`
    (?<![\p{L}\d])(${LYE})((?:,? \p{L}+){0,4}?),? (puse|eche|use|pese|put|used|added|
    weighed) (\d+(?:[.,]\d+)?)(?: ?(?:g|gr|grams?|gramos?))?(?= (?:en (?:vez|lugar) de|instead of|
    rather than)(?!\p{L}))
  `,
  'gu',
);

/** "Agua 230 g. ¿Sosa al 5 %?": an opening mark begins a sentence, and no weight before it is of what is asked. */
const STOP_BEFORE_OPENING = /[.…]+\s*(?=[¿¡])/gu;

/** Where a sentence ends; a full stop behind a short unit ends none. */
const SENTENCE_END =
  /(?<!(?<!\p{L})(?:oz|lbs?|kgs?|gr?s?|ml|approx|aprox|ca|sobre ?engr?|superf))(?<!(?<!\p{L})no(?=\.+ ?\d))\.+(?!\d)|[?!]+|\n+/gu;

/** "Olive 700g coconut 300g. Lye?": what stands behind the stop is asked for, and was not weighed. */
const ASKED_LAST = new RegExp(
  unbroken`
    (?<=\d ?(?:kgs?|gr?s?|oz|lbs?|kilos?|grams?|gramos?|ounces?|onzas?|pounds?|
    libras?))\s*\.+\s+(?=(?:(?:and|y|how much|cu[aá]nt[ao]|the|la)\s+)*${LYE}(?:\s+(?:and|n|y|\+|
    &)\s+(?:water|agua))?\s*(?:(?:quantity|qty|amount|weight|needed|required|please|pls|plz|cantidad|
    por favor|porfa)\W*$|\?))
  `,
  'giu',
);

/** "Ricino 50 g. El último no": behind a name with its weight a stop ends the sentence, where no other name follows. */
const UNIT_STOP =
  /(?<=(?<name>(?:\p{L}+ ){0,2}\p{L}{3,})[ :=-]{0,3}\d[\d.,]* ?(?:kg|gr?|oz|lbs?))\.+\s+(?=(?<next>\p{L}+)(?: (?<more>\p{L}+))?)/giu;
function unitStop(whole: string, ...rest: readonly unknown[]): string {
  const { name = '', next = '', more = '' } = rest.at(-1) as Record<string, string | undefined>;
  const isOil = (text: string) => knownOil(deaccented(text)) !== undefined;
  const words = name.split(' ');
  return words.some((_, at) => isOil(words.slice(at).join(' '))) &&
    !/^(?:de|of)$/iu.test(next) &&
    !isOil(next) &&
    !isOil(`${next} ${more}`)
    ? ' ; '
    : whole;
}

/**
 * Lower case without accents, spelt numbers as figures, thousands and pounds with ounces as one figure of grams; `clauses` leaves
 * a semicolon where a sentence ends.
 */
export const plainWords = (question: string, { clauses = false } = {}): string =>
  clauses ? plainClauses(question) : plainText(question);
const plainClauses = readOnce(question => plainly(question, true));
const plainText = readOnce(question => plainly(question, false));

/**
 * "Sin sobreengrasado decidido", "no superfat in mind", "no superfat given in the old book": left to whoever reckons, and no soap without
 * one.
 */
const SUPERFAT_LEFT_OPEN = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:i |we )?(?:have |haven'?t |got |tengo |tenemos )?)(?:sin|no|not?|without(?: any| an?)?|ningun|an?y?)(?: (?:el|un|any|a|
    particular))* ${FAT} (?:decidid[oa]|elegid[oa]|definid[oa]|pensad[oa]|fijad[oa]|preferid[oa]|en mente|decided|chosen|picked|in mind|
    fixed|set|preference|yet|todavia|aun|given|told|stated|mentioned|specified|noted|written|listed|indicad[oa]|dich[oa]|anotad[oa]|
    escrit[oa]|especificad[oa]|mencionad[oa])(?: (?:yet|todavia|aun))?(?!\p{L})
  `,
  'gu',
);

const YEAR = '(?:19[5-9]\\d|20[0-4]\\d)';
const NO_WEIGHT = unbroken`
  (?![\d.,]*\d)(?! ?(?:${UNIT}|mls?|l|lit\p{L}+|%|percent|por ciento|:)(?!\p{L}))(?! (?:(?:of|de|total|the|los) )*(?:oils?|fats?|aceites?|
  grasas?|water|agua|${LYE})(?!\p{L}))
`;
/** "Open since about 2019", "la sosa es de 2018", "a 2012 tin": when, and no weight; 2000 is as often one, and needs its word. */
const YEAR_TOLD = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:(?:way |ever )?since|dat(?:es|ed|ing)(?: (?:back|from|to))*|circa|the year|el ano|del ano|desde|fechad[oa] en)(?: (?:about|
    around|roughly|at least|the year|el|el ano|mas o menos|por lo menos|como|like|in|en))* ${YEAR}|(?:(?:back |bought |made |packed )?in|from|del?|
    en)(?: (?:about|around|roughly|the year|el ano))* (?!2000)${YEAR})${NO_WEIGHT}|
    (?<=(?<!\p{L})(?:an?|the|my|that|una?|la|el|mi|1) )(?!2000)${YEAR} (?=(?:tin|bag|tub|bottle|batch|jar|packet|vintage|lote?|bote|
    bolsa|cosecha|frasco|tarro|lata)(?!\p{L}))
  `,
  'gu',
);

const BEFORE_FIGURES: readonly Rewriting[] = [
  [STOP_BEFORE_OPENING, ' ; '],
  [ASKED_LAST, ' ; '],
  [UNIT_STOP, unitStop],
];
const IN_FIGURES: readonly Rewriting[] = [
  [/[?!¿¡"“”«»()]|\.(?!\d)/gu, ' '],
  [/\b(\d{1,3})[.,](\d{3})(?= ?(?:g|gr|grams?|gramos?|ml)\b)/gu, '$1$2'],
  [
    /(\d+(?:[.,]\d+)?) ?(?:lbs?|pounds?|libras?)(?: and| y|,)? (\d+(?:[.,]\d+)?) ?(?:oz|ounces?|onzas?)\b/gu,
    (_, pounds: string, ounces: string) => `${neat(decimal(pounds) * POUND_G + decimal(ounces) * OUNCE_G)} g`,
  ],
  [/(?<=\d) ?(?:gms?|grs|grms?)\b/gu, ' g'],
  ...SUPERFAT_SPELLINGS,
  [YEAR_TOLD, ' '],
  // Which superfat is not told: the usual one is taken, and said.
  [SUPERFAT_LEFT_OPEN, ' '],
  [
    /(superfat )\d{1,2}(?:-ish|ish| or so| mas o menos)?,? (?:say|call it|let'?s say|digamos|pongamos|pon) (?=\d)/gu,
    '$1',
  ],
  [/(?<!\p{L})p\/ ?(?=\d)/gu, 'para '],
  // "2 libras (de las de 16 onzas) de manteca": the usual pound.
  [
    /(?<=(?<!\p{L})libras?) +(?:de las )?de (?:16 (?:oz|onzas)|45[34] ?(?:g|gr|gramos)?)(?= +de(?!\p{L}))/gu,
    '',
  ],
  [/\bcastor sugar\b/gu, 'sugar'],
  [/\b(?:h20|watr|wter|watter|watre)\b/gu, 'water'],
  [/\b(lye|naoh|koh|sosa|soda) (?:n|nd) (?=water\b|agua\b)/gu, '$1 and '],
  [/(?<=\d ?(?:%|percent|por ciento)) de se(?![\p{L}'’])/gu, ' superfat'],
  [/(?<!\p{L})se ?[:=] ?(?=\d)/gu, 'superfat '],
  [/\b(lye|naoh|koh) ?\/ ?(?:h2o|water|agua)\b/gu, '$1 and water'],
  [/\b(lye|naoh|koh|sosa|soda) ?\+ ?(?=water\b|agua\b)/gu, '$1 and '],
  [/\bh2o\b/gu, 'water'],
  [/\b(lye|naoh|koh|water) fr\b/gu, '$1 for'],
  [/\bhow much soda\b(?! ?(?:ash|water|bread|crystals|bicarb))/gu, 'how much caustic soda'],
  // "Me pasé de sosa, puse 180 g en vez de 130".
  [INSTEAD, '$2 $3 $4 g $1'],
  // A dash before a weight parts it from what stands before.
  [new RegExp(`(?<!\\b${UNIT}) [-–—]+ (?=${MASS})`, 'gu'), ', '],
  // In much of America soda alone is the caustic one, where an amount of it is asked for.
  [/\b(cuanta|calcul\w+ la) soda\b(?! caustica)/gu, '$1 soda caustica'],
];

function plainly(question: string, clauses: boolean): string {
  const said = rewritten(question.slice(0, 2000), BEFORE_FIGURES);
  const spoken = spokenAmounts(clauses ? said.replace(SENTENCE_END, ' ; ') : said);
  return rewritten(deaccented(spoken), IN_FIGURES).replace(/\s+/gu, ' ').trim();
}

/** A pattern of words that stand by themselves: those of the readers of amounts, and now and then a mass as it was typed. */
const byItself = rememberedWord(
  (pattern: string): RegExp => new RegExp(String.raw`(?<![\p{L}\d])(?:${pattern})(?![\p{L}\d])`, 'u'),
);

/** A text from which what was understood is taken out, so that nothing left over is passed by. */
export class Remaining {
  text: string;
  constructor(text: string) {
    this.text = text;
  }

  /** The first match of any pattern, taken out. */
  take(...patterns: readonly string[]): RegExpExecArray | undefined {
    const asked = new TextToFit(this.text);
    for (const pattern of patterns.map(byItself)) {
      const match = asked.mayFit(pattern) ? pattern.exec(this.text) : null;
      if (!match) continue;
      this.text = `${this.text.slice(0, match.index)} ; ${this.text.slice(match.index + match[0].length)}`;
      return match;
    }
    return undefined;
  }
}

export const told = (match: RegExpExecArray | undefined) => match?.slice(1).find(part => part !== undefined);
