import type { StrengthName } from '../../engine/quantities/strength.ts';
import type { RefusalSentences } from '../sentence.ts';

const UNITS = 'cups, Tbsp, tsp, ml, l, fl oz, g, kg, oz or lb';

export const quantities = {
  strengths: { tint: 'tint', pastel: 'pastel', medium: 'medium', full: 'full colour' } satisfies Record<
    StrengthName,
    string
  >,
  /** Of a portion told by its oils. */
  oils: 'oils',
  batter: 'batter',
  /** A neutral measure (`1 Tbsp + 1/4 tsp`, `1/8 of 1/8 tsp`, `0.5 tsp/cup`) as this language writes it. */
  measure: (neutral: string) => neutral,
  /** One part of a paste made because the dose is too small to spoon. */
  paste: (v: { powder: string; carrier: string; parts: number }) =>
    `Too little to spoon: wet ${v.powder} in ${v.carrier} and use 1 part in ${v.parts} of that paste.`,
  pasteOrSpoons: (v: { powder: string; carrier: string; parts: number }) =>
    `For a closer measure: wet ${v.powder} in ${v.carrier} and use 1 part in ${v.parts} of that paste.`,
};

export const quantitiesRefusals: Pick<
  RefusalSentences,
  | 'amount-without-unit'
  | 'amount-unit-unknown'
  | 'amount-unreadable'
  | 'amount-ambiguous'
  | 'amount-out-of-range'
  | 'strength-unreadable'
  | 'strength-out-of-range'
  | 'strength-percent-large'
  | 'colour-unreadable'
> = {
  'amount-without-unit': ({ text }) =>
    `“${text}” needs a unit: ${UNITS}, such as “2 cups”, “500 g” or “1 lb oils”.`,
  'amount-unit-unknown': ({ unit }) =>
    `I don't know “${unit}” as a unit. Use ${UNITS}; add “oils” to count by oils.`,
  'amount-unreadable': ({ text }) =>
    text === ''
      ? `Please say how much, such as “2 cups”, “1 1/2 cups” or “250 ml”.`
      : `I can't read “${text}” as an amount. Write it like “2 cups”, “1 1/2 cups”, “250 ml” or “1 lb oils”.`,
  'amount-ambiguous': ({ text, small, large }) =>
    `“${text}” could be ${small} or ${large}. Please write ${large} without a mark, or ${small} with fewer decimals.`,
  'amount-out-of-range': ({ text, low, high }) =>
    `“${text}” is out of range: I can work with ${low} to ${high}.`,
  'strength-unreadable': ({ text }) =>
    `I can't read “${text}” as a strength. Use tint, pastel, medium or full, or teaspoons per cup, such as “1/4 tsp per cup”.`,
  'strength-percent-large': ({ text, most }) =>
    `“${text}”: percent counts of the oils by weight, and more than ${most} % is no dose. For a share of full colour write “25% of full”, or a word: tint, pastel, medium, full.`,
  'strength-out-of-range': ({ text }) =>
    `“${text}” is not a strength I can dose. Use tint, pastel, medium or full, or more than 0 up to 48 tsp per cup.`,
  'colour-unreadable': ({ text }) =>
    `I can't read “${text}” as a colour. Write it like “#4b3f9e” or “rebeccapurple”.`,
};
