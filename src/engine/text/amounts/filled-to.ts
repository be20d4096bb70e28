import { unbroken } from '../../over-lines.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';

const VESSEL = unbroken`
  (?:jug|jar|pot|bowl|bucket|pail|tub|container|beaker|pitcher|cup|mug|glass|bottle|carton|jarra|jarrita|
  olla|bol|cuenco|balde|cubeta|recipiente|vaso|vasito|taza|bote|envase|frasco|botella)
`;
const SIZE = String.raw`(\d+(?:[.,]\d+)?) ?(ml|mls|cc|l|lit(?:er|re)s?|litros?)`;
const MARK = '(?: ?(?:mark|line|ml|mls|cc|raya|marca|l[ií]nea))*';
/** "One 600 ml beaker, filled to the 400", "jarra de un litro, hasta la raya de 600". */
const FILLED = new RegExp(
  unbroken`
    ^(?:(?:in|en|it['’]?s|es|an?|one|1|the|my|una?|el|la|mi) )*(?:${SIZE} (?:\p{L}+ )?${VESSEL}|
    ${VESSEL} (?:de |of )?${SIZE})[\s,;:]+(?:(?:it['’]?s|es|est[aá]|is|about|only|but|pero|filled|full|fill|
    it|llen[oa]|llenad[oa]|up) )*(?:to|hasta)(?: (?:the|la|el|los|las|about|unos|como|casi|raya|marca|
    l[ií]nea|mark|line|de|of))* (\d{2,4})${MARK}[\s.!)]*$
  `,
  'iu',
);
/** Fewer would be as many of another unit: "a litre jug to 2". */
const LEAST_ML = 20;

/** What a vessel of a told size holds that is filled to one of its marks: the mark, in millilitres. */
function markIn(said: string): string | undefined {
  const [, before, unitBefore, behind, unitBehind, mark] = FILLED.exec(said) ?? [];
  const [size, unit] = [before ?? behind, unitBefore ?? unitBehind];
  if (size === undefined || unit === undefined || mark === undefined) return undefined;
  const most = Number(size.replace(',', '.')) * (/^l/iu.test(unit) ? 1000 : 1);
  return Number(mark) >= LEAST_ML && Number(mark) <= most ? `${mark} ml` : undefined;
}

const BARE = /(?<![\d.,/])\d{3,4}(?![\d.,/]|\s?[\p{L}%])/gu;
const SCALED = new RegExp(
  unbroken`
    (?<!\p{L})(?:weighed|(?:l[oa] )?pes[eé]|pesad[oa]|(?:the )?scales? (?:says?|said|reads?|shows?)|
    on the (?:kitchen )?scales?|(?:la )?(?:balanza|b[aá]scula) (?:dice|marca|marc[oó]|dio)|en la (?:balanza|
    b[aá]scula))(?!\p{L})
  `,
  'iu',
);
/** Beside what was weighed these leave its figure as it is. */
const BESIDE =
  /^(?:just|it|i|we|the|and|so|ok|is|its|it's|came|comes|out|at|to|now|batter|ya|lo|la|y|me|da|dio|son|sali[oó]|masa|mezcla|reci[eé]n|acabo|de|pesar)$/iu;
/** Kitchen scales tell grams; so many ounces would be 3 kg and more. */
const LEAST_GRAMS = 100;

/** A bare figure that was read off a scale, in grams. */
function weighedIn(said: string): string | undefined {
  const [figure, ...more] = said.match(/\d[\d.,/]*/gu) ?? [];
  const [bare] = said.match(BARE) ?? [];
  if (figure === undefined || bare !== figure || more.length > 0 || !SCALED.test(said)) return undefined;
  const beside = said.replace(SCALED, ' ').match(/\p{L}[\p{L}'’]*/gu) ?? [];
  return Number(bare) >= LEAST_GRAMS && beside.every(word => BESIDE.test(word)) ? `${bare} g` : undefined;
}

/**
 * An amount that is told by the mark a vessel is filled to, or read off a scale, in the amounts' own grammar; any other text comes back
 * as it was. Oils that "weigh 640" are another matter: on whose scale is asked. Pure.
 * @example readOff('one 600 ml beaker, filled to the 400') // '400 ml'
 */
export function readOff(text: string): string {
  if (!/\d/u.test(text) || !/(?:\bto\b|hasta|weighed|pes[eé]|pesad|scale|balanza|b[aá]scula)/iu.test(text))
    return text;
  const said = spokenAmounts(text);
  return markIn(said) ?? weighedIn(said) ?? text;
}
