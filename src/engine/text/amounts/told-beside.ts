import { unbroken } from '../../over-lines.ts';

const UNIT =
  '(?:ml|mls|cl|l|lit(?:er|re)s?|litros?|g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|cups?|tazas?|pints?|quarts?|gallons?|fl ?oz)';
const FIGURE = String.raw`(?:\d\/\d|\d[\d.,]*(?: ?\d\/\d)?)`;
const MASS = '(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)';

/** "40 oz total batch w water n lye", "1,8 kg en total con agua y sosa": all that is poured. */
const WITH_LYE = new RegExp(
  unbroken`
    ^(?:[\p{L}]+ )?(${FIGURE}) ?(${MASS})\b[^\d,;]*? (?:with|w\/?|incl\p{L}*|counting|con|contando|
    sumando)(?: (?:the|all|el|la))* (?:(?:water|agua|lye|sosa|soda|lej[ií]a)(?: (?:and|n|&|y|plus|
    \+) (?:(?:the|el|la) )?(?:water|agua|lye|sosa|soda|lej[ií]a))?)(?: (?:and|y) (?:all|todo))?[\s.)]*$
  `,
  'iu',
);
/** "It takes 1500 ml, I measured with water", "le entran 900 ml, lo probé con agua", "holds a litre of water". */
const MEASURED_BY_WATER = new RegExp(
  unbroken`
    ^[^\d]*?\b(?:takes?|took|taking|has|had|holds?|held|fits?|is|needs?|needed|entran?|entraron|entr[oó]|
    caben?|cabe|cupieron|cupo|lleva|llev[oó]|tiene|hace|
    son)\b[^\d]*?(${FIGURE}) ?((?:${UNIT}))\b(?:\s*(?:of|de) (?:water|agua)[^\d]*|[^\d]*(?:water|
    agua)[^\d]*)$
  `,
  'iu',
);
/** "12 moldecitos de 80 gramos cada uno". */
const WEIGHED_EACH = new RegExp(
  String.raw`^(\d{1,3}) (?:\p{L}+ )?\p{L}+ (?:of|de|x|at|a) (${FIGURE}) ?(${MASS})(?: (?:each|ea|apiece|cada un[oa]|c\/u))[\s.]*$`,
  'iu',
);

/**
 * A size whose measure is told with what it was measured by, or with what is in it, in the sizes' own grammar; undefined where it is
 * told otherwise. What lye and water are in is batter. Pure.
 * @example sizeBeside('40 oz total batch w water n lye') // '40 oz batter'
 */
export function sizeBeside(text: string): string | undefined {
  const [, amount, unit] = WITH_LYE.exec(text) ?? MEASURED_BY_WATER.exec(text) ?? [];
  if (amount !== undefined && unit !== undefined) return `${amount} ${unit} batter`;
  const [, count, each, of] = WEIGHED_EACH.exec(text) ?? [];
  return count === undefined || each === undefined ? undefined : `${count} bars of ${each} ${of}`;
}

/** "3-400 ml": the hundreds go for both ends. */
const HUNDREDS = /(?<![\d.,/])([1-9])\s?(?:-|–|to|a|or|o)\s?([1-9])00(?=\s?(?:ml|g|cc|gr)\b)/iu;
/** "600. mls sorry": a point that ends nothing. */
const STRAY_POINT = new RegExp(String.raw`(?<=\d)\. (?=${UNIT}\b)`, 'iu');
/** "Una taza de las de 250", "a 250 ml cup": the cup tells its size. */
const CUP_OF =
  /^(?:1|una?|one|an?) (?:taza|tacita|cup|mug) (?:de las |de los )?(?:de|of) (\d{2,3})(?: ?(?:ml|cc))?[\s.]*$/iu;
/** "6 fl oz. just for the pencil line": a sentence of its own that changes nothing. */
const SENTENCE_BEHIND = new RegExp(
  unbroken`
    ^([^.;]*\d[\d.,/ ]*${UNIT}(?: (?:of |de )?(?:batter|masa|mezcla))?)\.\s+(?:just|only|solo|nom[aá]s|for|
    para|it['’]?s|es)\b(?![^]*\b(?:half|mitad|double|doble|oils?|aceites?|each|cada)\b)[^\d]*$
  `,
  'iu',
);
/** "765 oils (g)": the unit is told behind. */
const UNIT_BEHIND =
  /^(\d[\d.,]*) (oils?|fats?|aceites?|grasas?|batter|masa) \((g|gr|grams?|gramos?|oz|ml|kg)\)[\s.]*$/iu;

/** A range of hundreds with both ends written out. Pure. */
export const withHundreds = (text: string): string =>
  text.replace(HUNDREDS, (all, low: string, high: string) => (low < high ? `${low}00-${high}00` : all));

/** A portion that is told in a turn of its own, in the grammar of amounts; undefined where it is told otherwise. Pure. */
export function portionBeside(text: string): string | undefined {
  const cup = CUP_OF.exec(text)?.[1];
  if (cup !== undefined) return `${cup} ml`;
  const said = text.replace(STRAY_POINT, ' ').replace(SENTENCE_BEHIND, '$1').replace(UNIT_BEHIND, '$1 $3 $2');
  return said === text ? undefined : said;
}
