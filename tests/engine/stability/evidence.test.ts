import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { posterior, type ResultCounts } from '../../../src/engine/stability/evidence.ts';

const none: ResultCounts = { held: 0, shifted: 0, faded: 0, bled: 0 };
const count = fc.integer({ min: 0, max: 200 });
const counts = fc.record({ held: count, shifted: count, faded: count, bled: count });
const behaviour = fc.constantFrom(
  'stable',
  'conditional',
  'shifts',
  'destroyed',
  'bleeds',
  'unknown' as const,
);
const confidence = fc.constantFrom('high', 'medium', 'low' as const);

describe('what a group has seen is weighed against the chemistry', () => {
  test('without reports the chemistry speaks alone', () => {
    expect(posterior({ behaviour: 'stable', confidence: 'high' }, none)).toMatchObject({
      mean: 0.95,
      reports: 0,
    });
    expect(posterior({ behaviour: 'destroyed', confidence: 'high' }, none).mean).toBeCloseTo(0.04, 12);
    expect(posterior({ behaviour: 'unknown', confidence: 'high' }, none).mean).toBe(0.5);
  });

  test('a worked example: mostly holds (0.7, worth 5 reports), 6 held, 1 faded, 1 bled', () => {
    // Beta(0.7 * 5 + 6, 0.3 * 5 + 2) = Beta(9.5, 3.5): mean 9.5 / 13.
    const told = posterior(
      { behaviour: 'conditional', confidence: 'medium' },
      { held: 6, shifted: 0, faded: 1, bled: 1 },
    );
    expect(told.mean).toBeCloseTo(9.5 / 13, 12);
    expect(told.reports).toBe(8);
  });

  test('many reports overrule the chemistry', () => {
    const told = posterior({ behaviour: 'destroyed', confidence: 'high' }, { ...none, held: 200 });
    expect(told.low).toBeGreaterThan(0.9);
  });

  property.prop([behaviour, confidence, counts])(
    'the mean lies in the interval, the interval in 0 to 1',
    (b, c, seen) => {
      const { low, mean, high } = posterior({ behaviour: b, confidence: c }, seen);
      expect(0 <= low && low <= high && high <= 1).toBe(true);
      expect(mean).toBeGreaterThan(0);
      expect(mean).toBeLessThan(1);
    },
  );

  property.prop([behaviour, confidence, counts])('one more bar that held never lowers it', (b, c, seen) => {
    const before = posterior({ behaviour: b, confidence: c }, seen);
    const after = posterior({ behaviour: b, confidence: c }, { ...seen, held: seen.held + 1 });
    expect(after.mean).toBeGreaterThan(before.mean);
    expect(after.low).toBeGreaterThanOrEqual(before.low);
  });

  property.prop([confidence, fc.integer({ min: 1, max: 30 })])(
    'more of the same narrows the interval',
    (c, n) => {
      const few = posterior(
        { behaviour: 'conditional', confidence: c },
        { ...none, held: 7 * n, faded: 3 * n },
      );
      const many = posterior(
        { behaviour: 'conditional', confidence: c },
        { ...none, held: 28 * n, faded: 12 * n },
      );
      expect(many.high - many.low).toBeLessThan(few.high - few.low);
    },
  );
});
