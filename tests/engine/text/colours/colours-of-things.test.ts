import { expect, test } from 'vitest';
import { apart, colourNamed } from '../../../../src/engine/text/colours/colour-name.ts';

/** One person's idea of another's word, CIEDE2000. */
const NEAR = 20;

test.each([
  // What 222,500 people called what their screens showed (survey of 2010, CC0): a name that our own words lack.
  ['battleship grey', '#6b7c85'],
  ['duck egg blue', '#c3fbf4'],
  ['camo green', '#526525'],
  // Of the open Spanish list.
  ['verde petróleo', '#173f35'],
  // A thing and its hue are believed before a poet's name: from memory, as the things are.
  ['forget me not blue', '#7fa6dc'],
  ['forget-me-nots', '#8fb0e8'],
  ['cotton candy blue', '#6fb8e8'],
  // A word that the open lists name is no slip of another, and what ends a wish turns it.
  ['beech leaf in November, coppery', '#a65e2e'],
  ['beech', '#c8a67a'],
  ['color pan de molde', '#d8a868'],
  ['moss green, not too yellowish', '#5d7348'],
])('%s is about %s', (text, hex) => expect(apart(colourNamed(text)!.hex, hex)).toBeLessThanOrEqual(NEAR));

test.each([
  ['rosa capote', 'rosa'],
  ['azul caballa', 'azul'],
])('in %s the unknown word is no thing of quite another colour than %s', (text, hue) => {
  expect(apart(colourNamed(text)!.hex, colourNamed(hue)!.hex)).toBeLessThan(1);
  expect(colourNamed(text)!.corrected).toBe(false);
});

test('a slip within a name is still put right', () => {
  expect(colourNamed('midnite blue')).toMatchObject({ corrected: true });
  expect(apart(colourNamed('lavendar')!.hex, colourNamed('lavender')!.hex)).toBeLessThan(1);
});
