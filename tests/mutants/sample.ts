import { createHash } from 'node:crypto';

/** Which mutants are tried: a share of them from 0 to 1, and the word by which chance draws them, the same each time. */
export type Draw = { readonly share: number; readonly word: string };

export const ALL: Draw = { share: 1, word: '' };

/** True for mutants that are drawn, by their number in a run. */
export function isDrawn(id: string, { share, word }: Draw): boolean {
  return createHash('sha256').update(`${word} ${id}`).digest().readUInt32BE() < share * 2 ** 32;
}

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
