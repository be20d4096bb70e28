import type { ColourantKind } from '../colourants/colourant.ts';

/** One colourant's dose and ceiling in a portion, both in the same unit. */
export type Share = { readonly kind: ColourantKind; readonly dose: number; readonly ceiling: number };

/**
 * How full of colour a portion is: the sum of dose over ceiling, 1 at most. White pigments count together, against the
 * lowest ceiling among them (common practice).
 */
export function mixFullness(shares: readonly Share[]): { readonly all: number; readonly whites: number } {
  const white = shares.filter(share => share.kind === 'white');
  const lowest = Math.min(...white.map(share => share.ceiling));
  const whites = white.reduce((sum, { dose }) => sum + dose / lowest, 0);
  const others = shares.filter(share => share.kind !== 'white');
  return { whites, all: others.reduce((sum, { dose, ceiling }) => sum + dose / ceiling, whites) };
}
