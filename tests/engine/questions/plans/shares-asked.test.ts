import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import * as enough from '../../../../src/engine/questions/plans/enough-asked.ts';
import * as asked from '../../../../src/engine/questions/plans/shares-asked.ts';

const { BAR_G } = asked;
const sharesAsked = (question: string) => asked.sharesAsked(wordsOf(question));
const enoughAsked = (question: string) => enough.enoughAsked(wordsOf(question));
const barsAsked = (question: string) => enough.barsAsked(wordsOf(question));

describe('a batch that is shared among colours', () => {
  test('in so many equal parts', () => {
    expect(sharesAsked('650g oils 3 colours how much each')).toEqual({
      grams: 650,
      of: 'oils',
      parts: 3,
      colours: [],
    });
  });

  test('by the colours that are named', () => {
    expect(sharesAsked('tengo 3 kg de aceite, el swirl blanco con azul, cuanto de cada')).toEqual({
      grams: 3000,
      of: 'oils',
      parts: 2,
      colours: ['dióxido de titanio', 'azul ultramar'],
    });
  });

  test('by hues and colourants in the order in which they are named', () => {
    const told = { grams: 1000, of: 'oils', parts: 3 };
    expect(
      sharesAsked('3 colour drop swirl: charcoal, white, and ultramarine. batch is 1000 g oils, equal parts'),
    ).toEqual({ ...told, colours: ['charcoal', 'titanium dioxide', 'ultramarine'] });
    expect(
      sharesAsked('Planning a loaf, 1000g oils, three colours even: white, ultramarine blue and charcoal'),
    ).toEqual({ ...told, colours: ['titanium dioxide', 'ultramarine blue', 'charcoal'] });
    expect(sharesAsked('1 kg de aceites en partes iguales: óxido rojo, carbón y blanco')).toEqual({
      ...told,
      colours: ['oxido rojo', 'carbon', 'dióxido de titanio'],
    });
  });

  test('by hues, beside what is owned of them', () => {
    expect(
      sharesAsked(
        'White, green and a red drop swirl, 800g oils. How much of each? Got titanium dioxide, chrome green and red oxide in',
      )?.colours,
    ).toHaveLength(3);
    expect(
      sharesAsked(
        'cuatro capas de 1 kilo de masa: cacao, arcilla rosa, blanca y arcilla verde. cuánto a cada una',
      )?.parts,
    ).toBe(4);
  });

  test('by the shares that are told, the rest included', () => {
    expect(sharesAsked('650 g oils half white rest blue how much each')).toEqual({
      grams: 650,
      of: 'oils',
      parts: 2,
      colours: ['titanium dioxide', 'ultramarine blue'],
      shares: [0.5, 0.5],
    });
    const told = sharesAsked('800 de aceites: 50% blanco, 30 rojo y 20 negro, cuánto de cada uno');
    expect(told).toMatchObject({ grams: 800, of: 'oils', parts: 3 });
    expect(told?.shares).toEqual([0.5, 0.3, 0.2].map(share => expect.closeTo(share, 9)));
  });

  test('what is owned gives the hue that it is of', () => {
    expect(
      sharesAsked('70% white 30% black swirl, 600 g oils, using titanium and charcoal, how much of each')
        ?.colours,
    ).toEqual(['titanium', 'charcoal']);
    expect(
      sharesAsked('1 kg de masa: 60% blanco con titanio y 40% negro con carbón, cuánto de cada uno')?.colours,
    ).toEqual(['titanio', 'carbon']);
    // Red gives neither white nor black.
    expect(
      sharesAsked('70% white 30% black swirl, 600 g oils, using titanium and red oxide, how much of each'),
    ).toBeUndefined();
    expect(
      sharesAsked('70% white 30% black swirl, 600 g oils, using red oxide, how much of each'),
    ).toBeUndefined();
  });

  test('so many bars whose weight nobody tells are taken for usual ones', () => {
    expect(sharesAsked('equal parts ultramarine blue and charcoal for 10 bars')).toEqual({
      grams: 10 * BAR_G,
      of: 'batter',
      parts: 2,
      colours: ['ultramarine blue', 'charcoal'],
      bars: 10,
    });
  });

  test('what is no colour among equal parts is told apart; fats are a recipe', () => {
    expect(
      asked.amongNoColours(wordsOf('equal parts: lavender oil, nutmeg and red oxide for 500 g oils')),
    ).toEqual({
      colourants: ['red oxide'],
      others: ['lavender oil', 'nutmeg'],
      whole: '500 g oils',
    });
    for (const none of [
      'equal parts olive oil, coconut oil and charcoal',
      'equal parts charcoal and red oxide for 500 g oils',
      'equal parts asbestos and charcoal for 500 g oils',
      'equal parts sugar and salt',
      '1500 de aceites en partes iguales: blanco, verde y albero',
    ])
      expect(asked.amongNoColours(wordsOf(none))).toBeUndefined();
  });

  test.each([
    'spirulina AND french green clay, how much of each for 16 oz oils, same pot',
    'charcoal n tio2 for wan swirl, 300 g batter each, how much ah each one',
    'carbón y blanco, 300 g de masa cada uno, cuánto de cada',
    'black loaf with one thin gold line, 40 oz oils, how much of each powder. i got charcoal and a gold mica',
    '1000 g olive oil, three colours even: white, blue and black',
    '500 g oils half olive rest coconut and blue, how much each',
    '650 g oils half white a third blue how much each',
    '650 g oils half white rest blue how much lye',
    '500 g olive 200 g coconut lye for each',
    '3 colours how much each',
    '20 g mica 3 colours each',
    '900 g oils 9 colours how much each',
    'how much for each',
  ])('“%s” is no share of one weight', question => {
    expect(sharesAsked(question)).toBeUndefined();
  });
});

describe('a jar beside a batch', () => {
  test('the weight that stands by the name is the jar’s', () => {
    const told = { colourant: 'blue mica', has: 120, grams: 1500, of: 'batter' };
    expect(
      enoughAsked('Hi, I have 120 g of blue mica in a tub, batch is 1.5 kg, is that enough for all of it'),
    ).toEqual(told);
    expect(enoughAsked('batch is 1.5 kg is 120 g of blue mica enough')).toEqual(told);
  });

  test.each(['is 120 g of blue mica enough', 'is 130 g lye enough for 1 kg olive', 'enough already'])(
    '“%s” is not reckoned',
    question => {
      expect(enoughAsked(question)).toBeUndefined();
    },
  );
});

describe('bars whose weight nobody tells', () => {
  test('are counted, and are taken for a usual bar of 100 to 120 g (common practice, no source)', () => {
    expect(barsAsked('how much mica for 12 bars')).toEqual({ colourant: 'mica', bars: 12 });
    expect(BAR_G).toBeGreaterThanOrEqual(100);
    expect(BAR_G).toBeLessThanOrEqual(120);
  });

  test.each(['how much mica for 10 bars of 4 oz', 'my 12 bars went brown', 'how much lye for 12 bars'])(
    '“%s” tells more, or asks for something else',
    question => {
      expect(barsAsked(question)).toBeUndefined();
    },
  );
});
