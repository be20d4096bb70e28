import type { Quantity } from '../engine/quantities/amount.ts';
import { type Measured, SPOON_PARTS, type Spoon } from '../engine/quantities/spoons.ts';
import type { AmountOf, SaidAmount } from '../engine/quantities/told/said-amount.ts';
import type { Unit } from '../engine/quantities/unit-words.ts';
import { numbersIn } from './numbers.ts';
import type { Language } from './sentence.ts';

/** What measures are called in one language, abbreviated as its recipes do. */
export type MeasureNames = {
  readonly tablespoon: string;
  readonly teaspoon: string;
  /** Between a part and what it is of. */
  readonly of: string;
  /** Units that are written out, of one and of more. */
  readonly units: Readonly<Record<WrittenOut, readonly [one: string, more: string]>>;
  /** Behind an amount: what it is of. */
  readonly kinds: Readonly<Record<AmountOf, string>>;
  /** Behind how many there are of an amount. */
  readonly bars: string;
};

/** Units whose marks are alike in every language. */
const MARKS = {
  'fluid-ounce': 'fl oz',
  millilitre: 'ml',
  centilitre: 'cl',
  decilitre: 'dl',
  litre: 'l',
  milligram: 'mg',
  gram: 'g',
  kilogram: 'kg',
  ounce: 'oz',
  pound: 'lb',
} as const;
type WrittenOut = Exclude<Unit, keyof typeof MARKS | 'teaspoon' | 'tablespoon'>;
const isMarked = (unit: Unit): unit is keyof typeof MARKS => Object.hasOwn(MARKS, unit);

/** How one language writes what is spooned and weighed, from the names of its spoons. */
export function measuresIn(language: Language, names: MeasureNames) {
  const { figure, plain, mixed, typed } = numbersIn(language);
  const spoons = (spoon: Spoon, count: number): string => {
    const { unit, part } = SPOON_PARTS[spoon];
    if (part === 1) return `${count} ${names[unit]}`;
    return `${count === 1 ? '' : `${count} x `}1/${part} ${names[unit]}`;
  };
  const counted = (count: number, unit: Unit): string => {
    if (isMarked(unit)) return `${figure(count, 2)} ${MARKS[unit]}`;
    if (unit === 'teaspoon' || unit === 'tablespoon') return `${mixed(count)} ${names[unit]}`;
    return `${mixed(count)} ${names.units[unit][count > 1 ? 1 : 0]}`;
  };
  return {
    /** An amount that somebody told, in this language's words for its unit and for what it is of. */
    said: (amount: SaidAmount): string => {
      const of = amount.of === undefined ? '' : ` ${names.kinds[amount.of]}`;
      if ('typed' in amount) return `${typed(amount.typed)}${of}`;
      const each = counted(amount.count, amount.unit);
      return `${amount.pieces === undefined ? each : `${amount.pieces} ${names.bars} ${each}`}${of}`;
    },
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
