import { expect, test } from 'vitest';
import { Refusal, refuse, unlessRefused } from '../../src/engine/refusal.ts';

test('an expected "no" has its id and its values, and is told from a fault', () => {
  const no = () => refuse('amount-without-unit', { text: '5' });
  expect(no).toThrow(Refusal);
  expect(no).toThrow(
    expect.objectContaining({
      name: 'Refusal',
      id: 'amount-without-unit',
      message: 'amount-without-unit',
      values: { text: '5' },
    }),
  );
});

test('a reader that refuses gives nothing, one that fails fails', () => {
  expect(unlessRefused(() => 5)).toBe(5);
  expect(unlessRefused(() => refuse('amount-without-unit', { text: '5' }))).toBeUndefined();
  expect(() =>
    unlessRefused(() => {
      throw new RangeError('broken');
    }),
  ).toThrow(RangeError);
});
