import { Color } from 'spectral.js';
import { describe, expect, test } from 'vitest';
import { X_BAR, Y_BAR, Z_BAR } from '../../src/engine/colour/spectra/cie-tables.ts';
import { hexOfLab, labOfReflectance } from '../../src/engine/colour/spectra/cielab.ts';
import {
  WHITE_POINT,
  X_WEIGHTS,
  xyzOfReflectance,
  Y_WEIGHTS,
  Z_WEIGHTS,
} from '../../src/engine/colour/spectra/observer.ts';
import { spectrum } from '../../src/engine/colour/spectra/spectrum.ts';
import { numberRows } from './fixtures/read.ts';

describe('the standard observer', () => {
  /** CIE 018:2019, the observer of 1931 every 1 nm. */
  test('of our 5 nm table stands in the 1 nm table, digit for digit', () => {
    const fine = new Map(numberRows('cie1931-1nm.csv').map(row => [row[0], row]));
    X_BAR.forEach((x, row) => {
      const [, xbar, ybar, zbar] = fine.get(360 + 5 * row) ?? [];
      expect([x, Y_BAR[row], Z_BAR[row]]).toEqual([xbar, ybar, zbar]);
    });
  });

  test('folded onto 36 bands sees smooth colours as the 1 nm table under D65 does', () => {
    // Bumps and edges as pigments have them; the reference sums 1 nm steps, D65 straight between its 5 nm.
    const rows = numberRows('cie1931-1nm.csv');
    for (const edge of [420, 480, 550, 600, 650]) {
      const reflectance = (nm: number) => 0.05 + 0.85 / (1 + Math.exp((edge - nm) / 15));
      const sums = { x: 0, y: 0, z: 0, white: 0 };
      for (const [nm, x, y, z] of rows) {
        const light = daylight(nm!);
        const r = reflectance(Math.min(Math.max(nm!, 380), 730));
        sums.x += light * x! * r;
        sums.y += light * y! * r;
        sums.z += light * z! * r;
        sums.white += light * y!;
      }
      const ours = xyzOfReflectance(spectrum((_, nm) => reflectance(nm)));
      expect(Math.abs(ours.x - sums.x / sums.white)).toBeLessThan(2e-3);
      expect(Math.abs(ours.y - sums.y / sums.white)).toBeLessThan(2e-3);
      expect(Math.abs(ours.z - sums.z / sums.white)).toBeLessThan(2e-3);
    }
  });

  /** A second source of band weights: the npm package spectral.js 3.0.0 (MIT), its 38 bands of 10 nm. */
  test('agrees with the weights another library carries', () => {
    const bump = (nm: number, at: number) => 0.1 + 0.8 * Math.exp(-(((nm - at) / 60) ** 2));
    for (const at of [440, 500, 560, 620, 680]) {
      const theirs = new Color(Array.from({ length: 38 }, (_, i) => bump(380 + 10 * i, at))).XYZ;
      const ours = xyzOfReflectance(spectrum((_, nm) => bump(nm, at)));
      expect(Math.abs(ours.x - theirs[0])).toBeLessThan(2e-3);
      expect(Math.abs(ours.y - theirs[1])).toBeLessThan(2e-3);
      expect(Math.abs(ours.z - theirs[2])).toBeLessThan(2e-3);
    }
  });
});

describe('D65', () => {
  /** CIE 015:2018 table T.3: X 95.047, Y 100, Z 108.883 (ISO/CIE 11664-2). */
  test('has its published white point', () => {
    expect(WHITE_POINT.x).toBeCloseTo(0.95047, 3);
    expect(WHITE_POINT.y).toBeCloseTo(1, 9);
    expect(WHITE_POINT.z).toBeCloseTo(1.08883, 3);
  });

  test('shows a perfect white as #ffffff and a grey without chroma', () => {
    expect(hexOfLab(labOfReflectance(spectrum(() => 1)))).toBe('#ffffff');
    const grey = labOfReflectance(spectrum(() => 0.18));
    expect(grey.l).toBeCloseTo(49.5, 1);
    expect(Math.hypot(grey.a, grey.b)).toBeLessThan(1e-6);
  });

  test('gives every band a weight that is not negative', () => {
    for (const weights of [X_WEIGHTS, Y_WEIGHTS, Z_WEIGHTS]) {
      expect(Math.min(...weights)).toBeGreaterThanOrEqual(0);
    }
  });
});

/** D65 back from our own band weights would be circular: a few of its published values, straight between. */
function daylight(nm: number): number {
  const at = (nm - 360) / 10;
  const low = Math.floor(at);
  const [a, b] = [DAYLIGHT[low] ?? 0, DAYLIGHT[low + 1] ?? DAYLIGHT[low] ?? 0];
  return a + (b - a) * (at - low);
}

/** CIE 015:2018 table T.1, D65 every 10 nm from 360 nm. */
// biome-ignore format: a table reads better in rows.
const DAYLIGHT = [
  46.6383, 52.0891, 49.9755, 54.6482, 82.7549, 91.486, 93.4318, 86.6823, 104.865, 117.008, 117.812, 114.861,
  115.923, 108.811, 109.354, 107.802, 104.79, 107.689, 104.405, 104.046, 100, 96.3342, 95.788, 88.6856,
  90.0062, 89.5991, 87.6987, 83.2886, 83.6992, 80.0268, 80.2146, 82.2778, 78.2842, 69.7213, 71.6091, 74.349,
  61.604, 69.8856, 75.087, 63.5927, 46.4182, 66.8054, 63.3828,
];
