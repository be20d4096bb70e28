import { expect, test } from 'vitest';
import { amountAlone } from '../../../../src/engine/text/amounts/amount-alone.ts';
import { withoutAsides } from '../../../../src/engine/text/amounts/amount-asides.ts';
import { readOff } from '../../../../src/engine/text/amounts/filled-to.ts';
import { massesIn } from '../../../../src/engine/text/amounts/masses-in-sentence.ts';
import { restated } from '../../../../src/engine/text/amounts/restated.ts';
import { temperaturesIn } from '../../../../src/engine/text/amounts/temperatures-in-sentence.ts';
import { toldAmount } from '../../../../src/engine/text/amounts/told-amount.ts';
import { portionBeside, sizeBeside, withHundreds } from '../../../../src/engine/text/amounts/told-beside.ts';

/*
 * One amount among the words of whoever tells it (common practice, from memory; sums are arithmetic, a US cup 236.588 ml by NIST SP 811): what is
 * said of it and leaves it as it is, and where two figures or a word beside it may make it another, so that none is taken.
 */

test.each<readonly [text: string, told: unknown]>([
  ["all that's left, about 900 ml", '900 ml'],
  ['los aceites pesan 640 g', '640 g oils'],
  ['oils: 650', '650 g oils'],
  ['700 de aceites', '700 g oils'],
  ['oils: 100', '100 g oils'],
  ['400 g olive plus 200 g coconut', '600 g oils'],
  ['400 g olive plus 200 g coconut, total 600 g', '600 g oils'],
  ['400 g olive plus 200 g coconut, total 700 g', undefined],
  ['400 de unos mas 350 de otros, gramos', '750 gramos oils'],
  ['300 olive plus 200 coconut, so 0.5 kg', '500 g oils'],
  ['1/2 kg olive and 1/2 kg coconut', '1 kg oils'],
  ["half the jug, jug's a litre", 'half of 1 litre'],
  ['media jarra, la jarra es de 2 litros', '1/2 of 2 litros'],
  ["half the jug, the pot's a litre", undefined],
  ['half the jug, it holds a litre', 'half of 1 litre'],
  ['a third of the pot, the pot is 3 litres', 'a third of 3 litres'],
  ['500 g', '500 g'],
  ['two jugs of 500 g', '2 jugs of 500 g'],
  ['500 g without the water', '500 g'],
  ['500 g, half of it is oil', undefined],
  ['420 grams of it, weighed twice', '420 grams'],
  ['my batter came to 2 cups', '2 cups'],
  ['500 g, tallow', undefined],
  ['500 g each', '500 g each'],
  ['pesado no en taza, 500 g', '500 g'],
  ['about 3 lb left over', '3 lb'],
  ['my soap is blue 500 g', undefined],
])('the one amount of “%s” is %s', (text, told) => {
  expect(amountAlone(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['900 ml', '900 ml'],
  ['about 900 ml', '900 ml'],
  ['900 ml, minus 100 ml', undefined],
  ['half of 900 ml', '450 ml'],
  ['900 ml less a third', undefined],
  ['3 jugs of 200 ml', undefined],
  ['between 400 and 500 g', 'between 400 and 500 g'],
  ['400-500 g', '400-500 g'],
  ['de 400 a 500 g', 'de 400 a 500 g'],
  ['400 to 500', undefined],
  ['1 lb, more like 420 g', undefined],
  ['one pound, I spilled 50 g', '403.59 g'],
  ['1.2 kg of oils, I had left out the coconut', undefined],
  ['500 g oils', '500 g oils'],
  ['500 g of oils plus 180 g water', undefined],
  ['500 g imperial', undefined],
  ['2 cups, US cups', '473.18 ml'],
  ['1.050 g', '1050 g'],
  ['1.050 kg', '1050 g'],
  ['500 g took 100 g', undefined],
  ['100 g of 500 g', undefined],
  ['500 g, 300 of it', undefined],
  ['2 batches of 500 g', undefined],
  ['500 g twice', undefined],
  ['500 grams 20', undefined],
  ['twenty', undefined],
  ['a pint jug with 400 ml in it', '400 ml'],
  ['kept 200 ml of the 900 ml', undefined],
  ['1/2 of 1 kg', '500 g'],
  ['500 g, 500 g', '500 g'],
])('“%s” comes to %s', (text, told) => {
  expect(toldAmount(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['one 600 ml beaker, filled to the 400', '400 ml'],
  ['jarra de un litro, hasta la raya de 600', '600 ml'],
  ['600 ml beaker, filled to the 700', '600 ml beaker, filled to the 700'],
  ['a litre jug to 2', 'a litre jug to 2'],
  ['a litre jug to 20', '20 ml'],
  ['a litre jug to 1000', '1000 ml'],
  ['weighed it, 640', '640 g'],
  ['the scale says 640', '640 g'],
  ['la balanza dice 640', '640 g'],
  ['weighed it, 99', 'weighed it, 99'],
  ['weighed it, 100', '100 g'],
  ['weighed 640 and 20', 'weighed 640 and 20'],
  ['weighed 640 mica', 'weighed 640 mica'],
  ['jug is full', 'jug is full'],
  ['weighs 640', 'weighs 640'],
])('“%s” is read off as “%s”', (text, told) => {
  expect(readOff(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['a bit under a pound, call it 420 g', '420 g'],
  ['half a kilo, say 520 g', '520 g'],
  ['a quart, then I dribbled a bit, but call it a quart', 'a quart'],
  ['medio litro escaso, pon 480 ml', '480 ml'],
  ['500 g', '500 g'],
  ['150 g, no, sorry, ml', '150 ml'],
])('“%s” is at last “%s”', (text, told) => {
  expect(restated(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['40 oz total batch w water n lye', ['40 oz batter', null]],
  ['12 bars of 100 g each', ['12 bars of 100 g', null]],
  ['a cup of 250', [null, '250 ml']],
  ['una taza de las de 250', [null, '250 ml']],
  ['600. mls sorry', [null, '600 mls sorry']],
  ['765 oils (g)', [null, '765 g oils']],
  ['6 fl oz. just for the pencil line', [null, '6 fl oz']],
  ['500 g', [null, null]],
])('the size, and the portion, of “%s” are %j', (text, told) => {
  expect([sizeBeside(text), portionBeside(text)].map(one => one ?? null)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['3-400 ml', '300-400 ml'],
  ['4-300 ml', '4-300 ml'],
  ['3-400 lb', '3-400 lb'],
  ['300-400 ml', '300-400 ml'],
  ['3 to 400 g', '300-400 g'],
])('“%s” with both ends written out is “%s”', (text, told) => {
  expect(withHundreds(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['615 g without the jug', '615 g'],
  ['500 g, no more no less', '500 g'],
  ['400 g, water not included', '400 g'],
  ['900 g between the three oils', '900 g of oils'],
  ['900 g oils between the three', '900 g oils'],
  ['650 (grams) oils', '650 grams oils'],
  ['ml: 250', '250 ml'],
  ['250, mls', '250 mls'],
  ['500 g, measured it with water', '500 g'],
  ['150 g, no, sorry, ml', '150 ml'],
  ['500 g net weight', '500 g'],
  ['300 g not ounces', '300 g'],
])('“%s” without what is said of it is “%s”', (text, told) => {
  expect(withoutAsides(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['left: 37,5 g', ['left: ', { is: 'mass', grams: 37.5, written: '37,5 g' }]],
  [
    '4 g (2.8 to 5.2 g)',
    [
      {
        is: 'estimate',
        grams: 4,
        figure: '4',
        lead: '',
        range: { low: 2.8, joint: 'to', high: 5.2 },
        written: '4 g (2.8 to 5.2 g)',
      },
    ],
  ],
  [
    'de 4 g (de 2,8 a 5,2 g)',
    [
      'de ',
      {
        is: 'estimate',
        grams: 4,
        figure: '4',
        lead: 'de ',
        range: { low: 2.8, joint: 'a', high: 5.2 },
        written: '4 g (de 2,8 a 5,2 g)',
      },
    ],
  ],
  ['2.8 to 5.2 g', [{ is: 'range', low: 2.8, joint: 'to', high: 5.2, written: '2.8 to 5.2 g' }]],
  ['about 3 oz (85 g)', ['about 3 oz (85 g)']],
  ['you wrote “5 g” here, 6 g', ['you wrote ', '“5 g”', ' here, ', { is: 'mass', grams: 6, written: '6 g' }]],
  ['1 g/ml', ['1 g/ml']],
  ['none', ['none']],
  [
    '5 g and 6 g',
    [{ is: 'mass', grams: 5, written: '5 g' }, ' and ', { is: 'mass', grams: 6, written: '6 g' }],
  ],
])('the masses of “%s”', (text, told) => {
  expect(massesIn(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['at 38 °C (100 °F)', ['at ', { celsius: '38', fahrenheit: '100' }]],
  ['-5 °C (23 °F) or so', [{ celsius: '-5', fahrenheit: '23' }, ' or so']],
  ['40 to 45 °C (104 to 113 °F)', [{ celsius: '40 to 45', fahrenheit: '104 to 113' }]],
  ['38 °C', ['38 °C']],
  ['none', ['none']],
])('the temperatures of “%s”', (text, told) => {
  expect(temperaturesIn(text)).toEqual(told);
});
