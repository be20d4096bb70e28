import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  colourDifference,
  labOfHex,
  labOfReflectance,
} from '../../../../src/engine/colour/spectra/cielab.ts';
import {
  reflectanceOfLab,
  smoothestReflectance,
  xyzOfLab,
} from '../../../../src/engine/colour/spectra/reconstruct.ts';

const channel = fc.integer({ min: 30, max: 235 });
const hex = fc
  .tuple(channel, channel, channel)
  .map(rgb => `#${rgb.map(value => value.toString(16).padStart(2, '0')).join('')}`);

describe('a reflectance rebuilt from a colour', () => {
  test.prop([hex])('has that colour and stays between 0 and 1', css => {
    const found = smoothestReflectance(xyzOfLab(labOfHex(css)));
    expect(found).toBeDefined();
    expect(colourDifference(labOfReflectance(found!), labOfHex(css))).toBeLessThan(0.01);
    expect(Math.min(...found!)).toBeGreaterThan(0);
    expect(Math.max(...found!)).toBeLessThan(1);
  });

  test('of grey is flat', () => {
    const found = smoothestReflectance(xyzOfLab(labOfHex('#808080')))!;
    expect(Math.max(...found) - Math.min(...found)).toBeLessThan(0.01);
  });

  test('never goes below the gloss of the surface', () => {
    for (const css of ['#000000', '#121214', '#6a3a17', '#0000ff']) {
      expect(Math.min(...reflectanceOfLab(labOfHex(css), 0.03))).toBeGreaterThanOrEqual(0.03);
    }
  });
});

// CIE 15: L* = 903.3 Y/Yn up to Y/Yn = (6/29)^3, L* of 8; above that 116 (Y/Yn)^(1/3) - 16. Yn is 1 here.
test.each([
  [0, 0],
  [4, 4 / 903.3],
  [7.9, 7.9 / 903.3],
  [8.1, (24.1 / 116) ** 3],
  [50, (66 / 116) ** 3],
])('a grey of L* %s has that luminance', (l, luminance) => {
  expect(xyzOfLab({ l, a: 0, b: 0 }).y / xyzOfLab({ l: 100, a: 0, b: 0 }).y).toBeCloseTo(luminance, 6);
});
