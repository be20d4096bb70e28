import { describe, expect, test } from 'vitest';
import { type Drive, march, stableStep } from '../../../src/engine/heat/conduction.ts';
import { GEL_ONSET_SPREAD, gelKind, gelOnset, ONSET_OFFSETS } from '../../../src/engine/heat/gel.ts';
import { growthTable, rateFrom, rateTable, SAPONIFICATION } from '../../../src/engine/heat/kinetics.ts';
import type { Section } from '../../../src/engine/heat/section.ts';

/** Cells in a row (or two rows), each with its links outward, upward and outside. */
const cells = (
  columns: number,
  {
    capacity,
    outward,
    upward,
    outside,
    soap,
  }: { [Key in 'capacity' | 'outward' | 'upward' | 'outside']: number[] } & { soap?: number[] },
): Section =>
  ({
    columns,
    capacity: Float64Array.from(capacity),
    outwardConductance: Float64Array.from(outward),
    upwardConductance: Float64Array.from(upward),
    outsideConductance: Float64Array.from(outside),
    soap: soap ?? capacity.map((_, at) => at),
  }) as unknown as Section;
const still = (more: Partial<Drive> = {}): Drive => ({
  outsideC: () => 20,
  startC: 20,
  seconds: 100,
  ...more,
});

describe('heat in cells', () => {
  // Newton's law of cooling: 1 J/K that loses 0.01 W/K cools by e in 100 s.
  test('one cell cools to what is outside, and what it lost is what is gone', () => {
    const one = cells(1, { capacity: [1], outward: [0], upward: [0], outside: [0.01] });
    expect(stableStep(one)).toBeCloseTo(0.9 * 100, 9);
    // In steps of one second, since a small cell beside it steps so.
    const fine = cells(1, { capacity: [1, 1e-2], outward: [0, 0], upward: [0, 0], outside: [0.01, 0.01] });
    const { temperature, seconds, lost, stored, given } = march(fine, still({ startC: 80 }));
    expect(seconds).toBeCloseTo(100, 9);
    expect(temperature[0]! - 20).toBeCloseTo(60 / Math.E, 0);
    expect(given).toBe(0);
    expect(lost + stored).toBeCloseTo(0, 9);
    expect(stored).toBeLessThan(0);
  });
  test('two cells come to their mean, weighed by what they hold, however they are joined', () => {
    for (const [columns, outward, upward] of [
      [2, [0.05, 0], [0, 0]],
      [1, [0, 0], [0.05, 0]],
    ] as const) {
      const two = cells(columns, {
        capacity: [1, 3],
        outward: [...outward],
        upward: [...upward],
        outside: [0, 0],
        soap: [1],
      });
      const { temperature, lost } = march(two, still({ startC: 60, wallStartC: 20, seconds: 500 }));
      // A quarter of it began at 20, three quarters at 60.
      expect(temperature[0]).toBeCloseTo(50, 3);
      expect(temperature[1]).toBeCloseTo(50, 3);
      expect(lost).toBe(0);
      // Half the distance is left after ln 2 of C1 C2 / ((C1 + C2) g).
      const half = march(two, still({ startC: 60, wallStartC: 20, seconds: (Math.LN2 * 0.75) / 0.05 }));
      expect(half.temperature[1]! - half.temperature[0]!).toBeGreaterThan(8);
      expect(half.temperature[1]! - half.temperature[0]!).toBeLessThan(22);
    }
  });
  test('a step is stable for the cell that is soonest empty, with all its links', () => {
    const three = cells(3, {
      capacity: [1, 1, 1],
      outward: [0.1, 0.2, 0],
      upward: [0, 0, 0],
      outside: [0, 0, 0.5],
    });
    // The last leaves by 0.2 and 0.5, the middle one by 0.1 and 0.2.
    expect(stableStep(three)).toBeCloseTo(0.9 / 0.7, 9);
    const stacked = cells(1, { capacity: [1, 2], outward: [0, 0], upward: [0.3, 0], outside: [0, 0] });
    expect(stableStep(stacked)).toBeCloseTo(0.9 / 0.3, 9);
  });
  test('heat that is given warms, and stands in the books', () => {
    const one = cells(1, { capacity: [2], outward: [0], upward: [0], outside: [0.1] });
    const { temperature, given, lost, stored } = march(
      one,
      still({
        react: (_, heat, step) => {
          heat[0]! += 5 * step;
          return true;
        },
      }),
    );
    expect(given).toBeCloseTo(500, 9);
    expect(given).toBeCloseTo(lost + stored, 9);
    // In the end as much is lost as given: 5 W over 0.1 W/K.
    expect(temperature[0]).toBeCloseTo(20 + 50, 0);
  });
  test('what is outside may change, and who watches may stop it', () => {
    const one = cells(1, { capacity: [1], outward: [0], upward: [0], outside: [0.1] });
    const warm = march(one, still({ outsideC: seconds => (seconds < 50 ? 20 : 90), seconds: 300 }));
    expect(warm.temperature[0]).toBeCloseTo(90, 3);
    const times: number[] = [];
    const stopped = march(one, still({ watch: (_, seconds) => times.push(seconds) < 3, seconds: 300 }));
    expect(times).toHaveLength(3);
    expect(stopped.seconds).toBeCloseTo(3 * stableStep(one), 9);
    const idle = march(one, still({ react: () => false, seconds: 300 }));
    expect(idle.seconds).toBeCloseTo(stableStep(one), 9);
    // The last step is as short as is left.
    expect(march(one, still({ seconds: 10 })).seconds).toBe(10);
  });
});

