import { unbroken } from '../../over-lines.ts';
import { plainText } from '../number.ts';
import { hedged, unframed } from './amount-remarks.ts';
import { SIZE_OF_BARS, spokenAmounts } from './spoken-amounts.ts';

const COUNTS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:half (?:a )?dozen|media docena)(?: (?:at|of|de|@))? (?=\d[\d.,/]* ?\p{L})/giu, '6 bars of '],
  [/\b(?:(?:a|one|una)\s+)?(?:dozen|docena)(?: (?:at|of|de|@))? (?=\d[\d.,/]* ?\p{L})/giu, '12 bars of '],
  // "a loaf of 10, each one 115 g"
  [
    new RegExp(
      unbroken`
        ^(?:an? |una? |my |mi )?(?:loaf|log|batch|tray|mou?ld|lote|tanda|molde|bandeja) (?:of|
        de) (\d{1,3})[, ]+(?:each(?: one)?|cada un[oa])(?: (?:of|de|at|is|es))? (?=\d)
      `,
      'giu',
    ),
    '$1 bars of ',
  ],
  [/\b(?:half (?:a )?dozen|media docena(?: de)?)\b/giu, '6'],
  [/\b(?:a|one|una)\s+(?:dozen|docena)(?: de| of)?\b/giu, '12'],
  [/\b(?:dozen|docena)\b(?: de| of)?/giu, '12'],
  [/\b(?:a )?couple(?: of)?\b|\b(?:un )?par de\b/giu, '2'],
];

/** "80 g 80 g" is how some tell eighty grams each. */
const TWICE = /(?<![\d.,])(\d[\d.,]* ?(?:g|gr|grams?|gramos?|oz|ounces?|onzas?|ml))\s+\1(?![\p{L}\d])/giu;

const AND = /(?<=\s)(?:n|'n'|'n|&)(?=\s)|(?<=\s)an(?= (?:a )?half\b)/giu;

/** A text with dozens, “and a half” and doubled amounts as figures, without what hedges it; `about` where something did. Pure. */
export function tidied(text: string): { readonly text: string; readonly about: boolean } {
  const plain = plainText(text).replace(/(?<=\d)\s?~\s?(?=\d)/gu, '-');
  const { text: firm, about } = hedged(plain);
  let said = spokenAmounts(firm).replace(AND, 'and');
  for (const [pattern, count] of COUNTS) said = said.replace(pattern, count);
  said = said.replace(SIZE_OF_BARS, '$1 ').replace(TWICE, '$1');
  return { text: unframed(said.replace(/\s+/gu, ' ')).replace(LONE_UNIT, '1 '), about };
}

/** "Quart", "kilo de aceite": a unit that nobody counts is one. */
const LONE_UNIT = new RegExp(
  unbroken`
    ^(?=(?:quart|pint|gallon|lit(?:er|re)|pound|kilo|litro|libra)(?: (?:of|de) (?:(?:the|my|mi|la|el|
    los) )?(?:oils?|fats?|aceites?|grasas?|batter|masa|mezcla))?$)
  `,
  'iu',
);
