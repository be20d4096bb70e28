import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const givenOf = (question: string): Readonly<Record<string, unknown>> => readInChat(question).given;
/** All of it in grams, and the water in it. */
const weights = fc
  .record({ all: fc.integer({ min: 900, max: 3000 }), water: fc.integer({ min: 200, max: 600 }) })
  .map(({ all, water }) => ({ all: String(all), water: String(water) }));

/** A weight that holds the water, told either way; `A` is all of it, `W` the water. Each with its twin. */
const HOLDS_WATER: readonly (readonly [en: string, es: string])[] = [
  [
    'everything in the bucket weighs A g, W g of which is water',
    'todo lo del balde pesa A g, de los cuales W g son agua',
  ],
  ['A g in all with W g water included', 'A g en total con W g de agua incluida'],
  ['A g, of which W g is water', 'A g, de los que W g es de agua, de los cuales agua'],
  ['A g all told, counting W g of water', 'A g en todo, contando W g de agua'],
  ['the pot weighs A g with W g of water in it', 'la olla pesa A g con W g de agua dentro'],
  ['A g altogether with W g of water', 'A g en total con W g de agua'],
  ['everything weighs A g, and the water is W g', 'todo pesa A g, y el agua son W g'],
  ['A g, W g of it water', 'A g, W g de eso agua'],
];

describe('a weight that holds the water is no weight of oils', () => {
  test('however it is told, it is asked', () =>
    fc.assert(
      fc.property(weights, fc.constantFrom(...HOLDS_WATER), ({ all, water }, [en, es]) => {
        const put = (said: string) => said.replaceAll('A g', `${all} g`).replaceAll('W g', `${water} g`);
        for (const told of [
          `${put(en)}; the oils are 70% olive and 30% coconut. Lye at 5%?`,
          `${put(es)}; los aceites son 70% oliva y 30% coco. ¿Cuánta sosa al 5%?`,
        ])
          expect({ told, isAsked: isAskedBack(told) }).toEqual({ told, isAsked: true });
      }),
    ));

  test('oils that are weighed, with their water beside them, are read', () =>
    fc.assert(
      fc.property(weights, ({ all, water }) => {
        for (const told of [
          `${all} g of oils, 70% olive and 30% coconut, and ${water} g water. Lye at 5%?`,
          `${all} g of oils in total, 70% olive 30% coconut, with ${water} g of water. Lye at 5%?`,
          `${all} g de aceites, 70% oliva y 30% coco, y ${water} g de agua. ¿Sosa al 5%?`,
          `La mezcla son ${all} g de aceites: 70% oliva 30% coco; agua ${water} g. ¿Sosa al 5%?`,
        ])
          expect({ told, size: givenOf(told).size }).toEqual({ told, size: `${all} g oils` });
      }),
    ));

  test('the batch that is an oil, with water beside it, is a recipe', () => {
    expect(
      givenOf('The batch is 500 g olive oil and 200 g coconut oil, 230 g water. How much lye?').oils,
    ).toBe('500 g olive oil, 200 g coconut oil');
    expect(givenOf('El lote es de 500 g de oliva y 200 g de coco, agua 230 g. ¿Sosa?').oils).toBe(
      '500 g oliva, 200 g coco',
    );
  });
});

test.each([
  '1400 g, some of which is plain cold water, 70% olive and 30% coconut. Lye at 5%?',
  '1400 g, parte de los cuales es agua fria, 70% oliva y 30% coco. ¿Sosa al 5%?',
  '1400 g, of which roughly 350 went in as water, 70% olive and 30% coconut. Lye at 5%?',
  '1400 g, de los cuales unos 350 los puse de agua, 70% oliva y 30% coco. ¿Sosa al 5%?',
])('however far the water stands behind it: %s', question => expect(isAskedBack(question)).toBe(true));

describe('an opening mark begins a sentence', () => {
  // “Agua 230 g. ¿Sosa?” had been taken for 230 g of sosa that was weighed.
  test.each(['agua 230 g. ¿Sosa al 5%?', 'agua 230 g. ¡Sosa al 5%!', 'agua 230 g… ¿Sosa al 5%?'])(
    '%s',
    end => {
      const read = readInChat(`500 g de oliva, 200 g de coco; ${end}`);
      expect(read.weighed).toBeUndefined();
      expect(read.given).toMatchObject({ superfat: 5, water: '32.86% of oils' });
    },
  );
});

describe('what is left open is asked', () => {
  test.each([
    '800 g olive oil, 200 g coconut oil, lye 60% NaOH and 40% KOH by weight of lye... or was it by what each takes? 5%, how much of each?',
    '800 g de oliva, 200 g de coco, 5% de sobreengrasado, ¿o era 8? ¿Cuánta sosa?',
    '800 g olive oil, 200 g coconut oil, 5% superfat, or was it 8? How much lye?',
    // It had been given twice the lye of what is in the pot.
    'My card reads 400 g olive oil, 200 g coconut oil, which I already doubled. 5% superfat. How much NaOH?',
    'Mi receta: 400 g de oliva, 200 g de coco, que ya dupliqué. ¿Cuánta sosa al 5%?',
    // It had been given the lye of both kilos.
    '2 kilos of olive, one of those I gave away, 500 g coconut, lye at 5%',
    '2 kilos de oliva, uno de esos regalé, 500 g de coco, sosa al 5%',
    'Dos libras de sebo, una de coco y media de oliva, libras de 500 g o de 460, ya ni sé. 5%. ¿Cuánta sosa?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));

  test.each([
    ['500 g olive 200 g coconut 90 g lye, is that right or is it too much?', 90],
    ['500 g de oliva 200 de coco y 90 g de sosa, está bien o es mucho?', 90],
    ['La sosa ya doblada: 500 g de oliva, 200 g de coco, 90 g de sosa, ¿está bien?', 90],
  ])('whether lye is too much leaves nothing open: %s', (question, grams) =>
    expect(readInChat(question).weighed?.grams).toBe(grams),
  );
});

describe('what a recipe makes with its water is no weight of oils', () => {
  // The first had been given the lye of 1.5 kg of oils, at least 38 % too much.
  test.each([
    'My recipe makes A with the water, oils are 60% olive 40% coconut, water is 38% of oils, 5% superfat. Lye?',
    'It comes out at A with the water, oils are 60% olive 40% coconut. Lye at 5%?',
    'A with the water, 60% olive 40% coconut, lye at 5%?',
    'A including water, 60% olive 40% coconut, lye at 5%?',
    'Mi receta rinde A con el agua, los aceites son 60% oliva y 40% coco. ¿Sosa al 5%?',
    'Me salen A con el agua, los aceites son 60% oliva y 40% coco. ¿Sosa al 5%?',
    'A con el agua, 60% oliva y 40% coco, ¿sosa al 5%?',
  ])('%s', told =>
    fc.assert(
      fc.property(weights, ({ all }) => {
        const put = told.replace('A', `${all} g`);
        expect({ put, isAsked: isAskedBack(put) }).toEqual({ put, isAsked: true });
      }),
    ),
  );

  test.each([
    [
      'The recipe makes 1 kg oils with water at 33%, 60% olive 40% coconut. Lye at 5%?',
      '60% olive, 40% coconut',
    ],
    ['My recipe is 1 kg olive with 330 g water, lye at 5%?', '1 kg olive'],
    ['Mi receta es 1 kg de oliva con agua al 33%, ¿sosa al 5%?', '1 kg oliva'],
  ])('oils with their water beside them are: %s', (question, oils) =>
    expect(givenOf(question).oils).toBe(oils),
  );
});
