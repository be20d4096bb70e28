import { describe, expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

/** Millilitres or grams of the portion that a question tells; cups and pounds by NIST Handbook 44, appendix C. */
const CUP = 236.588;
const POUND = 453.592;
const OUNCE = 28.3495;
const portionOf = (question: string): number | undefined => {
  const { portion } = readQuestion(question).facts;
  if (portion === undefined) return undefined;
  const { low } = parsePortionRange(portion);
  return low.measure === 'mass' ? low.grams : low.millilitres;
};

describe('a part whose size is told, and pieces whose worth is poured', () => {
  test.each([
    ['titanium dioxide to whiten half my batch. the half is abt 3 cups', 3 * CUP],
    ['la mitad va con ultramar, la mitad son unas 2 tazas', 2 * CUP],
    ["I've ten bars' worth of wet mix, 100 gram apiece, and a tub o' rose clay", 1000],
    ['rose clay for 10 bars, 100 g each', 1000],
  ])('%s', (question, expected) => expect(portionOf(question)).toBeCloseTo(expected, 0));
});

test('a part whose size is told is no part of that size', () => {
  expect(portionOf('titanium dioxide to whiten half my batch. the half is abt 3 cups')).toBeCloseTo(
    3 * CUP,
    0,
  );
  expect(portionOf('la mitad va con ultramar, la mitad son unas 2 tazas')).toBeCloseTo(2 * CUP, 0);
  expect(portionOf('titanium dioxide to whiten half my batch of 3 cups')).toBeCloseTo(1.5 * CUP, 0);
});

describe('amounts that stand behind their names are not of the name that follows', () => {
  test.each([
    ['ultramarine blue batter 500 g', 500, undefined],
    ['titanium dioxide 5 g batter 500 g ok?', 500, '5 g'],
    ['mica 1 tsp batter 2 cups too much?', 2 * CUP, '1 tsp'],
    ['aceite 1 kg arcilla rosa 20 g es mucho', 1000, '20 g'],
    ['arcilla rosa 20 g masa 800 g', 800, '20 g'],
    ['500 g batter 5 g titanium dioxide is it too much', 500, '5 g'],
    ['ultramarine blue 500 g', 500, '500 g'],
  ])('%s', (question, portion, powder) => {
    expect(portionOf(question)).toBeCloseTo(portion, 0);
    expect(readQuestion(question).facts.powder).toBe(powder);
  });

  test('a spoon of oil behind a colour wets it and is no portion', () => {
    expect(portionOf('wet charcoal 1 tsp oil 1 tbsp enough?')).toBeUndefined();
  });
});

describe('amounts are read whole, as the options read them', () => {
  test.each([
    ['red oxide for 1 kg 200 g of batter', 1200],
    ['red oxide for 1lb 8oz of oils', POUND + 8 * OUNCE],
    ['red oxide for 2lb4oz oils', 2 * POUND + 4 * OUNCE],
    ['óxido rojo para un litro y cuarto de mezcla', 1250],
    ['óxido rojo para 3 cuartos de litro de masa', 750],
    ['óxido rojo para kilo y cuarto de aceites', 1250],
    ['red oxide in a cup and three quarters', 1.75 * CUP],
    ['red oxide in 1 & 1/2 cups', 1.5 * CUP],
    ['1½ kg oils, red oxide', 1500],
    ['¾ cup batter red oxide', 0.75 * CUP],
    ['óxido rojo para 1.250 g de aceites', 1250],
    ['red oxide for 1,200 g oils', 1200],
    ['red oxide in a kilo of batter', 1000],
    ['the pot has about 6 cups, gonna take out 1.5 cups for the red oxide', 1.5 * CUP],
    ['tengo 2 litros de masa, aparto medio litro para el óxido rojo', 500],
    ['kilo of oils and red oxide how much', 1000],
    ['500cc de masa con óxido rojo', 500],
    ['350 gms batter red oxide', 350],
    ['840 gramos entre todos los aceites, óxido rojo', 840],
  ])('%s', (question, expected) => expect(portionOf(question)).toBeCloseTo(expected, 0));

  test('both ends of a range stay together', () => {
    const { portion } = readQuestion('óxido rojo para entre 2 y 3 tazas').facts;
    expect(parsePortionRange(portion!).high).toMatchObject({ millilitres: expect.closeTo(3 * CUP, 0) });
  });

  test.each([
    ['what does 1 tsp charcoal in 2 cups look like', '2 cups', '1 tsp'],
    ['1 kg of batter with 5 g charcoal', '1 kg batter', '5 g'],
    ['1/8 tsp charcoal in 2 cups', '2 cups', '1/8 tsp'],
    ['2 T of rose clay in 1 kg of batter', '1 kg batter', '2 tbsp'],
  ])('%s: a portion and a powder are two amounts', (question, portion, powder) =>
    expect(readQuestion(question).facts).toMatchObject({ portion, powder }),
  );

  test('what stands for every pound of oils is a strength', () => {
    const { strength, portion } = readQuestion(
      '2 teaspoons of madder for every pound of oils, i have 40 ounces of oils',
    ).facts;
    expect({ strength, portion }).toEqual({ strength: '2 teaspoons ppo', portion: '40 ounces oils' });
  });
});

test.each([
  ['6 cups of batter, one third gets ultramarine pink', 2 * CUP],
  ['56 oz of oils, half will be coloured with indigo', 28 * OUNCE],
  ['500 g of batter, colour half with indigo', 250],
  ['indigo, 600 g of batter, dose for that half?', 300],
  ['un kilo de masa, la mitad va a ser azul, cuánto ultramar', 500],
  ['1,8 kg de masa, color medio', 1800],
  ['tint 1/4 cup with mica', CUP / 4],
  ['half the usual dose in 2 cups', 2 * CUP],
])('%s: %d', (question, expected) => expect(portionOf(question)).toBeCloseTo(expected, 0));

test.each([
  ['charcoal in 2 cups, almost black', 'full'],
  ['a smidge of charcoal in 2 cups', 'tint'],
  ['azul en 2 tazas, celestito', 'pastel'],
  ['charcoal in 2 cups, not too dark', 'medium'],
  ['charcoal in 2 cups was too dark', undefined],
  ['charcoal in 2 cups, as black as possible', 'full'],
  ['charcoal in 2 cups, half as strong', 'half'],
])('%s: %s', (question, strength) => expect(readQuestion(question).facts.strength).toBe(strength));

test.each([
  ['how would one obtain a periwinkle from ultramarine blue and ultramarine pink', 'periwinkle'],
  ['hex 8a9a5b please with yellow oxide and charcoal', '#8a9a5b'],
  ['how do i hit #3b6e8f', '#3b6e8f'],
])('%s: %s', (question, target) => expect(readQuestion(question).facts.target?.text).toBe(target));
