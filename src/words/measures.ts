import type { Quantity } from '../engine/quantities/amount.ts';
import { type Measured, SPOON_PARTS, type Spoon } from '../engine/quantities/spoons.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** What measures are called in one language, abbreviated as its recipes do. */
export type MeasureNames = {
  readonly tablespoon: string;
  readonly teaspoon: string;
  /** Between a part and what it is of. */
  readonly of: string;
};

/** How one language writes what is spooned and weighed, from the names of its spoons. */
export function measuresIn(language: Language, names: MeasureNames) {
  const { plain, mixed, typed } = numbersIn(language);
  const spoons = (spoon: Spoon, count: number): string => {
    const { unit, part } = SPOON_PARTS[spoon];
    if (part === 1) return `${count} ${names[unit]}`;
    return `${count === 1 ? '' : `${count} x `}1/${part} ${names[unit]}`;
  };
  return {
    /** An amount that was typed, as this language writes numbers. */
    typed,
    /** `1 Tbsp + 1/4 tsp`, `2 x 1/4 tsp`; where no spoon is small enough, a part of a paste: `1/8 of 1/8 tsp`. */
    measure: ({ spoons: counts, paste }: Measured): string =>
      counts.length > 0 || paste === undefined
        ? counts.map(({ spoon, count }) => spoons(spoon, count)).join(' + ')
        : `1/${paste.parts} ${names.of} ${spoons(paste.powder, 1)}`,
    /** One spoon: `1/2 tsp`. */
    spoon: (spoon: Spoon): string => spoons(spoon, 1),
    /** A count of teaspoons that need not be real spoons: `1 1/2 tsp`. */
    teaspoons: (count: number): string => `${mixed(count)} ${names.teaspoon}`,
    /** `1 ml`, `200 l`. */
    quantity: ({ value, unit }: Quantity): string => `${plain(value)} ${unit}`,
  };
}
