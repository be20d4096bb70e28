import { describe, expect, test } from 'vitest';
import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { settled } from '../../../../src/engine/questions/settled.ts';

/*
 * What an amount is of, as a careful reader takes it (common practice): cups and litres are of batter, spoons and a few grams beside a name
 * of powder, a kilo beside an oil of that oil; a bare weight is left to be asked.
 */

const told = (text: string): string => {
  const typed = wordsOf(text);
  const things = thingsIn(typed);
  return amountsIn(settled(typed, things), things)
    .map(({ text: amount, of, perPound }) => `${amount}: ${of}${perPound ? ' ppo' : ''}`)
    .join(', ');
};

describe('what an amount is of', () => {
  test.each([
    ['500 g batter', '500 g: batter'],
    ['500 g of soap', '500 g: batter'],
    ['batter 500 g', '500 g: batter'],
    ['rose clay 5 g', '5 g: unsaid'],
    ['batter 500 g, rose clay 5 g', '500 g: batter, 5 g: powder'],
    ['oils 500 g, rose clay 5 g', '500 g: oils, 5 g: powder'],
    ['oil 1 tbsp, mica 1 tsp', '1 tbsp: oil, 1 tsp: powder'],
    ['500 g oils', '500 g: oils'],
    ['500 g of oil', '500 g: oils'],
    ['2 lb oils', '2 lb: oils'],
    ['2 lb o, barely pink', '2 lb: oils'],
    ['a 1.5 kg batch (oils)', '1.5 kg: oils'],
    ['900 g loaf, oils that is', '900 g: oils'],
    ['my oils are 640 g', '640 g: oils'],
    ['los aceites pesan 640 g', '640 g: oils'],
    ["oils are 100 and that's 900 g", '900 g: oils'],
    ['oils total 900 g', '900 g: oils'],
    ['2 cups', '2 cups: batter'],
    ['2 cups of batter', '2 cups: batter'],
    ['2 cups in olive oil', '2 cups: batter'],
    ['2 cups olive oil', '2 cups: oil'],
    ['500 g olive oil', '500 g: oil'],
    ['300 g de aceite de coco', '300 g: oil'],
    ['1 tsp mica', '1 tsp: powder'],
    ['1 tsp mica per pound', '1 tsp: powder ppo'],
    ['1 tsp ppo', '1 tsp: powder ppo'],
    ['1 tsp of madder for every pound', '1 tsp: powder ppo'],
    ['2 teaspoons of madder for every pound of oils', '2 teaspoons: powder ppo'],
    ['2 g per 400 g oils', '2 g: powder, 400 g: oils'],
    ['4 gramos por kilo de masa', '4 gramos: powder'],
    ['4 g per kilo', '4 g: powder'],
    ['1 g per 2 cups', '1 g: powder, 2 cups: batter'],
    ['5 g mica', '5 g: powder'],
    ['60 g mica', '60 g: powder'],
    ['61 g mica', '61 g: unsaid'],
    ['5 g of the mica', '5 g: powder'],
    ['5 g of cocoa', '5 g: powder'],
    ['1 tbsp cocoa', '1 tbsp: powder'],
    ['8 bars', ''],
    ['12 bars of 100 g', '12 x 100 g: batter'],
    ['1 tsp in 12 bars', '1 tsp: powder'],
    ['mica for 10 bars', ''],
    ['30 ml batter', '30 ml: batter'],
    ['1 litre', '1 litre: batter'],
    ['1 l of batter', '1 l: batter'],
    ['4 tbsp of turmeric', '4 tbsp: powder'],
    ['4 tbsp', '4 tbsp: powder'],
    ['1 lb of oils, tallow mostly', '1 lb: oils'],
    ['1 lb tallow', '1 lb: oil'],
    ['500 g palm and 5 g mica', '500 g: oil, 5 g: powder'],
    ['half a teaspoon for 2 cups', '1/2 teaspoon: powder, 2 cups: batter'],
    ['1/2 tsp for 1 1/2 cups batter', '1/2 tsp: powder, 1 1/2 cups: batter'],
    ['16 oz batch', '16 oz: batter'],
    ['16 oz (454 g)', '16 oz: unsaid, 454 g: unsaid'],
    ['1 lb 4 oz', '1 lb 4 oz: unsaid'],
    ['2 kg masa, 3 cucharaditas de óxido', '2 kg: batter, 3 cucharaditas: powder'],
    ['media taza de masa', '1/2 taza: batter'],
    ['un kilo de aceites', '1 kilo: oils'],
    ['una libra de masa', '1 libra: batter'],
    ['500', ''],
    ['500 g', '500 g: unsaid'],
    ['500 g lye', '500 g: unsaid'],
    ['500 g water', '500 g: unsaid'],
    ['300 g olive, 200 g coconut, 5 g mica', '300 g: oil, 200 g: oil, 5 g: powder'],
    ['red oxide 3 g in 500 g', '3 g: unsaid, 500 g: unsaid'],
  ])('%s', (text, amounts) => {
    expect(told(text)).toBe(amounts);
  });
});
