import { converter } from 'culori';
import { describe, expect, test } from 'vitest';
import {
  TABLE_FIRST_NANOMETRE,
  TABLE_STEP_NANOMETRES,
  X_BAR,
  Y_BAR,
  Z_BAR,
} from '../../src/engine/colour/spectra/cie-tables.ts';
import {
  colourDifference,
  type Lab,
  labOfReflectance,
  labResponse,
} from '../../src/engine/colour/spectra/cielab.ts';
import { BAND_COUNT, type Spectrum } from '../../src/engine/colour/spectra/spectrum.ts';
import { fixture, numberRows } from './fixtures/read.ts';

/**
 * The chart of 24 patches. Spectra: N. Ohta, The Basis of Color Reproduction Engineering (1997), every second of its
 * 5 nm steps from 380 to 730 nm, as the repository colour-science/colour carries them (BSD-3-Clause). Lab: the chart's
 * published values for charts made before November 2014, under D50, as the same repository carries them. They were
 * measured on other charts, so patches differ by what charts differ.
 */
const rows = (name: string) =>
  fixture(name)
    .trim()
    .split('\n')
    .slice(1)
    .map(line => line.split(','))
    .map(([patch = '', ...values]) => ({ patch, values: values.map(Number) }));

const patches = rows('chart-24-spectra.csv').map(({ patch, values }) => ({
  patch,
  reflectance: Float64Array.from(values),
}));
const published = new Map(
  rows('chart-24-lab-d50.csv').map(({ patch, values: [l = 0, a = 0, b = 0] }) => [patch, { l, a, b }]),
);

/** CIE 015:2018, relative power of illuminant D50 every 5 nm from 360 nm. */
const d50 = numberRows('d50-5nm.csv').map(([, power = 0]) => power);

/** CIELAB under D50, reflectance straight between bands. */
function labD50(reflectance: Spectrum): Lab {
  const xyz = (of: (nanometres: number) => number) =>
    [X_BAR, Y_BAR, Z_BAR].map(bar =>
      bar.reduce(
        (sum, response, row) =>
          sum + response * d50[row]! * of(TABLE_FIRST_NANOMETRE + TABLE_STEP_NANOMETRES * row),
        0,
      ),
    );
  const seen = xyz(nanometres => {
    const at = Math.min(Math.max((nanometres - 380) / 10, 0), BAND_COUNT - 1);
    const band = Math.min(Math.floor(at), BAND_COUNT - 2);
    return reflectance[band]! * (1 - (at - band)) + reflectance[band + 1]! * (at - band);
  });
  const white = xyz(() => 1);
  const [fx = 0, fy = 0, fz = 0] = seen.map((value, at) => labResponse(value / white[at]!));
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

const toD65 = converter('lab65');
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('the chart of 24 patches', () => {
  test('has every patch in both sources', () => {
    expect(patches.map(({ patch }) => patch)).toEqual([...published.keys()]);
    expect(patches).toHaveLength(24);
    for (const { reflectance } of patches) expect(reflectance).toHaveLength(BAND_COUNT);
  });

  test.each(patches)(
    'patch $patch: its spectrum gives its published Lab under D50',
    ({ patch, reflectance }) => {
      expect(colourDifference(labD50(reflectance), published.get(patch)!)).toBeLessThan(2);
    },
  );

  test('on average the spectra give the published Lab under D50 to within what one chart differs from another', () => {
    const off = patches.map(({ patch, reflectance }) =>
      colourDifference(labD50(reflectance), published.get(patch)!),
    );
    expect(mean(off)).toBeLessThan(1.1);
  });

  /** Adapted to D65 by the Bradford transform of CSS Color Module 4, as culori has it: one more, small error. */
  test('under our own D65 the spectra give the published Lab adapted to it', () => {
    const off = patches.map(({ patch, reflectance }) => {
      const { l, a, b } = toD65({ mode: 'lab', ...published.get(patch)! });
      return colourDifference(labOfReflectance(reflectance), { l, a, b });
    });
    expect(mean(off)).toBeLessThan(1.25);
    expect(Math.max(...off)).toBeLessThan(2.5);
  });
});
