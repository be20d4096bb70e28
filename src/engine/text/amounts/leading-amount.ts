import { type Amount, parseAmount } from '../../quantities/amount.ts';
import { plainText } from '../../quantities/number.ts';
import type { Measures } from '../../quantities/units.ts';
import { Refusal } from '../../refusal.ts';
import { remembered } from '../../remembered.ts';

/** The most words an amount is written in: `1 1/2 US cups`, `1 lb 4 oz`. */
const LONGEST = 6;

const SAYS_WHY: ReadonlySet<string> = new Set(['amount-ambiguous', 'amount-out-of-range']);

/** An amount at the head of a text, and what follows it. */
export type LeadingAmount = { readonly amount: Amount; readonly rest: string };

/**
 * Splits `2 cups ultramarine blue` into two cups and `ultramarine blue`: the longest head that is an amount wins.
 * Undefined when no head is one.
 * Throws the Refusals `amount-ambiguous` and `amount-out-of-range`. Spoons and cups are those of `measures`.
 */
export function leadingAmount(text: string, measures?: Measures): LeadingAmount | undefined {
  const words = text.trim().split(/\s+/u);
  for (let count = Math.min(LONGEST, words.length); count > 0; count -= 1) {
    const head = words.slice(0, count).join(' ');
    const amount = measures ? amountOrNothing(head, measures) : usualAmount(head);
    if (amount !== undefined) return { amount, rest: words.slice(count).join(' ') };
  }
  return undefined;
}

const DOSE_NEXT = /^(.*?\p{L})[\s:,]+(?=\d[\d.,/ ]*(?:tsps?|teaspoons?|cdtas?|cucharaditas?)\b\s*[^\s\d])/iu;
const ADDED = /(?:^|\s)(?:and|plus|less|minus|y|mas|más|menos|con)$/iu;

/**
 * The batter at the head of a portion, and its colours: as {@link leadingAmount}, but teaspoons that follow without "plus" or
 * "less" are the dose of the colour behind them, as in `2 cups 1/2 tsp ultramarine blue`. Throws the same Refusals.
 */
export function leadingBatter(text: string, measures?: Measures): LeadingAmount | undefined {
  const plain = plainText(text);
  const dosed = DOSE_NEXT.exec(plain);
  const batter = dosed && !ADDED.test(dosed[1]!) ? leadingAmount(dosed[1]!, measures) : undefined;
  return batter?.rest === ''
    ? { amount: batter.amount, rest: plain.slice(dosed![0].length) }
    : leadingAmount(text, measures);
}

/** Words that an amount takes for its own: "1 cup of the". */
const MOST_LINKS = 3;

/**
 * What follows the amount of a text, where that is a name that begins with a linking word, as a jar called “Of the sea”;
 * undefined where `isName` takes none. `rest` is what {@link leadingAmount} left.
 */
export function tailNamed(text: string, rest: string, isName: (tail: string) => boolean): string | undefined {
  const words = text.trim().split(/\s+/u);
  const from = words.length - rest.split(/\s+/u).length;
  for (let at = Math.max(1, from - MOST_LINKS); at <= from; at += 1) {
    const tail = words.slice(at).join(' ');
    if (/^(?:of|de|the|el|la|los|las)\s/iu.test(tail) && isName(tail)) return tail;
  }
  return undefined;
}

/** Whoever looks for the end of a list reads its pieces again with each: without this a third of what reading a question took. */
const usualAmount = remembered(head => amountOrNothing(head));

function amountOrNothing(text: string, measures?: Measures): Amount | undefined {
  if (!/[\p{N}\p{L}]/u.test(text)) return undefined;
  try {
    return parseAmount(text, measures);
  } catch (error) {
    // A number that could be two amounts, or is far too large, is wrong whatever follows it.
    const settled = error instanceof Refusal && SAYS_WHY.has(error.id);
    if (error instanceof Refusal && !settled) return undefined;
    throw error;
  }
}
