import { fc, test as property } from '@fast-check/vitest';
import { expect, test } from 'vitest';
import { quantile } from '../../../src/photo/pixels/quantile.ts';

property.prop([
  fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1, maxLength: 200 }),
  fc.double({ min: 0, max: 1, noNaN: true }),
])('a quantile is the value that sorting would bring to its place', (values, share) => {
  const before = [...values];
  const sorted = values.toSorted((a, b) => a - b);
  const place = Math.min(sorted.length - 1, Math.floor(share * sorted.length));
  expect(quantile(values, share)).toEqual(sorted[place]);
  expect(values).toEqual(before);
});

test('nothing has no middle', () => {
  expect(quantile([], 0.5)).toBe(0);
});
