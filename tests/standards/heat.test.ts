import { describe, expect, test } from 'vitest';
import { KOH_MOLAR_MASS } from '../../src/engine/batch/oils/fatty-acids.ts';
import { march } from '../../src/engine/heat/conduction.ts';
import { SAPONIFICATION_HEAT } from '../../src/engine/heat/kinetics.ts';
import { type Layer, type Section, sectionOf } from '../../src/engine/heat/section.ts';

/** Fresh soap: 0.3 W/(m K), 1030 kg/m3 at 2600 J/(kg K). */
const CONDUCTIVITY = 0.3;
const CAPACITY = 1030 * 2600;
const layer = (thickness: number, cells: number): Layer => ({
  thickness,
  cells,
  substance: { conductivity: CONDUCTIVITY, capacity: CAPACITY },
  soap: true,
});

/** A slab: heat leaves by the side alone. */
const slab = (half: number, transfer: number, cells: number): Section =>
  sectionOf({
    shape: 'plane',
    outward: [layer(half, cells)],
    upward: [layer(0.01, 1)],
    faces: { side: transfer, top: 0, bottom: 0 },
  });

/** A quarter of a square bar: the bottom is its middle. */
const square = (half: number, transfer: number, cells: number): Section =>
  sectionOf({
    shape: 'plane',
    outward: [layer(half, cells)],
    upward: [layer(half, cells)],
    faces: { side: transfer, top: transfer, bottom: 0 },
  });

/** (T - outside) / (start - outside) in the innermost cell. */
function middleOf(section: Section, seconds: number): number {
  const { temperature } = march(section, { startC: 60, outsideC: () => 20, seconds });
  return (temperature[0]! - 20) / 40;
}

/**
 * The exact middle of a convectively cooled slab: sum of C_n exp(-z_n^2 Fo) cos(z_n x), z tan z = Bi.
 * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.5; Carslaw and Jaeger, 3.11.
 */
function seriesAt(half: number, transfer: number, seconds: number, place: number): number {
  const biot = (transfer * half) / CONDUCTIVITY;
  const fourier = (CONDUCTIVITY / CAPACITY) * (seconds / half ** 2);
  let sum = 0;
  for (let n = 0; n < 30; n += 1) {
    const root = rootOf(biot, n);
    const weight = (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root));
    sum += weight * Math.exp(-(root ** 2) * fourier) * Math.cos(root * place);
  }
  return sum;
}

/** The n-th root of z tan z = Bi, between n pi and (n + 1/2) pi, by halving. */
function rootOf(biot: number, n: number): number {
  let [low, high] = [n * Math.PI, (n + 0.5) * Math.PI];
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (middle * Math.sin(middle) < biot * Math.cos(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Printed examples: half-thickness, transfer, hours, middle by the one-term series (Fo above 0.2). */
const SLABS = [
  [0.035, 8, 4, 0.441],
  [0.035, 8, 12, 0.0691],
  [0.035, 1.5, 12, 0.5348],
  [0.045, 8, 6, 0.4145],
] as const;

describe('the solver against the analytic series of the heat equation', () => {
  test.for(SLABS)(
    'the series itself gives the printed middle: %d m, %d W/(m2 K), %d h',
    ([half, h, hours, middle]) => {
      expect(seriesAt(half, h, hours * 3600, 0)).toBeCloseTo(middle, 3);
    },
  );

  test.for(SLABS)('a slab cools as the series says: %d m, %d W/(m2 K), %d h', ([half, h, hours]) => {
    const cells = 12;
    const exact = seriesAt(half, h, hours * 3600, 0.5 / cells);
    expect(Math.abs(middleOf(slab(half, h, cells), hours * 3600) - exact)).toBeLessThan(0.004);
  });

  test.for(SLABS)('a square bar is the product of two slabs: %d m, %d W/(m2 K), %d h', ([half, h, hours]) => {
    const cells = 12;
    const exact = seriesAt(half, h, hours * 3600, 0.5 / cells) ** 2;
    expect(Math.abs(middleOf(square(half, h, cells), hours * 3600) - exact)).toBeLessThan(0.004);
  });

  test('halving the cells quarters the error: the scheme is of second order', () => {
    const error = (cells: number) =>
      Math.abs(middleOf(slab(0.035, 8, cells), 3 * 3600) - seriesAt(0.035, 8, 3 * 3600, 0.5 / cells));
    const ratio = error(6) / error(12);
    expect(ratio).toBeGreaterThan(3);
    expect(ratio).toBeLessThan(5);
  });

  test('a long cylinder cools as the first term of its series says, at Bi 1 and Fo 0.5', () => {
    // Incropera and DeWitt, Table 5.1: Bi 1: z1 1.2558, C1 1.2071.
    const radius = 0.04;
    const section = sectionOf({
      shape: 'round',
      outward: [layer(radius, 16)],
      upward: [layer(0.01, 1)],
      faces: { side: CONDUCTIVITY / radius, top: 0, bottom: 0 },
    });
    const seconds = (0.5 * radius ** 2 * CAPACITY) / CONDUCTIVITY;
    expect(middleOf(section, seconds)).toBeCloseTo(1.2071 * Math.exp(-(1.2558 ** 2) * 0.5), 2);
  });
});

describe('energy is kept', () => {
  test('heat given is heat stored plus heat lost, to rounding', () => {
    const section = square(0.04, 8, 8);
    const react = (_: Float64Array, heat: Float64Array, step: number) => {
      for (const at of section.soap) heat[at]! += 2000 * section.volume[at]! * step;
      return true;
    };
    const { given, lost, stored } = march(section, {
      startC: 40,
      outsideC: () => 20,
      seconds: 6 * 3600,
      react,
    });
    expect(given).toBeGreaterThan(0);
    expect(lost).toBeGreaterThan(0);
    expect(Math.abs(given - lost - stored) / given).toBeLessThan(1e-9);
  });

  test('a bar that loses nothing stores everything and stays even', () => {
    const section = square(0.04, 0, 6);
    const react = (_: Float64Array, heat: Float64Array, step: number) => {
      for (const at of section.soap) heat[at]! += 500 * section.volume[at]! * step;
      return true;
    };
    const { temperature, lost } = march(section, { startC: 30, outsideC: () => 20, seconds: 3600, react });
    expect(lost).toBe(0);
    const rise = (500 * 3600) / CAPACITY;
    for (const here of temperature) expect(here).toBeCloseTo(30 + rise, 9);
  });
});

test('heat of saponification spans 176 J/g of oil at SV 190 (ester hydrolysis) to 272 J/g of tallow at SV 196 (textbooks)', () => {
  const perGram = (saponification: number, kilojoules: number) =>
    (saponification / KOH_MOLAR_MASS) * kilojoules;
  expect(perGram(190, SAPONIFICATION_HEAT.low)).toBeCloseTo(176, 0);
  expect(Math.abs(perGram(196, SAPONIFICATION_HEAT.high) - 272)).toBeLessThan(2);
});
