import { expect, test } from 'vitest';
import { readInChat } from '../../read-in-chat.ts';

/* A recipe that says nothing of its superfat leaves it to whoever reckons; only who wants none gets none (common practice: some five percent stay). */

test.each([
  'lye for lard 350 g and sunflower 150 g. no superfat given in the old book, so use what is normal',
  '350 g lard, 150 g sunflower, no superfat stated. lye?',
  '350 g lard, 150 g sunflower, no superfat mentioned, lye?',
  '350 g lard, 150 g sunflower, no superfat written, lye?',
  '350 g lard, 150 g sunflower, without a superfat told, lye?',
  'manteca de cerdo 350 g, girasol 150 g, sin sobreengrasado indicado. ¿sosa?',
  'manteca de cerdo 350 g, girasol 150 g, sin sobreengrasado anotado, ¿sosa?',
])('is left open: %s', message => {
  const { given } = readInChat(message);
  expect(given.superfat).toBeUndefined();
  expect(given.oils).toContain('350 g');
});

test.each([
  '350 g lard, 150 g sunflower, no superfat. lye?',
  '350 g lard, 150 g sunflower, zero superfat, lye?',
  'manteca de cerdo 350 g, girasol 150 g, sin sobreengrasado. ¿sosa?',
])('is none: %s', message => {
  expect(readInChat(message).given.superfat).toBe(0);
});
