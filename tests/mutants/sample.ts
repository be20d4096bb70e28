/** The normal quantile of a two-sided 95 %: NIST/SEMATECH e-Handbook, 1.3.6.7.1. */
const Z = 1.95996;

/**
 * Where a share lies 95 times in 100, of which a sample shows `noticed` of `of`: Wilson's score interval.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.
 */
export function interval(noticed: number, of: number): { readonly low: number; readonly high: number } {
  if (of === 0) return { low: 0, high: 1 };
  const share = noticed / of;
  const square = Z * Z;
  const middle = (share + square / (2 * of)) / (1 + square / of);
  const half = (Z / (1 + square / of)) * Math.sqrt((share * (1 - share)) / of + square / (4 * of * of));
  return { low: middle - half, high: middle + half };
}

/** A part of what is sampled: how many it has in all, and what its own sample shows. */
export type Stratum = { readonly all: number; readonly noticed: number; readonly of: number };

/**
 * The share of all, from a sample of each part, and where it lies 95 times in 100.
 * Source: the estimator of a stratified sample, Cochran, Sampling Techniques, chapter 5 (from memory); two more of either kind are
 * counted into each part's variance (Agresti and Coull 1998), so that a part in which nothing was missed is not held for certain.
 */
export function stratified(parts: readonly Stratum[]): {
  readonly share: number;
  readonly low: number;
  readonly high: number;
} {
  const tried = parts.filter(({ of }) => of > 0);
  const total = tried.reduce((sum, { all }) => sum + all, 0);
  let [share, variance] = [0, 0];
  for (const { all, noticed, of } of tried) {
    const weight = all / total;
    share += weight * (noticed / of);
    const near = (noticed + 2) / (of + 4);
    // A part that was tried whole is known.
    if (of < all) variance += (weight * weight * near * (1 - near)) / (of + 4);
  }
  const half = Z * Math.sqrt(variance);
  return { share, low: Math.max(0, share - half), high: Math.min(1, share + half) };
}