describe('how fast batter saponifies', () => {
  const table = rateTable(SAPONIFICATION, 1.2);
  // Arrhenius: exp(Ea/R (1/T1 - 1/T2)), Ea 50 kJ/mol, R 8.314 J/(mol K).
  test('is as told at 40 C, and grows with warmth by Arrhenius', () => {
    expect(rateFrom(table, 40) * 3600).toBeCloseTo(1.2, 6);
    const times = Math.exp((50 / 8.314462618e-3) * (1 / 313.15 - 1 / 333.15));
    expect((rateFrom(table, 60) * 3600) / 1.2).toBeCloseTo(times, 6);
    expect(times).toBeGreaterThan(3);
  });
  test('between the rows of the table it is between them, beyond it the last', () => {
    const [low, high] = [rateFrom(table, 50), rateFrom(table, 50.5)];
    expect(rateFrom(table, 50.25)).toBeCloseTo((low + high) / 2, 12);
    expect(rateFrom(table, 50.1)).toBeCloseTo(low + 0.2 * (high - low), 12);
    expect(rateFrom(table, -5)).toBe(table[0]);
    expect(rateFrom(table, 0)).toBe(table[0]);
    expect(rateFrom(table, 150)).toBe(table.at(-1));
    expect(rateFrom(table, 200)).toBe(table.at(-1));
    expect(rateFrom(table, Number.NaN)).toBe(table[0]);
    expect(table).toHaveLength(301);
  });
  // The logistic curve: odds grow by e to the rate times time.
  test('what has converted goes on by its odds', () => {
    expect(growthTable(Float64Array.of(0, Math.LN2), 2)).toEqual(Float64Array.of(1, 4));
  });
});

describe('gel', () => {
  // Common practice: wet soap gels at 62 C, a dry one at 88.
  test.each([
    [10, 88],
    [20, 88],
    [22.5, 83],
    [25, 78],
    [30, 71],
    [32.5, 68.5],
    [40, 62],
    [60, 62],
  ])('with %d %% of water sets in at %d C', (water, celsius) => {
    expect(gelOnset(water)).toBeCloseTo(celsius, 9);
  });
  test('the onset lies within six degrees either way, likeliest in the middle', () => {
    expect(ONSET_OFFSETS.reduce((sum, [, weight]) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(ONSET_OFFSETS.reduce((sum, [offset, weight]) => sum + offset * weight, 0)).toBeCloseTo(0, 12);
    for (const [offset] of ONSET_OFFSETS) expect(Math.abs(offset)).toBeLessThan(GEL_ONSET_SPREAD);
    const [most] = ONSET_OFFSETS.toSorted((a, b) => b[1] - a[1]);
    expect(most).toEqual([0, 1 / 4]);
    expect(ONSET_OFFSETS[0]).toEqual([-4.5, 1 / 16]);
  });
  test.each([
    [0.019, 'none'],
    [0.02, 'partial'],
    [0.899, 'partial'],
    [0.9, 'full'],
  ])('of a share of %d is %s', (share, kind) => {
    expect(gelKind(share)).toBe(kind);
  });
});
