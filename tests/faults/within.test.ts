import { expect, test } from 'vitest';
import { within } from '../../src/discord/within.ts';

test('what never ends is waited for no longer than was said, and what ends is told from it', async () => {
  expect(await within(5, new Promise(() => {}))).toBe(false);
  expect(await within(60_000, Promise.resolve('done'))).toBe(true);
  await expect(within(60_000, Promise.reject(new Error('planted')))).rejects.toThrow('planted');
});
