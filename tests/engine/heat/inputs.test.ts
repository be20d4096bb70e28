import { describe, expect, test } from 'vitest';
import { mouldSection } from '../../../src/engine/heat/mould.ts';
import { type Layer, sectionOf } from '../../../src/engine/heat/section.ts';
import { USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { sugarSpeed } from '../../../src/engine/heat/sugar.ts';
import { outsideTemperature } from '../../../src/engine/heat/surroundings.ts';
import { parseTemperature } from '../../../src/engine/heat/temperature.ts';
import { refusalOf } from '../batch/asked.ts';

describe('sugar speeds batter up', () => {
  // Common practice, numbers estimated: a teaspoon a pound is felt, ten percent is the most.
  test.each([
    [0, 1],
    [0.25, 1.1575],
    [0.5, 1.315],
    [5, 1.45],
    [10, 1.6],
    [30, 1.6],
  ])('%d %% of the oils: %d times', (percent, times) => {
    expect(sugarSpeed(percent)).toBeCloseTo(times, 12);
  });
});

describe('the air about the mould', () => {
  const at = (setting: Partial<typeof USUAL_HEAT>, hours: number) =>
    outsideTemperature({ ...USUAL_HEAT, roomC: 20, ...setting })(hours * 3600);

  test('stays that of the room, wrapped or not', () => {
    for (const process of ['ambient', 'insulated'] as const)
      expect([at({ process }, 0), at({ process }, 10)]).toEqual([20, 20]);
  });

  test('is 5 C in a fridge, and no warmer than the room beside it', () => {
    expect(at({ process: 'fridge' }, 3)).toBe(5);
    expect(at({ process: 'fridge', roomC: 2 }, 3)).toBe(2);
  });

  // 170 F is 76.7 C (common practice); Newton's law of cooling: 1/e of the excess after one time constant.
  test('begins at 77 C in an oven unless said, and has lost all but 1/e of its warmth in an hour and a half', () => {
    expect(at({ process: 'oven' }, 0)).toBe(77);
    expect(at({ process: 'oven', ovenC: 60 }, 0)).toBe(60);
    expect(at({ process: 'oven' }, 1.5)).toBeCloseTo(20 + 57 / Math.E, 9);
  });
});

describe('degrees as they are written', () => {
  test.each([
    ['-5 C', -5],
    ['120 C', 120],
    ['248 F', 120],
    ['23 °F', -5],
    ['212 fahrenheit', 100],
    ['38 celsius', 38],
    ['38 degrees C', 38],
    ['38 º C', 38],
    ['0 C', 0],
  ])('%s', (text, celsius) => {
    expect(parseTemperature(text)).toBeCloseTo(celsius, 9);
  });

  test.each([
    ['-6 C', 'temperature-out-of-range'],
    ['121 C', 'temperature-out-of-range'],
    ['250 F', 'temperature-out-of-range'],
    ['38', 'temperature-without-unit'],
    ['C', 'temperature-without-unit'],
    ['38 C warm', 'temperature-without-unit'],
    ['very 38 C', 'temperature-without-unit'],
    ['., C', 'temperature-without-unit'],
    ['1,2.3 C', 'temperature-without-unit'],
  ])('%s: %s, with what was written', (text, id) => {
    expect(refusalOf(() => parseTemperature(text))).toMatchObject({ id, values: { text } });
  });
});

/** Thermal resistance in series: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 3.1. */
describe('a section by hand', () => {
  const soap: Layer = {
    thickness: 0.04,
    cells: 2,
    substance: { conductivity: 0.4, capacity: 2e6 },
    soap: true,
  };
  const wall: Layer = {
    thickness: 0.01,
    cells: 1,
    substance: { conductivity: 0.1, capacity: 1e6 },
    soap: false,
  };
  const faces = { side: 10, top: 5, bottom: 0 };
  const plane = sectionOf({ shape: 'plane', outward: [soap, wall], upward: [wall, soap], faces });
  const at = (column: number, row: number) => row * plane.columns + column;

  test('is cut into columns and rows, and only soap by soap is soap', () => {
    expect([plane.columns, plane.rows]).toEqual([3, 3]);
    expect([...plane.widths]).toEqual([0.02, 0.02, expect.closeTo(0.01, 12)]);
    expect([...plane.soap]).toEqual([at(0, 1), at(1, 1), at(0, 2), at(1, 2)]);
  });

  test('holds volume and warmth of what each cell is made of', () => {
    expect(plane.volume[at(0, 1)]).toBeCloseTo(0.02 * 0.02, 12);
    expect(plane.capacity[at(0, 1)]).toBeCloseTo(0.02 * 0.02 * 2e6, 6);
    expect(plane.capacity[at(2, 1)]).toBeCloseTo(0.01 * 0.02 * 1e6, 6);
    expect(plane.capacity[at(0, 0)]).toBeCloseTo(0.02 * 0.01 * 1e6, 6);
  });

  test('lets heat through halves of cells in series, and out through the film', () => {
    // Soap to soap: 0.02 m high through 0.01 and 0.01 m of 0.4 W/(m K).
    expect(plane.outwardConductance[at(0, 1)]).toBeCloseTo(0.02 / (0.01 / 0.4 + 0.01 / 0.4), 9);
    // Soap to wall: 0.01 m of soap, 0.005 m of wall.
    expect(plane.outwardConductance[at(1, 1)]).toBeCloseTo(0.02 / (0.01 / 0.4 + 0.005 / 0.1), 9);
    expect(plane.upwardConductance[at(0, 0)]).toBeCloseTo(0.02 / (0.005 / 0.1 + 0.01 / 0.4), 9);
    expect(plane.upwardConductance[at(0, 1)]).toBeCloseTo(0.02 / (0.01 / 0.4 + 0.01 / 0.4), 9);
    // Out of the side, out of the top; nothing through a bottom that is perfectly insulated.
    expect(plane.outsideConductance[at(2, 1)]).toBeCloseTo(0.02 / (0.005 / 0.1 + 1 / 10), 9);
    expect(plane.outsideConductance[at(0, 2)]).toBeCloseTo(0.02 / (0.01 / 0.4 + 1 / 5), 9);
    expect(plane.outsideConductance[at(0, 0)]).toBe(0);
    expect(plane.outwardConductance[at(2, 1)]).toBe(0);
    expect(plane.upwardConductance[at(0, 2)]).toBe(0);
    expect(plane.outsideConductance[at(0, 1)]).toBe(0);
  });

  test('round, by the radian: half the difference of squares, an edge as long as its radius', () => {
    const round = sectionOf({ shape: 'round', outward: [soap, wall], upward: [soap], faces });
    expect(round.volume[1]).toBeCloseTo(((0.04 ** 2 - 0.02 ** 2) / 2) * 0.02, 12);
    expect(round.outwardConductance[0]).toBeCloseTo((0.02 * 0.02) / 0.05, 9);
    expect(round.outsideConductance[2]).toBeCloseTo((0.05 * 0.02) / (0.005 / 0.1 + 1 / 10), 9);
    expect(round.outsideConductance[3]).toBeCloseTo(0.02 ** 2 / 2 / (0.01 / 0.4 + 1 / 5), 9);
  });
});

describe('a filled mould', () => {
  const loaf = mouldSection({ shape: 'loaf', widthCm: 9, heightCm: 7 }, { material: 'wood' }, 2.5e6, 8);
  const of = (all: Float64Array, cells: Iterable<number>) =>
    [...cells].reduce((sum, at) => sum + all[at]!, 0);

  test('is half a slice: 4.5 by 7 cm of soap, a centimetre and a half of wood beside and under it', () => {
    expect(of(loaf.volume, loaf.soap)).toBeCloseTo(0.045 * 0.07, 12);
    expect(of(loaf.capacity, loaf.soap)).toBeCloseTo(0.045 * 0.07 * 2.5e6, 6);
    expect(of(loaf.volume, loaf.volume.keys())).toBeCloseTo(0.06 * 0.085, 12);
    // Cells of about 7.5 mm, and the walls.
    expect([loaf.columns, loaf.rows]).toEqual([6 + 1, 9 + 1]);
  });

  test('a small round one still has five cells to its radius, and half the square of it by the radian', () => {
    const cup = mouldSection(
      { shape: 'round', diameterCm: 5, heightCm: 3 },
      { material: 'silicone' },
      2e6,
      8,
    );
    expect([cup.columns, cup.rows]).toEqual([5 + 1, 5 + 1]);
    expect(of(cup.volume, cup.soap)).toBeCloseTo((0.025 ** 2 / 2) * 0.03, 12);
  });

  test('loses heat by its side, its top and its bottom', () => {
    const [top, bottom] = [
      loaf.outsideConductance[(loaf.rows - 1) * loaf.columns]!,
      loaf.outsideConductance[0]!,
    ];
    // Wood of 0.12 W/(m K) under it (handbook), soap of 0.3 (estimate) above.
    expect(bottom).toBeCloseTo(0.0075 / (0.0075 / 0.12 + 1 / 8), 9);
    expect(top).toBeCloseTo(0.0075 / (0.07 / 9 / 2 / 0.3 + 1 / 8), 9);
  });
});
