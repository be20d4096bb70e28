import { type Amount, parseAmount } from '../quantities/amount.ts';
import type { Measures } from '../quantities/units.ts';
import { Refusal } from '../refusal.ts';

/** The most words an amount is written in: `1 1/2 US cups`, `1 lb 4 oz`. */
const LONGEST = 6;

/** An amount at the head of a text, and what follows it. */
export type LeadingAmount = { readonly amount: Amount; readonly rest: string };

/**
 * Splits `2 cups ultramarine blue` into two cups and `ultramarine blue`: the longest head that is an amount wins.
 * Undefined when no head is one. Spoons and cups are those of `measures`.
 */
export function leadingAmount(text: string, measures?: Measures): LeadingAmount | undefined {
  const words = text.trim().split(/\s+/u);
  for (let count = Math.min(LONGEST, words.length); count > 0; count -= 1) {
    const amount = amountOrNothing(words.slice(0, count).join(' '), measures);
    if (amount !== undefined) return { amount, rest: words.slice(count).join(' ') };
  }
  return undefined;
}

function amountOrNothing(text: string, measures: Measures | undefined): Amount | undefined {
  if (!/[\p{N}\p{L}]/u.test(text)) return undefined;
  try {
    return parseAmount(text, measures);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
