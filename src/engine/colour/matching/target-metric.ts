import { colourDifference, type Lab } from '../spectra/cielab.ts';

/**
 * CIEDE2000 close to one colour as a plain distance: near `target`, the difference of a colour is about the length
 * of `matrix` times its CIELAB offset. Three rows of three, upper triangular.
 * The 3 by 3 form is read off CIEDE2000 itself at small offsets in every direction.
 */
export function targetMetric(target: Lab): Float64Array {
  const step = 0.05;
  const moved = (l: number, a: number, b: number) =>
    (colourDifference(target, { l: target.l + l * step, a: target.a + a * step, b: target.b + b * step }) /
      step) **
    2;
  const [ll, aa, bb] = [moved(1, 0, 0), moved(0, 1, 0), moved(0, 0, 1)];
  const [la, lb, ab] = [
    (moved(1, 1, 0) - ll - aa) / 2,
    (moved(1, 0, 1) - ll - bb) / 2,
    (moved(0, 1, 1) - aa - bb) / 2,
  ];
  const m00 = Math.sqrt(ll);
  const m01 = la / m00;
  const m02 = lb / m00;
  const m11 = Math.sqrt(Math.max(aa - m01 * m01, 1e-9));
  const m12 = (ab - m01 * m02) / m11;
  const m22 = Math.sqrt(Math.max(bb - m02 * m02 - m12 * m12, 1e-9));
  return Float64Array.of(m00, m01, m02, 0, m11, m12, 0, 0, m22);
}
