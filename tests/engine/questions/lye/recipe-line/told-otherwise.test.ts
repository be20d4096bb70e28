import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { isAskedBack, readInChat } from '../../read-in-chat.ts';

function oilsOf(question: string): Record<string, number> {
  const { given } = readInChat(question);
  const { shares, totalGrams = 0 } = parseOils(given.oils ?? '');
  const grams = given.size === undefined ? totalGrams : gramsOf(given.size);
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * grams)]));
}

describe('the same recipe, told otherwise', () => {
  test.each([
    ['lard, olive, coconut = 400, 300, 250. lye?', { lard: 400, olive: 300, coconut: 250 }],
    ['oliva, coco, ricino: 550, 200, 45. cuánta sosa', { olive: 550, coconut: 200, castor: 45 }],
    ['lye for two to one lard and coconut, 900 g', { lard: 600, coconut: 300 }],
    ['quiero dos a uno oliva y coco, 600 gramos entre los dos. soda?', { olive: 400, coconut: 200 }],
    ['40 oliva 30 coco 30 palma en porcentaje sobre 1 kg, sosa?', { olive: 400, coconut: 300, palm: 300 }],
    ['manteca 500 de chancho y coco 250 g, sosa?', { lard: 500, coconut: 250 }],
    ['double up 300 g olive and 150 g coconut, how much lye?', { olive: 600, coconut: 300 }],
    ['no hang on not 350 lard, 250. so 250 lard 400 olive. how much lye', { lard: 250, olive: 400 }],
    [
      "Last week's was 500 olive 200 coconut and it were lovely. This week I want 600 lard, 200 coconut. how much lye",
      { lard: 600, coconut: 200 },
    ],
    ['mezcla: 550 g sebo y 250 g coco, cuánta sosa', { tallow: 550, coconut: 250 }],
    ['I mixed 250 g rice bran oil and 250 g coconut oil. How much lye?', { 'rice-bran': 250, coconut: 250 }],
    [
      'En Quito hace frío: 300 g de manteca de cacao y 500 g de oliva. ¿Sosa?',
      { 'cocoa-butter': 300, olive: 500 },
    ],
    ['500 g coco, 500 g oliva, leche de cabra 200 g con 4 % de grasa. ¿Sosa?', { coconut: 500, olive: 500 }],
  ])('%s', (question, oils) => expect(oilsOf(question)).toEqual(oils));

  test.each([
    ['3 libras de sebo y 1 libra de coco, 8% de exceso de grasa, sosa?', 8],
    ['coconut 800 g castor 80 g superfat 20 yes twenty. lye?', 20],
    ['olive 500 g coconut 200 g, 5 pc superfat, lye?', 5],
    ['coconut 800 castor 80 superfat 20. lye?', 20],
    ['500 olive 200 coconut, caustic at 6 please', 6],
    ['500 g de coco y 500 g de oliva, quiero 5%. ¿Cuánta sosa?', 5],
  ])('its superfat: %s', (question, superfat) => expect(readInChat(question).given.superfat).toBe(superfat));

  const grams = fc.integer({ min: 60, max: 900 });
  test('a list of names and a list of weights are each other’s, in any number', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom('olive', 'coconut', 'lard', 'castor', 'palm'), {
          minLength: 2,
          maxLength: 5,
        }),
        fc.array(grams, { minLength: 5, maxLength: 5 }),
        fc.constantFrom(' = ', ': ', ' = '),
        (names, weights, sign) => {
          const told = weights.slice(0, names.length);
          fc.pre(Math.abs(told.reduce((sum, one) => sum + one, 0) - 100) > 2);
          expect(oilsOf(`${names.join(', ')}${sign}${told.join(', ')}. how much lye?`)).toEqual(
            Object.fromEntries(names.map((name, at) => [name, told[at]])),
          );
          // One weight too few or too many is nobody's.
          expect(isAskedBack(`${names.join(', ')}${sign}${told.slice(1).join(', ')}. how much lye?`)).toBe(
            true,
          );
        },
      ),
    );
  });
  test('figures that make a hundred are percents', () => {
    expect(readInChat('lard, olive = 60, 40. 1 kg oils. lye?').given).toMatchObject({
      oils: '60% lard, 40% olive',
    });
  });
});

describe('scents take no lye and are told as passed by', () => {
  test.each([
    [
      '900 g olive oil, 100 g castor oil, 15 g lavender essential oil at trace. How much lye?',
      'lavender essential oil',
    ],
    [
      '900 g de oliva y 100 g de ricino, y 30 g de esencia de lavanda en la traza. ¿Cuánta soda?',
      'esencia de lavanda',
    ],
    ['oliva 900 g, ricino 100 g. cuánta sosa. Ah y lavanda unas 15 gotas', 'lavanda'],
  ])('%s', (question, scent) => {
    expect(oilsOf(question)).toEqual({ olive: 900, castor: 100 });
    expect(readInChat(question).left.join(' ')).toContain(scent);
  });
  test('an oil is none, and so much of a scent is asked for', () => {
    expect(isAskedBack('700 g olive, 300 g coconut oil fragrance 10 g, how much lye?')).toBe(true);
    expect(isAskedBack('700 g oliva, 300 g aceite esencial, cuánta sosa?')).toBe(true);
    expect(isAskedBack('700 g olive, 20 oz lavender essential oil, how much lye?')).toBe(true);
    expect(oilsOf('700 g olive, 300 g coconut, some fragrance. how much lye?')).toEqual({
      olive: 700,
      coconut: 300,
    });
  });
});

describe('what can keep no oil out is passed by; what may is asked for, in the same place', () => {
  const HARMLESS = [
    "I'm panicking",
    'off the butcher next door',
    'posh one for the wedding favours',
    'it is setting up already',
    'copied from a book',
    'I am going to make',
    'honestly',
    'my hands are allergic',
  ];
  const INNOCENT = [
    'hágame',
    'confírmeme',
    'estoy contenta',
    'me costó caro',
    'ya está espesando',
    'quiero hacer',
  ];
  test.each([...HARMLESS, ...INNOCENT])('%s', said => {
    expect(isAskedBack(`500 g lard and 250 g coconut, ${said}, how much lye?`)).toBe(false);
  });
  test.each([
    'that my mate has',
    'which is in the shed',
    'that I sold',
    'que tiene mi tía',
    'que vendí ayer',
    'that went down the drain',
    'if I find it',
    'still unopened',
    'one day',
    'going to my sister',
    'que regalé',
  ])('%s', said => {
    expect(isAskedBack(`500 g lard and 250 g coconut ${said}, how much lye?`)).toBe(true);
  });
});
