import { targetMetric } from '../../matching/target-metric.ts';
import { barLab } from '../../mixing/bar.ts';
import type { BaseOptics, MixPart, Optics } from '../../mixing/optics.ts';
import { type ScaleBelief, scaled, weighed } from '../scale-estimation.ts';
import { diagonal, type SquareMatrix } from './information-matrix.ts';

/** A bar that may be poured: which jars, by their place among those to be known, and grams of each per 100 g of batter. */
export type BarMix = readonly { readonly jar: number; readonly grams: number }[];

const NUDGE = 1e-4;

/**
 * How a bar's colour follows its jars: three rows of change, CIEDE2000 over `plusMinus`, a column for ln K and one for ln S of
 * every jar in turn (the logarithms of the scales on what is known of each).
 */
export function sensitivityOf(
  mix: BarMix,
  jars: readonly Optics[],
  { base, plusMinus }: { readonly base: BaseOptics; readonly plusMinus: number },
): readonly (readonly number[])[] {
  const rows = [0, 1, 2].map(() => new Array<number>(2 * jars.length).fill(0));
  const parts = mix.map(({ jar, grams }): MixPart => ({ optics: jars[jar]!, grams }));
  const lab = barLab(parts, base);
  const metric = targetMetric(lab);
  mix.forEach(({ jar }, at) => {
    for (const scale of [0, 1] as const) {
      const optics = scaled(jars[jar]!, scale === 0 ? [NUDGE, 0] : [0, NUDGE]);
      const moved = barLab(parts.with(at, { ...parts[at]!, optics }), base);
      weighed(metric, moved, lab).forEach((change, row) => {
        rows[row]![2 * jar + scale] = change / NUDGE / plusMinus;
      });
    }
  });
  return rows;
}

/** What is known of the scales beforehand: the kinds' spread, and what earlier bars said. */
export function knownInformation(jars: readonly (readonly ScaleBelief[])[]): SquareMatrix {
  const of = (beliefs: readonly ScaleBelief[], scale: 'k' | 's') =>
    beliefs.reduce((sum, belief) => sum + belief[scale].spread ** -2, 0);
  return diagonal(jars.flatMap(beliefs => [of(beliefs, 'k'), of(beliefs, 's')]));
}
