import { spaced } from '../../../engine/over-lines.ts';
import type { ByLitre } from '../../../engine/questions/lye/amounts/by-litre.ts';
import { numbersIn } from '../../numbers.ts';

const { figure, one } = numbersIn('en');

/** What is said of recipes that measure oil by the litre and lye by weight. */
export const lyeByLitre = {
  headline: ({ litres, check }: ByLitre): string => {
    const oil = `${figure(litres, 1)} l oil weigh about ${figure(check.oilGrams, 0)} g and take about ${figure(check.usualGrams, 0)} g ${check.lye.alkali}`;
    return check.verdict === 'lye-heavy'
      ? `No, do not use it: ${oil}; ${figure(check.lye.grams, 0)} g is too much and burns.`
      : `Not by the litre: ${oil} at 5 % superfat. Weigh the oil before you trust ${figure(check.lye.grams, 0)} g.`;
  },
  why: ({ check }: ByLitre): string => spaced`
    Counted at 0.92 kg a litre, as ${check.superfat.typical < 0 ? 'lye-heavy' : 'a guess'}: superfat
    ${one(check.superfat.typical)} %. A litre is not exact enough for lye, and a bottle holds more or less
    than it says. Many old recipes were lye-heavy, or made for laundry with weak lye. Made already: gloves,
    off the skin, out of reach; waiting does not cure it. Weigh the oil and ask “how much lye for
    ${figure(check.oilGrams, 0)} g sunflower oil”; used oil is strained first.
  `,
};
