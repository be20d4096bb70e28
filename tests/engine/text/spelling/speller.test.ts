import { expect, test } from 'vitest';
import { speller } from '../../../../src/engine/text/spelling/speller.ts';

const LONG = 'colourfastnesscolours';
const spelt = speller(['vanilla', 'batter', 'butter', 'ash', LONG], new Set(['battel']));

test.each([
  ['a letter left out', 'vanila', 'vanilla'],
  ['another first letter', 'fanilla', 'vanilla'],
  ['of two as near, the first by the alphabet', 'bttter', 'batter'],
  ['twenty letters', LONG.slice(0, 20), LONG],
])('%s: “%s” is “%s”', (_, word, meant) => {
  expect(spelt(word)).toBe(meant);
});

test.each([
  ['a word that is left alone', 'battel'],
  ['one too short for a slip', 'asn'],
  ['one of more than twenty letters', `${LONG}s`],
  ['one that is near nothing', 'lye'],
])('%s is meant for nothing', (_, word) => {
  expect(spelt(word)).toBeUndefined();
});
