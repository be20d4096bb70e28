import { expect, test } from 'vitest';
import { signsIn } from '../../../src/engine/flaws/signs.ts';

test('a bar that crumbles is told of in Spanish too', () => {
  for (const text of ['las esquinas se desmigan', 'el borde se desmigaja'])
    expect(signsIn(text)).toBeGreaterThan(0);
  expect(signsIn('las esquinas')).toBe(0);
});

test.each([
  // Seen and felt on the bar; where it lies is no sign of its own group but seen too.
  ['white powder on top that wipes off', 3],
  ['blue specks all over and a greasy feel', 3],
  // Said to be missing: still a question about a flaw.
  ['no blue specks', 1],
  // In the pot, and by its name.
  ['la masa se me cortó en la olla', 2],
  ['es una sosa ceniza blanca que se quita', 1],
  // What was done tells causes apart, and is no complaint.
  ['I forced gel and used dry ultramarine', 0],
  ['how much blue for two cups', 0],
])('%s: %d signs of a flaw', (words, signs) => {
  expect(signsIn(words)).toBe(signs);
});

test('a metal powder that went into soap is one, whatever else is told; a metal pan is none', () => {
  expect(signsIn('I put copper powder in my soap and it cracked, white powder on top that wipes off')).toBe(
    1,
  );
  expect(signsIn('I put copper powder in my soap')).toBe(1);
  expect(signsIn('I melted the oils in a copper pan')).toBe(0);
});
