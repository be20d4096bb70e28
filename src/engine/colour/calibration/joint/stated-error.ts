import { targetMetric } from '../../matching/target-metric.ts';
import { colourDifference, type Lab } from '../../spectra/cielab.ts';

/** A 3 by 3 covariance of an offset in CIELAB that is measured in units of CIEDE2000. */
export type OffsetCovariance = readonly [number[], number[], number[]];

/** An offset in CIELAB that is measured in units of CIEDE2000. */
export type Offset = readonly [number, number, number];
const STILL: Offset = [0, 0, 0];

/** A stated plus-or-minus holds 90 % of cases. */
/** The standard normal quantile of that share. Source: any table of the normal distribution. */
const STATED_NORMAL = 1.2815515655;

/** Standard deviation along each axis of an error that is as likely in every direction, whose stated radius is given. */
export const axisSpread = (stated: number): number => stated / statedRadius(isotropic(1));

export const isotropic = (variance: number): OffsetCovariance => [
  [variance, 0, 0],
  [0, variance, 0],
  [0, 0, variance],
];

export const NOTHING: OffsetCovariance = isotropic(0);

export const plus = (one: OffsetCovariance, other: OffsetCovariance): OffsetCovariance =>
  one.map((row, at) => row.map((value, to) => value + other[at]![to]!)) as unknown as OffsetCovariance;

/**
 * The radius that holds nine in ten of the offsets of a normal distribution about `shift`: its squared length as a scaled
 * chi-square of like mean and variance (those of a quadratic form in normal variables: A. M. Mathai and S. B. Provost,
 * Quadratic Forms in Random Variables, 1992, section 3.2b), by Wilson and Hilferty's cube root. Sources: F. E. Satterthwaite,
 * Biometrics Bulletin 2 (1946) 110-114; E. B. Wilson and M. M. Hilferty, Proc. Nat. Acad. Sci. 17 (1931) 684-688.
 */
export function statedRadius(covariance: OffsetCovariance, shift: Offset = STILL): number {
  const trace = covariance[0][0]! + covariance[1][1]! + covariance[2][2]!;
  const mean = trace + shift.reduce((sum, value) => sum + value * value, 0);
  const squares = covariance.flat().reduce((sum, value) => sum + value * value, 0);
  const along = covariance.reduce(
    (sum, row, at) => sum + shift[at]! * row.reduce((dot, value, to) => dot + value * shift[to]!, 0),
    0,
  );
  const halfVariance = squares + 2 * along;
  if (!(halfVariance > 0)) return Math.sqrt(mean);
  const degrees = (mean * mean) / halfVariance;
  const part = 2 / (9 * degrees);
  const quantile = degrees * (1 - part + STATED_NORMAL * Math.sqrt(part)) ** 3;
  return Math.sqrt((halfVariance / mean) * quantile);
}

/** A colour's offset from another in units of CIEDE2000, as three numbers; `metric` belongs to the second. */
export function offsetIn(metric: Float64Array, from: Lab, to: Lab): [number, number, number] {
  const [l, a, b] = [from.l - to.l, from.a - to.a, from.b - to.b];
  return [metric[0]! * l + metric[1]! * a + metric[2]! * b, metric[4]! * a + metric[5]! * b, metric[8]! * b];
}

/** The offset itself, of the length that CIEDE2000 says also where it is large. */
export function offsetOf(metric: Float64Array, from: Lab, to: Lab): [number, number, number] {
  const offset = offsetIn(metric, from, to);
  const length = Math.hypot(...offset);
  if (length < 1e-9) return offset;
  const times = colourDifference(from, to) / length;
  return offset.map(value => value * times) as [number, number, number];
}

/** Where the colour lies about a reference, on the whole, and how it is spread about that. */
export type Carried = { readonly shift: Offset; readonly covariance: OffsetCovariance };

/**
 * What a spread of the parameters makes of the colour, seen from a reference: one standard deviation either way along each
 * column of the covariance's root, as the colour really moves there (a slope alone would overstate a first trace of grey).
 * The second moment about the middle, so that a bias counts too. After S. J. Julier and J. K. Uhlmann, Proc. IEEE 92 (2004)
 * 401-422.
 * @param from the reference; the colour of the middle itself where none is given
 */
export function carried(
  lab: (parameters: readonly number[]) => Lab,
  at: readonly number[],
  covariance: readonly (readonly number[])[],
  from?: Lab,
): Carried {
  const here = lab(at);
  const reference = from ?? here;
  const metric = targetMetric(reference);
  const shift = from ? offsetOf(metric, here, reference) : STILL;
  const spread = rootColumns(covariance).reduce((sum, column) => {
    if (column.every(value => value === 0)) return sum;
    const [up, down] = [1, -1].map(way => {
      const moved = lab(at.map((value, which) => value + way * column[which]!));
      return offsetOf(metric, moved, reference).map((value, axis) => value - shift[axis]!);
    });
    return plus(sum, plus(halfSquare(up!), halfSquare(down!)));
  }, NOTHING);
  return { shift, covariance: spread };
}

const halfSquare = (offset: readonly number[]): OffsetCovariance =>
  offset.map(one => offset.map(other => (one * other) / 2)) as unknown as OffsetCovariance;

/** Columns of the lower triangular root of a covariance (Cholesky); what has no spread has no column. */
function rootColumns(covariance: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const size = covariance.length;
  const root = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      const known = root[row]!.reduce(
        (sum, value, at) => (at < column ? sum + value * root[column]![at]! : sum),
        0,
      );
      const rest = covariance[row]![column]! - known;
      if (row === column) root[row]![column] = Math.sqrt(Math.max(rest, 0));
      else root[row]![column] = root[column]![column]! > 0 ? rest / root[column]![column]! : 0;
    }
  }
  return root.map((_, column) => root.map(row => row[column]!));
}
