import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { oilsOfBatch } from '../../../../src/engine/batch/oils/lists/bare-grams.ts';
import { inPlainWords } from '../../../../src/engine/questions/options/in-plain-words.ts';
import { portionsIn } from '../portions-in.ts';

/* How makers tell amounts, common practice (no source); the sums are arithmetic. */

test.each([
  ['entre todos los aceites suman 900', '900 g oils'],
  ['the oils come to 1134g and there is 430 of water but never mind that', '1134 g oils'],
  ['1200 gramos sumando los tres aceites', '1200 gramos oils'],
  ['three quarters of a kilo between olive and coconut, nothing else', '3/4 kilo oils'],
  ['kilo of oils dead on', '1 kilo oils'],
  ['oils 450 + 250 + 100, you add it up', '800 g oils'],
  ['800 gr de aceite y 200 de manteca, o sea mil', '1000 g oils'],
  ['3 small yoghurt tubs of 125 g each ja, all the same colour', '3 x 125 g batter'],
  ["half. there's 1.2 kg batter in the bucket", '1/2 of 1.2 kg batter'],
])('a portion “%s” is %s', (text, plain) => {
  expect(inPlainWords('portion', text)).toEqual({ text: plain });
});

test.each([
  ["50 oz batch, that's everything, lye water included", '50 oz batter'],
  ['12 huequitos de 70 ml c/u', '12 x 70 ml'],
  ['6 x 100g', '6 bars of 100 g'],
  ['Total batter 1350 g including lye solution', '1350 g batter'],
])('a size “%s” is %s', (text, plain) => {
  expect(inPlainWords('size', text)).toEqual({ text: plain });
});

test.each([
  ['karité 60 g, almendras 90 g, oliva 450 g', '60 g karite, 90 g aceite de almendras dulces, 450 g oliva'],
  ['all olive. 1000', '1000 olive'],
  ['all olive, its a castile', '100% olive'],
  ['98 g lye 220 water, avocado 100 olive 400 coconut 200', '100 g avocado, 400 g olive, 200 g coconut'],
  ['Rice bran 140. Shea 60 g. The rest of the kilo was olive', '140 g rice bran, 60 g shea, 800 g olive'],
  [
    'mitad aceite de oliva y lo demas coco y aguacate por partes iguales',
    '50% aceite de oliva, 25% coco, 25% aguacate',
  ],
  ['coco 300, y de girasol lo mismo, y 100 de aguacate', '300 g coco, 300 g girasol, 100 g aguacate'],
  [
    '400 g dripping, then olive oil the same again, and coconut half that',
    '400 g dripping, 400 g olive oil, 200 g coconut',
  ],
  [
    '45% rapeseed, coconut 25, sheabutter 20 and castor the last 10',
    '45% rapeseed, 25% coconut, 20% shea butter, 10% castor',
  ],
  [
    '350g rapeseed 250 coconut 100g shea n 40 castor',
    '350 g rapeseed, 250 g coconut, 100 g shea, 40 g castor',
  ],
  [
    '300g rice bran, 100 g cocoa butter (the deodorised one, from work), 350g olive',
    '300 g rice bran, 100 g cocoa butter, 350 g olive',
  ],
])('oils “%s” are %s', (text, plain) => {
  expect(inPlainWords('oils', text)).toEqual({ text: plain });
  expect(() => oilsOfBatch(plain)).not.toThrow();
});

describe('what may change a number is not passed by', () => {
  test.each([
    ['500g oils then lye n that on top, or 600', ['500 g oils', '600 g oils']],
    ['800 gr of oil and 200 of lard in it', ['800 gr oils', '1000 g oils', '200 gr oils']],
  ])('a portion “%s” may be %s', (text, unclear) => {
    expect(inPlainWords('portion', text)).toEqual({ unclear });
  });

  test.each([
    '400 g olive, 200 g coconut, superfat 8',
    '400 g olive, 200 g coconut with KOH, thanks love',
    '400 g olive, 200 g coconut, spilt 50 of it on the floor',
    '400 g olive, 200 g coconut and honey 10 g love',
    'all olive but the rest',
    'olive 400 (the oleic one), coconut 200',
  ])('oils “%s” are read by nobody', text => {
    expect(inPlainWords('oils', text)).toBeUndefined();
  });

  test('a sum that its weights do not come to is asked about', () => {
    const told = inPlainWords('portion', '800 gr of oil and 200 of lard in it, so 1100');
    expect(told).toEqual({ unclear: expect.arrayContaining(['800 gr oils', '1000 g oils', '1100 gr oils']) });
  });

  test('what an option’s own reader takes or refuses for what it says stays its own', () => {
    expect(inPlainWords('portion', '2 cups')).toBeUndefined();
    expect(inPlainWords('portion', '615 g with the jug')).toBeUndefined();
    expect(inPlainWords('portion', 'two cps')).toBeUndefined();
    expect(inPlainWords('oils', 'olive 50%, coconut 30%')).toBeUndefined();
  });
});

const word = fc.constantFrom(
  ...'then later maybe about nearly well good love please today house mixed red white big plain here there kitchen market bit luego quizas como bueno hoy casa mercado blanco grande poco nada'.split(
    ' ',
  ),
);
const words = fc.array(word, { minLength: 1, maxLength: 4 }).map(all => all.join(' '));
const figure = fc.integer({ min: 21, max: 95 }).map(tens => tens * 10);

describe('every figure has its place', () => {
  property.prop([figure, figure, words, words])(
    'a second figure beside a portion is asked about or refused',
    (one, other, between, behind) => {
      fc.pre(one !== other);
      const told = inPlainWords('portion', `${one} g of batter ${between} ${other} ${behind}`);
      expect(told === undefined || 'unclear' in told).toBe(true);
    },
  );

  property.prop([figure, figure, figure, words])(
    'a third figure beside two oils is never left out',
    (olive, coconut, third, said) => {
      fc.pre(![olive, coconut, olive + coconut].includes(third));
      const told = inPlainWords('oils', `${olive} g olive, ${coconut} g coconut, ${said} ${third}`);
      const text = told && 'text' in told ? told.text : String(third);
      expect(text).toContain(String(third));
    },
  );

  property.prop([figure, figure, fc.constantFrom('lard', 'coconut', 'tallow', 'shea butter')])(
    'in a plain question a fat behind a weight of oils is asked about',
    (oils, fat, name) => {
      const { unclear } = portionsIn(`how much ultramarine for ${oils} g of oil and ${fat} of ${name}?`);
      expect(unclear).toEqual([`${oils} g oils`, `${oils + fat} g oils`]);
    },
  );
});
