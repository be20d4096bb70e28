import { inverse, Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import {
  D65_AT_BANDS,
  X_WEIGHTS,
  xyzOfReflectance,
  Y_WEIGHTS,
  Z_WEIGHTS,
} from '../../src/engine/colour/spectra/observer.ts';
import { reflectanceOfLab } from '../../src/engine/colour/spectra/reconstruct.ts';
import type { Spectrum } from '../../src/engine/colour/spectra/spectrum.ts';
import { lampShare, miredOf, withoutLamp } from '../../src/photo/scene/warm-light.ts';
import { LIGHTS } from './render/lights.ts';

const D65 = [0.95047, 1, 1.08883];
const A = LIGHTS.find(({ name }) => name === 'lamp (A)')!.power;

/** Smooth reflectances of five lightnesses, eighteen hues and three chromas. */
const REFLECTANCES = [30, 45, 60, 75, 88].flatMap(l =>
  Array.from({ length: 18 }, (_, i) => (i * Math.PI) / 9).flatMap(hue =>
    [10, 25, 45].map(chroma =>
      reflectanceOfLab({ l, a: chroma * Math.cos(hue), b: chroma * Math.sin(hue) }, 0),
    ),
  ),
);

const under = (reflectance: Spectrum, power: Spectrum): number[] =>
  [X_WEIGHTS, Y_WEIGHTS, Z_WEIGHTS].map(weights =>
    weights.reduce(
      (sum, w, band) => sum + ((w * power[band]!) / D65_AT_BANDS[band]!) * reflectance[band]!,
      0,
    ),
  );

/** Linear Bradford, ICC.1:2022, annex E. */
const BRADFORD = new Matrix([
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
]);

test('the matrix is the fit that it is said to be', () => {
  const white = under(new Float64Array(36).fill(1), A);
  const cones = (xyz: readonly number[]) => BRADFORD.mmul(Matrix.columnVector([...xyz])).to1DArray();
  const [from, to] = [cones(white), cones(D65)];
  const adapt = inverse(BRADFORD)
    .mmul(Matrix.diag(to.map((value, i) => value / from[i]!)))
    .mmul(BRADFORD);
  const rows = REFLECTANCES.map(one => {
    const lit = adapt.mmul(Matrix.columnVector(under(one, A))).to1DArray();
    const { x, y, z } = xyzOfReflectance(one);
    return {
      given: lit.map((value, i) => value / D65[i]!),
      wanted: [x, y, z].map((value, i) => value / D65[i]!),
    };
  });
  const weight = ({ wanted }: (typeof rows)[number]) => 1 / Math.max(0.05, wanted[1]!);
  const left = rows.map(row => [0, 2].map(i => weight(row) * (row.given[i]! - row.given[1]!)));
  const right = rows.map(row => row.wanted.map(value => weight(row) * (value - row.given[1]!)));
  const fit = solve(new Matrix(left), new Matrix(right));
  const fitted = [0, 1, 2].flatMap(row => {
    const [first, last] = [fit.get(0, row), fit.get(1, row)];
    return [first, 1 - first - last, last];
  });
  for (const [i, value] of withoutLamp(1).entries()) expect(Math.abs(value - fitted[i]!)).toBeLessThan(0.002);
});

test('neutral stays neutral, and daylight as it is', () => {
  for (const share of [0, 0.5, 1]) {
    const rows = withoutLamp(share);
    for (const at of [0, 3, 6]) expect(rows[at]! + rows[at + 1]! + rows[at + 2]!).toBeCloseTo(1, 2);
  }
  expect(withoutLamp(0)).toEqual([1, 0, 0, 0, 1, 0, 0, 0, 1]);
});

test('colour temperatures are those of the standard lights', () => {
  // CIE 015:2018: A x 0.44758, y 0.40745, 2,856 K; D50 x 0.34567, y 0.35851, 5,003 K; D65 6,504 K.
  const at = (x: number, y: number) =>
    miredOf([x / y / D65[0]!, 1, (1 - x - y) / y / D65[2]!] as [number, number, number]);
  expect(1e6 / at(0.44758, 0.40745)).toBeCloseTo(2856, -1);
  expect(1e6 / at(0.34567, 0.35851)).toBeCloseTo(5003, -1);
  expect(1e6 / miredOf([1, 1, 1])).toBeCloseTo(6504, -1);
});

test('a phone that left half of a lamp’s colour left a whole lamp, and blue shade none', () => {
  const half = 1e6 / ((1e6 / 2856 + 1e6 / 6504) / 2);
  // Planck's radiator of that temperature, from the formulas of B. Kang and others (2002), 1,667 K to 4,000 K.
  const t = half;
  const x = -0.2661239e9 / t ** 3 - 0.2343589e6 / t ** 2 + 0.8776956e3 / t + 0.17991;
  const y = -0.9549476 * x ** 3 - 1.37418593 * x ** 2 + 2.09137015 * x - 0.16748867;
  const paper = [x / y / D65[0]!, 1, (1 - x - y) / y / D65[2]!] as [number, number, number];
  expect(lampShare(paper)).toBeCloseTo(1, 1);
  expect(lampShare([0.97, 1, 1.1])).toBe(0);
  expect(lampShare([1.2, 1, 0.3])).toBeCloseTo(1.1, 5);
});
