import { describe, expect, test } from 'vitest';
import { colourDifference } from '../../src/engine/colour/spectra/cielab.ts';
import { numberRows } from './fixtures/read.ts';

/** G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30 (2005) 21-30, table 1. */
describe('the 34 published CIEDE2000 pairs', () => {
  const pairs = numberRows('ciede2000-sharma.csv');

  test('are all there', () => {
    expect(pairs).toHaveLength(34);
  });

  test.each(pairs)('pair %i', (_pair, l1, a1, b1, l2, a2, b2, published) => {
    const difference = colourDifference({ l: l1!, a: a1!, b: b1! }, { l: l2!, a: a2!, b: b2! });
    expect(Math.abs(difference - published!)).toBeLessThan(1e-4);
  });
});
