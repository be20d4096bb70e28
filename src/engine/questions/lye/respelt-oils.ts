import type { Correction } from '../found/words-of.ts';

/** The slips that were put right in the names of these oils, a recipe's `oils` as they were read. Pure. */
export function respeltOils(
  oils: string | undefined,
  corrections: readonly Correction[],
): readonly { readonly typed: string; readonly read: string }[] {
  const words = new Set(oils?.toLowerCase().split(/[^\p{L}]+/u));
  return corrections
    .filter(({ to }) => words.has(to.toLowerCase()))
    .map(({ from, to }) => ({ typed: from, read: to }));
}
