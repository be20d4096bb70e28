import { beforeAll, describe, expect, test } from 'vitest';
import { amountsIn } from '../../../src/engine/questions/amounts.ts';
import { thingsIn } from '../../../src/engine/questions/entities.ts';
import { factsOf } from '../../../src/engine/questions/facts.ts';
import { fieldOf } from '../../../src/engine/questions/field-of.ts';
import { wordsOf } from '../../../src/engine/questions/words-of.ts';

/** What is said of a text that was learned to be so likely another field's. */
function said(text: string, elsewhere: number, noJob = 0) {
  const words = wordsOf(text);
  const things = thingsIn(words);
  const amounts = amountsIn(words, things);
  const facts = factsOf(text, words, { things, amounts });
  return fieldOf(words, { things, amounts, facts }, { elsewhere, job: 0.5, noJob });
}

// The lists of names are built with the first text.
beforeAll(() => void said('mica', 0), 120_000);

/** Bounds chosen by leaving out one writer at a time; each text is kept at one chance and sent away at the other. */
describe('how likely a text must be of another field to be sent there', () => {
  test.each([
    [
      'beside a word of soap',
      'melt and pour hearts with red oxide in a soap loaf',
      0.29,
      0.31,
      'melt-and-pour',
    ],
    ['with none', 'melt and pour cubes', 0.01, 0.02, 'melt-and-pour'],
    ['of another craft', 'a mica for leather', 0.09, 0.11, 'other'],
    ['near lye', 'what is lye called in esperanto', 0.44, 0.46, 'other'],
    ['where a house is spoken of near lye', 'lye on the tiles of the porch', 0.44, 0.46, 'lye-elsewhere'],
  ])('%s', (_, text, kept, sent, field) => {
    expect(said(text, kept)).toBeUndefined();
    expect(said(text, sent)).toBe(field);
  });

  test('never where somebody may have come near lye, however likely', () => {
    expect(said('lye on the tiles and the dog walks in', 0.99)).toBeUndefined();
    expect(said('lye in my eye at school', 0.99)).toBeUndefined();
  });
});

test('what is surely none of our jobs is sent away, but where the judge of the field is sure that it is ours', () => {
  const text = 'my glitter sinks in the table before it sets';
  expect(said(text, 0.02, 0.98)).toBe('other');
  expect(said(text, 0.02, 0.96)).toBeUndefined();
  expect(said(text, 0.009, 0.98)).toBeUndefined();
  expect(said('my red oxide sinks in the soap before trace', 0.02, 0.98)).toBeUndefined();
});
