import { expect, test } from 'vitest';
import { scenesIn } from '../../../../src/engine/hazards/emergencies/scenes.ts';
import {
  isIdle,
  isOnlyNamed,
  withoutSpokenOf,
} from '../../../../src/engine/hazards/emergencies/spoken-of.ts';
import { tokenise } from '../../../../src/engine/text/tokens.ts';

/** The ideas that a text is read for. */
const ideasIn = (text: string) => scenesIn(text).mentions.map(({ concept }) => concept as string);
const weighed = (...names: string[]) => ({
  id: 'animal-exposed' as const,
  score: 1,
  at: 0,
  names: new Set(names),
});

test.each([
  ['a label with a dog on it', true],
  ['my dog', false],
  ['soap shaped like a dog, for sale at 5', true],
])('an animal of a picture or a price is only named: %s', (text, isNamed) => {
  expect(isOnlyNamed(weighed('animal'), scenesIn(text))).toBe(isNamed);
});
test.each(['caustic', 'raw', 'drool', 'hurts', 'contact', 'unwell', 'help'])(
  'one that is told of with %s is not, whatever the label shows',
  name => {
    expect(isOnlyNamed(weighed('animal', name), scenesIn('a label with a dog on it'))).toBe(false);
  },
);

test.each([
  ['just curious, why is zinc not used with lye', true],
  ['just curious, lye burns my hand', false],
  ['why is zinc not used with lye', false],
  ['just curious, I feel no burn, nothing hurts', true],
])('asked out of curiosity, and nobody hurt: %s', (text, isQuiet) => {
  expect(isIdle(scenesIn(text))).toBe(isQuiet);
});

// Dictation writes the pronoun as it sounds.
test.each([
  ['eye always lose my lye chart', false],
  ['aye usually soap with lye', false],
  ['my eye always burns', true],
  ['the eye made me stop', true],
  ['lye eye always burns', true],
  ['splash eye use water', true],
  ['eye burns', true],
])('%s: an eye is one %s', (text, isEye) => {
  expect(ideasIn(text).includes('eye')).toBe(isEye);
});

test.each([
  ['soap in the shape of an eye', false],
  ['soap in the shape of a big red round eye', false],
  ['soap in the shape of a star. my eye burns', true],
  ['soap in the shape of a star, my eye burns', true],
  ['my eye burns, soap in the shape of a star', true],
])('%s: somebody’s eye %s', (text, isEye) => {
  expect(ideasIn(text).includes('eye')).toBe(isEye);
});

test('what is no eye and no shape stays', () => {
  const tokens = tokenise('eye always use lye');
  const mention = (concept: string, from: number) => ({ concept, from, to: from + 1 });
  const left = withoutSpokenOf([mention('eye', 0), mention('caustic', 3)], tokens);
  expect(left).toEqual([mention('caustic', 3)]);
});
