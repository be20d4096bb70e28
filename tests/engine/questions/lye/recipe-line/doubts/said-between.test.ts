import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAskedBack, refusalOf } from '../../../read-in-chat.ts';

const grams = fc.integer({ min: 60, max: 900 });

describe('an oil that is taken back between two weights is asked for, never counted', () => {
  // Coconut counted beside the palm that took its place is 82 % more lye than the pot takes.
  test.each([
    'scratch that, palm it is.',
    'sorry, palm,',
    'i mean palm,',
    'strike that, palm.',
    'palm,',
    'no, not coconut, palm.',
  ])('and another is named, which is weighed only then: %s', words =>
    fc.assert(
      fc.property(grams, grams, (a, b) => {
        expect(isAskedBack(`${a} g coconut, ${words} ${a} g palm, ${b} g olive, lye at 5%`)).toBe(true);
      }),
      { numRuns: 10 },
    ),
  );

  test.each([
    'perdón, palma,',
    'no, palma,',
    'uy, palma,',
    'mejor dicho palma,',
    'corrijo: palma.',
    'palma,',
  ])('y se nombra otro, que solo entonces se pesa: %s', words =>
    fc.assert(
      fc.property(grams, grams, (a, b) => {
        expect(isAskedBack(`${a} g coco, ${words} ${a} g palma y ${b} g oliva. Sosa 5%`)).toBe(true);
      }),
      { numRuns: 10 },
    ),
  );

  test.each([
    ['delete that,', '300 g castor, ', '300 g coconut'],
    ['Nope.', '300 g castor. ', '300 g coconut'],
    ['ugh, wrong line,', '300 g castor, ', '300 g coconut'],
    ['wrong one:', '300 g castor; ', '300 g coconut'],
    ['bórralo,', '300 g ricino, ', '300 g coco'],
    ['Táchalo.', '300 g ricino. ', '300 g coco'],
    ['uy,', '300 g ricino, ', '300 g coco'],
    ['olvida eso,', '300 g ricino, ', '300 g coco'],
    ['or rather', '300 g castor, ', '300 g coconut'],
    ['that is', '300 g castor, ', '300 g coconut'],
    ['o sea', '300 g ricino, ', '300 g coco'],
    ['es decir,', '300 g ricino, ', '300 g coco'],
    // A word that nobody here knows, by itself between two weights.
    ['zwoosh,', '300 g castor, ', '300 g coconut'],
  ])('by a word: %s', (words, before, after) =>
    expect(isAskedBack(`${before}${words} ${after}, 600 g lard, NaOH 5%`)).toBe(true),
  );

  test.each([
    '~~300 g castor~~ 300 g coconut 600 g olive naoh 5%',
    '300 g r̶i̶c̶i̶n̶o̶, 300 g coco, 600 g oliva, sosa 5%',
  ])('or by a line through it: %s', question => expect(isAskedBack(question)).toBe(true));
});

test('the last one in the middle of a list is not the last of all: no button leaves the castor out', () => {
  const { id, values } = refusalOf(
    '16 oz olive oil, 8 oz coconut oil, 8 oz palm, scratch that last one, 4 oz castor. NaOH 5% sf?',
  );
  expect({ id, values }).toMatchObject({ id: 'oils-left-out', values: { names: [] } });
  expect(values).not.toHaveProperty('ways');
});

describe('a mark that the message gives a meaning to may keep an oil out', () => {
  test.each([
    'sosa para 900 g de oliva [100 g de coco] sobreengrasado 5%, lo de los corchetes va en otra olla',
    'olive oil 600 g, coconut oil 200 g, (cocoa butter 100 g), superfat 5, NaOH? brackets = what my sister puts in hers',
    '600 g olive, 200 g coconut*, lye at 5%. the one with the asterisk I add another day',
    'oliva 600 g, coco 200 g, sosa 5%. lo subrayado es de mi prima',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
});

describe('what is no taking back leaves a recipe read', () => {
  test.each([
    '600 g oliva, jeje, 300 g coco y 100 g ricino, sosa al 5%',
    '600 g olive, 300 g coconut, 100 g castor, phew, lye at 5%',
    'evening all, a plain one today. 600 g olive, 300 g coconut, 100 g castor, lye at 5%',
    '~ 600 g olive ~ 300 g coconut ~ 100 g castor, lye at 5%',
  ])('%s', question => expect(isAskedBack(question)).toBe(false));

  test('an oil that another clause took out is asked for once, and here not at all', () =>
    expect(isAskedBack('oliva 400 g, y palma 200 g, no, tacha la palma, es sebo los 200. Cuánta sosa')).toBe(
      false,
    ));
});

test.each([
  'media libra de coco, una libra de oliva. sosa al 5 en gramos porfa',
  '8 oz coconut, 1 lb olive. lye at 5 in grams please',
])('a superfat is no weight of lye where its grams are asked for: %s', question =>
  expect(isAskedBack(question)).toBe(false),
);
