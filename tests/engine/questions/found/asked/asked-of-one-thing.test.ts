import { describe, expect, test } from 'vitest';
import { plantAsked } from '../../../../../src/engine/questions/found/asked/plant-asked.ts';
import { staysOut } from '../../../../../src/engine/questions/found/asked/stays-out.ts';
import { carrierAmountAsked } from '../../../../../src/engine/questions/found/carrier-amount.ts';
import { foundIn } from '../../../../../src/engine/questions/found/found-in.ts';
import { jarsTold } from '../../../../../src/engine/questions/found/jars/jars-told.ts';
import { thingsIn } from '../../../../../src/engine/questions/found/names/entities.ts';
import { isToothpick } from '../../../../../src/engine/questions/found/names/toothpick.ts';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

/* What is asked of one powder, plant or thing, in makers' words (from memory; the words are our own). */

function carrierOf(question: string) {
  const { words, found } = foundIn(question);
  const asked = carrierAmountAsked(words, found);
  return asked && [asked.powder, asked.colourant, asked.carrier];
}

describe('how much liquid wets a powder', () => {
  test.each([
    ['how much glycerin for 2 tsp blue mica', ['2 tsp', 'blue mica', 'glycerin']],
    ['cuanta glicerina para 1 cdta de oxido rojo', ['1 cdta', 'oxido rojo', 'glycerin']],
    ['how much water for 1 tsp rose clay', ['1 tsp', 'rose clay', 'water']],
    ['cuanto aceite para 2 cdta de mica azul', ['2 cdta', 'mica azul', 'oil']],
    ['how many tablespoons of oil for 2 tsp blue mica', ['2 tsp', 'blue mica', 'oil']],
    // Any liquid will do.
    ['how much liquid for 2 tsp red oxide', ['2 tsp', 'red oxide', undefined]],
  ])('%s', (question, asked) => {
    expect(carrierOf(question)).toEqual(asked);
  });

  test.each([
    'how much oil for 2 tsp blue mica and 1 tsp red oxide',
    'how much oil for blue mica',
    // The oil or the water may be the recipe's.
    'how much oil for 2 tsp blue mica in my batch',
    'how much oil for 500 g of batter with blue mica',
    'how much lye water for 1 tsp mica',
    'how much glycerin soap for 2 tsp mica',
  ])('is not asked, or not of one powder: %s', question => {
    expect(carrierOf(question)).toBeUndefined();
  });
});

const plantIn = (question: string) => {
  const words = wordsOf(question);
  return plantAsked(words, thingsIn(words));
};

describe('whether a plant colours soap', () => {
  test.each([
    ['lombarda da morado?', 'lombarda'],
    ['onion skins for yellow', 'onion skins'],
    ['rosehip powder?', 'rosehip'],
    ['avocado pits for pink', 'avocado pits'],
    ['is beetroot ok for red', 'beetroot'],
    ['nettle powder', 'nettle'],
    ['i grew a whole bed of weld in the garden this year, will it make yellow', 'weld'],
    [
      'we have lots of madder root drying up in the loft from last summer, will it give red or not',
      'madder root',
    ],
  ])('%s', (question, plant) => {
    expect(plantIn(question)).toBe(plant);
  });

  test.each([
    // A hue that is called after a plant.
    'avocado green',
    'verde oliva',
    'nettle',
    // Sugars are asked about for other reasons too.
    'caramel?',
    'madder and weld for orange?',
    'madder with red oxide for pink?',
    '2 tsp beetroot for pink',
    'can i use onion skins to dye my wool',
    // The hue is told before the plant, and not asked of it.
    'i want yellow soap for the school fair and my neighbour grows a lot of weld by the fence',
  ])('is not asked of one plant alone: %s', question => {
    expect(plantIn(question)).toBeUndefined();
  });
});

const outOf = (question: string) => staysOut(question, readQuestion(question))?.given.item;

describe('what stays out of soap', () => {
  test.each([
    ['can i use crayons in soap', 'crayon'],
    ['crayons', 'crayon'],
    ['how much vermilion for 12 bars', 'vermilion'],
    ['red lead', 'red lead'],
    ['enough food colouring for a batch?', 'food colouring'],
    ['se puede usar pintura acrilica en el jabon', 'pintura acrilica'],
    // Spirits boil off in lye water, and with them the water.
    ['can i use vodka instead of the water', 'vodka'],
    ['is rum ok in soap', 'rum'],
  ])('%s', (question, item) => {
    expect(outOf(question)).toBe(item);
  });

  test.each([
    // What bars smell like is not in them, and candles are no soap.
    'my bars smell like crayons',
    'are crayons ok in candles',
    'soft butter yellow, i have yellow oxide',
    'is red oxide ok in lye',
  ])('is not asked of in “%s”', question => {
    expect(outOf(question)).toBeUndefined();
  });
});

describe('one word for turmeric and for a stick', () => {
  test.each([
    ['con palillo', true],
    ['hago el dibujo: palillo fino', true],
    ['con palillo en polvo', false],
    ['palillo molido para amarillo', false],
  ])('%s: a stick? %s', (text, isStick) => {
    const words = text.split(/[: ]+/u);
    expect(isToothpick(words, { text: 'palillo', from: words.indexOf('palillo') })).toBe(isStick);
  });
});

describe('each jar has its own amount', () => {
  const jars = (text: string) =>
    jarsTold(
      text,
      thingsIn(wordsOf(text)).map(one => one.text),
    );
  test.each([
    [
      '20 g red oxide, 30 g titanium dioxide and 5 g black oxide',
      [
        { item: 'red oxide', amount: '20 g' },
        { item: 'titanium dioxide', amount: '30 g' },
        { item: 'black oxide', amount: '5 g' },
      ],
    ],
    [
      'red oxide 20 g, titanium dioxide 30 g',
      [
        { item: 'red oxide', amount: '20 g' },
        { item: 'titanium dioxide', amount: '30 g' },
      ],
    ],
    [
      'red oxide, titanium dioxide 30 g',
      [{ item: 'red oxide' }, { item: 'titanium dioxide', amount: '30 g' }],
    ],
    // "Lb" and "oz" are of one amount.
    [
      '1 lb 4 oz red oxide, 2 oz mica',
      [
        { item: 'red oxide', amount: '1 lb 4 oz' },
        { item: 'mica', amount: '2 oz' },
      ],
    ],
    // Which of them has it is anybody's guess.
    ['red oxide titanium dioxide 30 g', [{ item: 'red oxide' }, { item: 'titanium dioxide' }]],
  ])('%s', (text, told) => {
    expect(jars(text)).toEqual(told);
  });
});
