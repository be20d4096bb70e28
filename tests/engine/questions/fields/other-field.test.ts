import { expect, test } from 'vitest';
import { isSurelyElsewhere } from '../../../../src/engine/questions/fields/other-field.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

test.each([
  'will it be minus forty again this week',
  'va a hacer menos diez mañana',
  'sosa para curar olivas, cuánta por litro',
])('%s: of another field', question => expect(readQuestion(question).outside).toBeDefined());

/* The bound is our own: nothing near soap or lye is sent away by it. */
test('another field stands first only where it is surely meant, and neither lye nor soap is spoken of', () => {
  const read = (elsewhere: number) => ({ ...readQuestion(''), outside: 'other' as const, elsewhere });
  expect(isSurelyElsewhere('what oils in a diffuser for sleep', read(0.91))).toBe(true);
  expect(isSurelyElsewhere('what oils in a diffuser for sleep', read(0.89))).toBe(false);
  expect(isSurelyElsewhere('what oils in a soap for sleep', read(0.99))).toBe(false);
  expect(isSurelyElsewhere('do plants like lye water', read(0.99))).toBe(false);
  expect(isSurelyElsewhere('acne cream', { ...read(0.99), outside: 'medical' })).toBe(false);
});
