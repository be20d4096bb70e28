import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import '../../../seed.ts';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { wordsIn } from '../../../../src/words/index.ts';
import { refused } from '../../quantities/refused.ts';

const grams = fc.integer({ min: 100, max: 1900 });
/** Said of an amount, these leave it as it is; common practice (no source). */
const asides = [
  'without the jug',
  'sin la olla',
  'tared',
  'not sure',
  "haven't measured",
  "I'd say",
  'no estoy segura',
  'yo diría',
  'not the water',
  'sin contar la sosa',
  'before the lye and water',
  'grams not ounces',
  'no más',
];

describe('what is said of an amount', () => {
  property.prop([grams, fc.constantFrom(...asides)])('leaves it as it is', (value, aside) => {
    expect(parsePortionRange(`${value} g, ${aside}`).low).toMatchObject({ grams: value });
  });

  property.prop([grams, fc.constantFrom('no, sorry, ml', 'perdón, mililitros', 'I mean ml')])(
    'puts its unit right',
    (value, right) => {
      expect(parsePortionRange(`${value} g ${right}`).low).toMatchObject({ millilitres: value });
    },
  );

  property.prop([
    grams,
    fc.constantFrom('oils only', 'of oils, that is all the fats', 'de aceites, sin el agua'),
  ])('tells a bare figure of oils in grams', (value, of) => {
    expect(parsePortionRange(`${value}, ${of}`).low).toEqual({ measure: 'mass', grams: value, of: 'oils' });
  });

  test.each([
    ["just looked, jug's at the 450 mark, ml that is, not the oz side", { millilitres: 450 }],
    ['un cuarto litro escaso, 230 ml diría', { millilitres: 230 }],
    ['la mitad del litro que hice', { millilitres: 500 }],
    ['una jarra de las de litro, hasta la mitad', { millilitres: 500 }],
    ['a litre jug with 600 ml in it', { millilitres: 600 }],
    ['650 (grams) oils only', { grams: 650, of: 'oils' }],
    ['1 kg oils, sorry 1.2 kg, forgot the coconut', { grams: 1200, of: 'oils' }],
    ['900 g between the three oils', { grams: 900, of: 'oils' }],
    ['400 de oliva y 200 de coco en gramos, o sea 600', { grams: 600, of: 'oils' }],
    ['a quart, then I dribbled a bit but call it a quart', { millilitres: expect.closeTo(946.35, 1) }],
  ])('%s', (text, portion) => expect(parsePortionRange(text).low).toMatchObject(portion));

  test.each([
    ['an oil that was left out', '1 kg oils, forgot the coconut'],
    ['oils that come to something else', '400 de oliva y 200 de coco en gramos, o sea 700'],
    ['parts for each of the colours', '900 g between the three colours'],
    ['a pint of another country at another place', '2 pints, imperial ones'],
  ])('%s is asked', (_, text) => expect(refused(() => parsePortionRange(text))).toMatch(/^amount-/u));

  // The imperial pint: Weights and Measures Act 1985, Schedule 1.
  test('a British pint is one', () =>
    expect(parsePortionRange('a British pint').low).toMatchObject({
      millilitres: expect.closeTo(568.26, 1),
    }));

  test('a soup spoon is a tablespoon, fluid ounces are poured', () => {
    // NIST Handbook 44, Appendix C.
    expect(readPowder('una cuchara sopera de arcilla rosa').low).toMatchObject({
      millilitres: expect.closeTo(14.79, 2),
    });
    expect(parsePortionRange('oh maybe 6 fl oz. just for the pencil line').low).toMatchObject({
      millilitres: expect.closeTo(177.44, 1),
    });
  });
});

describe('a jug that was weighed with what is in it', () => {
  const texts = [
    '615 g with the jug',
    '700 gramos con la jarra y todo',
    '500 g jug and all',
    '480 g, la jarra incluida',
  ];
  test.each(texts)('%s is asked about', text =>
    expect(refused(() => parsePortionRange(text))).toBe('amount-gross'),
  );

  test('in one sentence of either language', () => {
    const said = (language: 'en' | 'es') => {
      try {
        return parsePortionRange('615 g with the jug');
      } catch (refusal) {
        return refusal instanceof Refusal ? wordsIn(language).refusal(refusal) : refusal;
      }
    };
    expect(said('en')).toBe(
      '“615 g with the jug” weighs what it stands in too. What does the batter weigh alone? Put the empty one on the scale and take that off.',
    );
    expect(said('es')).toBe(
      '“615 g with the jug” pesa también el recipiente. ¿Cuánto pesa la masa sola? Pon el recipiente vacío en la báscula y réstalo.',
    );
  });

  test.each([
    ['300 ml measured with the jug', { millilitres: 300 }],
    ['500 g of batter with a jug to pour', { grams: 500 }],
  ])('%s is as it was measured', (text, portion) =>
    expect(parsePortionRange(text).low).toMatchObject(portion),
  );
});

describe('sizes and pastes', () => {
  // Cubic centimetres are millilitres: SI Brochure, 9th edition, table 8.
  property.prop([
    fc.integer({ min: 15, max: 30 }),
    fc.integer({ min: 6, max: 10 }),
    fc.integer({ min: 5, max: 9 }),
  ])(
    'a mould by its sides holds what is told beside them, where that is about what they come to',
    (length, width, height) => {
      const level = length * width * height;
      const told = (millilitres: number) => `${length} x ${width} x ${height} cm, so ${millilitres} ml`;
      expect(parseSize(told(level - 50))).toMatchObject({ mould: { eachMillilitres: level - 50 } });
      expect(refused(() => parseSize(told(2 * level)))).toBe('mould-sides');
    },
  );

  test.each([
    ['Took two litres of water to the top, I filled it in the bath to see', 2000],
    ['holds half a gallon of water to the brim', 1892.7],
  ])('%s', (text, millilitres) =>
    expect(parseSize(text)).toMatchObject({ millilitres: expect.closeTo(millilitres, 0) }),
  );

  test.each([
    ['1:5, polvo y aceite de coco', 5],
    ['same of powder and oil, olive', 1],
    ['I mixed it one to one with glycerin', 1],
    ['10 gramos de mica, 25 de aceite de girasol', 2.5],
  ])('%s', (text, ratio) => {
    const read = parsePremix(text);
    const got =
      read.by === 'spoons'
        ? read.carrierMillilitres / read.powderMillilitres
        : read.by === 'percent'
          ? (1 - read.pigmentShare) / read.pigmentShare
          : Number.NaN;
    expect(got).toBeCloseTo(ratio, 6);
  });
});
