import type { Measures } from '../../quantities/units.ts';
import { Refusal } from '../../refusal.ts';
import type { Lab } from '../spectra/cielab.ts';
import { type BarDose, colourLast } from './bar-text.ts';
import { parseMix, type WrittenPart } from './mix-text.ts';

/** What is in a bar of several jars, as it is written. */
export type WrittenBarMix = readonly { readonly name: string; readonly dose: BarDose }[];

/** A test bar of one named jar or several, as it is written. */
export type WrittenMixedBar = { readonly parts: WrittenBarMix; readonly lab: Lab };

/** A bar of more is no test. */
const LONGEST = 300;

/**
 * Reads a test bar that names its jars: `blue 1 tsp + white 1/2 tsp per cup: #8899bb`. Spoons and grams are to the cup. Undefined
 * when it is none. `isName` as in `parseMix`. Throws the Refusals of a mix and of its amounts.
 */
export function parseMixedBar(
  text: string,
  measures: Measures,
  isName: (text: string) => boolean,
): WrittenMixedBar | undefined {
  let refused: unknown;
  for (const { before, lab } of colourLast(text.slice(0, LONGEST))) {
    try {
      return { parts: parseBarMix(before, measures, isName), lab };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      refused ??= refusal;
    }
  }
  if (refused !== undefined) throw refused;
  return undefined;
}

/** The jars of a bar without its colour. Throws the Refusals of a mix. */
export const parseBarMix = (
  text: string,
  measures: Measures,
  isName: (text: string) => boolean,
): WrittenBarMix =>
  parseMix(text.replace(/[\s:=,;→-]+$/u, ''), measures, isName).map(({ name, dose }) => ({
    name,
    dose: toTheCup(dose, measures),
  }));

function toTheCup(dose: WrittenPart['dose'], { teaspoon }: Measures): BarDose {
  if (dose.by !== 'amount') return dose;
  return dose.amount.measure === 'mass'
    ? { by: 'grams-a-cup', grams: dose.amount.grams }
    : { by: 'cup', tspPerCup: dose.amount.millilitres / teaspoon };
}
