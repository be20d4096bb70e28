/** A temperature, or a difference or a range of them, as a sentence has it in both units: the figures to the letter. */
export type TemperatureSaid = { readonly celsius: string; readonly fahrenheit: string };

const FIGURES = String.raw`-?\d+(?:(?: \p{L}{1,3} |-)\d+)?`;
const CELSIUS_FIRST = new RegExp(String.raw`(${FIGURES}) °C \((${FIGURES}) °F\)`, 'gu');

/**
 * A sentence in pieces: text that stays, and each temperature that stands in both units. Pure.
 * @example temperaturesIn('at 38 °C (100 °F)') // ['at ', { celsius: '38', fahrenheit: '100' }]
 */
export function temperaturesIn(sentence: string): readonly (string | TemperatureSaid)[] {
  const pieces: (string | TemperatureSaid)[] = [];
  let end = 0;
  for (const { index, 0: whole, 1: celsius = '', 2: fahrenheit = '' } of sentence.matchAll(CELSIUS_FIRST)) {
    if (index > end) pieces.push(sentence.slice(end, index));
    pieces.push({ celsius, fahrenheit });
    end = index + whole.length;
  }
  if (end < sentence.length) pieces.push(sentence.slice(end));
  return pieces;
}
