import { spaced } from '../../engine/over-lines.ts';
import type { Strength, StrengthName } from '../../engine/quantities/strength.ts';
import { measuresIn } from '../measures.ts';
import { numbersIn } from '../numbers.ts';
import type { RefusalSentences } from '../sentence.ts';

const { plain, mixed } = numbersIn('en');
const measures = measuresIn('en', {
  tablespoon: 'Tbsp',
  teaspoon: 'tsp',
  of: 'of',
  units: {
    cup: ['cup', 'cups'],
    'metric-cup': ['metric cup', 'metric cups'],
    pint: ['pint', 'pints'],
    quart: ['quart', 'quarts'],
    gallon: ['gallon', 'gallons'],
    'imperial-fluid-ounce': ['imperial fl oz', 'imperial fl oz'],
    'imperial-pint': ['imperial pint', 'imperial pints'],
  },
  kinds: { oils: 'oils', batter: 'batter' },
  bars: 'bars of',
});
const { quantity, said } = measures;

const UNITS = 'cups, Tbsp, tsp, ml, l, fl oz, g, kg, oz or lb';

export const strengths = {
  tint: 'tint',
  pastel: 'pastel',
  medium: 'medium',
  full: 'full colour',
} satisfies Record<StrengthName, string>;

export const quantities = {
  ...measures,
  strengths,
  /** How deep a colour is, as it was asked for. */
  strength: (strength: Strength): string => {
    switch (strength.by) {
      case 'name':
        return strengths[strength.name];
      case 'share':
        return `${plain(100 * strength.ofFull)} % of full colour`;
      case 'percent-of-oils':
        return `${plain(strength.percent)} % of oils`;
      case 'cup':
        return `${mixed(strength.tspPerCup)} tsp per cup`;
      case 'pound-of-oils':
        return `${mixed(strength.tspPerPound)} tsp per pound of oils`;
    }
  },
  /** Of a portion told by its oils. */
  oils: 'oils',
  batter: 'batter',
  /** One part of a paste made because the dose is too small to spoon. */
  paste: (v: { powder: string; carrier: string; parts: number; part: string }) =>
    `Too little to spoon: wet ${v.powder} in ${v.carrier}, stir, and use ${v.part} of that paste (1 part in ${v.parts}).`,
  pasteOrSpoons: (v: { powder: string; carrier: string; parts: number; part: string }) =>
    `For a closer measure: wet ${v.powder} in ${v.carrier}, stir, and use ${v.part} of that paste (1 part in ${v.parts}).`,
};

export const quantitiesRefusals: Pick<
  RefusalSentences,
  | 'spoons-owned-unreadable'
  | 'spoons-too-large'
  | 'amount-without-unit'
  | 'amount-unit-unknown'
  | 'amount-vessel'
  | 'portion-mould-side'
  | 'amount-gross'
  | 'amount-unreadable'
  | 'amount-range'
  | 'amount-several'
  | 'amount-ambiguous'
  | 'amount-out-of-range'
  | 'strength-unreadable'
  | 'strength-out-of-range'
  | 'strength-percent-large'
  | 'colour-unreadable'
> = {
  'spoons-owned-unreadable': ({ text }) =>
    `I can’t read “${text}” as spoons. List those you own, such as “1 tsp, 1/2, 1/4, 1/8”, or “all”.`,
  'spoons-too-large': ({ smallest }) => spaced`
    Your smallest spoon, ${measures.spoon(smallest)}, is more than any colour here may have in that
    portion. Take a larger portion, or list a smaller spoon with /prefer.
  `,
  'amount-without-unit': ({ text }) =>
    `“${text}” needs a unit: ${UNITS}, such as “2 cups”, “500 g” or “1 lb oils”.`,
  'amount-unit-unknown': ({ unit }) =>
    `I don't know “${unit}” as a unit. Use ${UNITS}; add “oils” to count by oils.`,
  'portion-mould-side': ({ text }) =>
    `“${text}”: one side of a mould tells no amount. Give length, width and height, such as “mould 25x9x7 cm”, or the batter in cups, litres or grams.`,
  'amount-vessel': ({ vessel }) =>
    `How much goes into that ${vessel}? Tell me in ml or g, such as “500 ml” or “500 g”: weigh or measure it with water.`,
  'amount-gross': ({ text }) =>
    `“${text}” weighs what it stands in too. What does the batter weigh alone? Put the empty one on the scale and take that off.`,
  'amount-unreadable': ({ text }) =>
    text === ''
      ? `Please say how much, such as “2 cups”, “1 1/2 cups” or “250 ml”.`
      : `I can't read “${text}” as an amount. Write it like “2 cups”, “1 1/2 cups”, “250 ml” or “1 lb oils”.`,
  'amount-range': ({ text, low, high }) =>
    `“${text}” is a range. Give one of its ends, “${low}” or “${high}”, and ask again for the other.`,
  'amount-several': ({ text, candidates }) =>
    `“${text}” has more than one figure that may be meant: ${candidates.map(one => said(one.said)).join(', or ')}? Write the one you mean.`,
  'amount-ambiguous': ({ text, small, large }) =>
    `“${text}” could be ${small} or ${large}. Please write ${large} without a mark, or ${small} with fewer decimals.`,
  'amount-out-of-range': ({ text, low, high }) =>
    `“${typeof text === 'string' ? text : quantity(text)}” is out of range: I can work with ${quantity(low)} to ${quantity(high)}.`,
  'strength-unreadable': ({ text }) =>
    `I can't read “${text}” as a strength. Use tint, pastel, medium or full, or teaspoons per cup, such as “1/4 tsp per cup”.`,
  'strength-percent-large': ({ text, most }) => spaced`
    “${text}”: percent counts of the oils by weight, and more than ${most} % is no dose. For a share of
    full colour write “25% of full”, or a word: tint, pastel, medium, full.
  `,
  'strength-out-of-range': ({ text }) =>
    `“${text}” is not a strength I can dose. Use tint, pastel, medium or full, or more than 0 up to 48 tsp per cup.`,
  'colour-unreadable': ({ text }) =>
    `I can't read “${text}” as a colour. Name it, such as “dusty rose” or “sage”, or write it like “#4b3f9e”.`,
};
