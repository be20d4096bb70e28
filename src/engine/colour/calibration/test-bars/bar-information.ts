import { inverse, Matrix } from 'ml-matrix';
import { targetMetric } from '../../matching/target-metric.ts';
import { barLab } from '../../mixing/bar.ts';
import type { BaseOptics, MixPart, Optics } from '../../mixing/optics.ts';
import { jarOptics } from '../joint/jar-model.ts';
import { type JarBelief, type JarParameters, PARAMETERS } from '../joint/jar-parameters.ts';
import { offsetIn } from '../joint/stated-error.ts';
import type { SquareMatrix } from './information-matrix.ts';

/** A bar that may be poured: which jars, by their place among those to be known, and grams of each per 100 g of batter. */
export type BarMix = readonly { readonly jar: number; readonly grams: number }[];

/** A jar as far as it is known: its kind, and how it is believed to differ from that. */
export type KnownJar = { readonly kind: Optics; readonly belief: JarBelief };

const NUDGE = 1e-4;

/**
 * How a bar's colour follows its jars: three rows of change, CIEDE2000 over `error`, a column for every parameter of every jar in
 * turn, about what is believed of each.
 * @param error one standard deviation of what is read, along each axis
 */
export function sensitivityOf(
  mix: BarMix,
  jars: readonly KnownJar[],
  { base, error }: { readonly base: BaseOptics; readonly error: number },
): readonly (readonly number[])[] {
  const rows = [0, 1, 2].map(() => new Array<number>(PARAMETERS * jars.length).fill(0));
  const opticsAt = (jar: number, parameters: readonly number[]): Optics =>
    jarOptics(jars[jar]!.kind, parameters as unknown as JarParameters);
  const parts = mix.map(
    ({ jar, grams }): MixPart => ({ optics: opticsAt(jar, jars[jar]!.belief.parameters), grams }),
  );
  const lab = barLab(parts, base);
  const metric = targetMetric(lab);
  mix.forEach(({ jar, grams }, at) => {
    const { parameters } = jars[jar]!.belief;
    parameters.forEach((value, which) => {
      const optics = opticsAt(jar, parameters.with(which, value + NUDGE));
      const moved = barLab(parts.with(at, { optics, grams }), base);
      offsetIn(metric, moved, lab).forEach((change, row) => {
        rows[row]![PARAMETERS * jar + which] = change / NUDGE / error;
      });
    });
  });
  return rows;
}

/** What is known of all parameters beforehand: the inverse of each jar's covariance, jar by jar. */
export function knownInformation(jars: readonly KnownJar[]): SquareMatrix {
  const size = PARAMETERS * jars.length;
  const values = new Float64Array(size * size);
  jars.forEach(({ belief }, jar) => {
    const own = inverse(new Matrix(belief.covariance.map(row => [...row])));
    for (let row = 0; row < PARAMETERS; row++)
      for (let column = 0; column < PARAMETERS; column++)
        values[(PARAMETERS * jar + row) * size + PARAMETERS * jar + column] = own.get(row, column);
  });
  return { size, values };
}
