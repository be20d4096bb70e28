import { expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { countedOils } from '../../../../src/engine/questions/options/counted-oils.ts';
import { oilsTold } from '../../../../src/engine/questions/options/oils-told.ts';
import { portionTold, sizeTold } from '../../../../src/engine/questions/options/portion-told.ts';
import { withRestParted, withRestTo } from '../../../../src/engine/questions/options/rest-of-recipe.ts';
import type { OptionTold } from '../../../../src/engine/questions/options/told.ts';
import { barsAsked, enoughAsked } from '../../../../src/engine/questions/plans/enough-asked.ts';
import { planParts } from '../../../../src/engine/questions/plans/plan-parts.ts';
import { amongNoColours, sharesAsked } from '../../../../src/engine/questions/plans/shares-asked.ts';
import { portionOutOfRange } from '../../../../src/engine/questions/portion-line/out-of-range.ts';

/*
 * What is typed into an option for oils, a portion or a size, and how a batch is shared among colours (common practice, from memory; shares and
 * sums are arithmetic). Of which lye, or of two figures, nothing is guessed.
 */

const optionOf = (told: OptionTold | undefined): string | undefined =>
  told === undefined ? undefined : 'text' in told ? told.text : `either ${told.unclear.join(' or ')}`;
function planOf(text: string) {
  const { colours, shares, ...more } = planParts(wordsOf(text));
  return {
    ...more,
    colours: colours.map(colour => colour.text).join(', '),
    ...(shares && { shares: shares.map(one => Number(one.toFixed(4))) }),
  };
}

test.each<readonly [text: string, told: unknown]>([
  ['500 g olive, 200 g coconut', '500 g olive, 200 g coconut'],
  ['all olive. 1000', '1000 olive'],
  ['500 olive', '500 olive'],
  ['olive', '100% olive'],
  ['olive and coconut, 3 to 1', '75% olive, 25% coconut'],
  ['just lard and coconut, 75/25', '75% lard, 25% coconut'],
  ['lard and coconut half and half', '50% lard, 50% coconut'],
  ['all olive bar 5% castor', '95% olive, 5% castor'],
  ['60% olive 40% coconut, 1 kg', '600 g olive, 400 g coconut'],
  ['olive 60 coconut 30 the rest castor', '60% olive, 30% coconut, 10% castor'],
  ['rest olive up to 1 kg, 300 g coconut', '300 g coconut, 700 g olive'],
  ['500 g olive, 200 g coconut, 5% superfat', undefined],
  ['500 g olive with KOH', undefined],
  ['500 g olive, 20 g honey', undefined],
  ['500 g olive, 200 g coconut, makes 700', undefined],
  ['500 g olive, 200 g coconut, makes 800', undefined],
  ['cocoa butter (from work) 100 g, 350 g olive', '100 g cocoa butter, 350 g olive'],
  ['olive 500 because it was cheap', '500 olive'],
  ['500 g mica', undefined],
  ['500 g olive and 3 eggs', undefined],
  ['two oils: 500 g olive, 200 g coconut', '500 g olive, 200 g coconut'],
  ['equal parts olive and coconut', '50% olive, 50% coconut'],
  ['50% olive, lo demás coco y aguacate por partes iguales', '50% olive, 25% coco, 25% aguacate'],
  ['100 g cocoa butter', '100 g cocoa butter'],
  ['1 kg gravel', undefined],
  ['olive 1 kg 200', '1200 g olive'],
  ['olive 1 kg lol', '1 kg olive'],
])('the oils option “%s” tells %s', (text, told) => {
  expect(optionOf(oilsTold(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ["half. there's 1.2 kg in the bucket", '1/2 of 1.2 kg'],
  ['2 cups', '2 cups'],
  ['500 g of oils', '500 g oils'],
  ['500 g', '500 g'],
  ['3 of the 8 wells, 70 ml each', '3 x 70 ml'],
  ['12 bars of 100 g', '12 x 100 g batter'],
  ['2 cups oil', undefined],
  ['1 tsp', '1 tsp'],
  ['1 tsp and 2 tsp', '1 tsp and 2 tsp'],
  ['500 g 40', 'either 500 g or 40 g'],
  ['twenty bars', undefined],
  ['500 g in two jugs', undefined],
  ['2 lb oils, no 3 lb', 'either 2 lb oils or 3 lb oils'],
  ['half of 2 lb', 'half of 2 lb'],
])('the portion option “%s” tells %s', (text, told) => {
  expect(optionOf(portionTold(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['1 kg', '1 kg'],
  ['12 bars of 100 g', '12 bars of 100 g'],
  ['12 x 100 g', '12 bars of 100 g'],
  ['1 kg mould', '1 kg batter'],
  ['1 kg of oils in a mould', '1 kg oils'],
  ['loaf of 900 g', '900 g batter'],
  ['3 cups', '3 cups'],
  ['1 kg oils and 300 water', '1 kg oils'],
  ['1 kg 500', '1500 g'],
  ['500 g, no, 600 g', '600 g'],
])('the size option “%s” tells %s', (text, told) => {
  expect(optionOf(sizeTold(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['lard the rest to make 700', '; total 700 g ; the rest lard'],
  ['rest olive up to 1 kg', '; total 1 kg ; the rest olive'],
  ['manteca lo que falte para un kilo', '; total 1 kilo ; the rest manteca'],
  ['rest gravel up to 1 kg', 'rest gravel up to 1 kg'],
  ['rest olive to 200', '; total 200 ; the rest olive'],
  ['rest olive to 300', '; total 300 g ; the rest olive'],
  ['500 g coconut, rest olive to 700', '500 g coconut, ; total 700 ; the rest olive'],
  ['rest olive', 'rest olive'],
])('“%s” leaves “%s”', (text, told) => {
  expect(withRestTo(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['50% olive, lo demás coco y aguacate por partes iguales', '50% olive, 25% coco, 25% aguacate'],
  ['half olive, the rest coconut and lard in equal parts', '50% olive, 25% coconut, 25% lard'],
  ['the rest coconut and lard equally', 'the rest coconut and lard equally'],
  ['120% olive, rest coconut and lard equally', '120% olive, rest coconut and lard equally'],
  ['half olive, rest coconut and gravel equally', 'half olive, rest coconut and gravel equally'],
  ['50% olive, rest coconut', '50% olive, rest coconut'],
])('“%s” parts “%s”', (text, told) => {
  expect(withRestParted(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['sumando los tres aceites 500 g', 'de aceites 500 g'],
  ['entre oliva y coco, 500 g', 'de aceites, 500 g'],
  ['500 g de manteca con aceite', '500 g de aceites'],
  ['between red and blue', 'between red and blue'],
  ['500 g', '500 g'],
])('“%s” counts “%s”', (text, told) => {
  expect(countedOils(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    'half blue half white with olive and coconut',
    {
      oils: ['olive', 'coconut'],
      colours: 'blue, white',
      portions: '1/2 blue; 1/2 white',
      shares: [0.5, 0.5],
    },
  ],
  [
    '60/20/20 blue white pink',
    {
      oils: [],
      colours: 'blue, white, pink',
      portions: '60% blue; 1/5 white; 1/5 pink',
      shares: [0.6, 0.2, 0.2],
    },
  ],
  [
    '12 wells: 4 pink 4 green 4 yellow',
    {
      oils: [],
      colours: 'pink, green, yellow',
      portions: '1/3 pink; 1/3 green; 1/3 yellow',
      shares: [0.3333, 0.3333, 0.3333],
    },
  ],
  [
    '60% white, 30 pink and 10 black',
    {
      oils: [],
      colours: 'white, pink, black',
      portions: '60% white; 30% pink; 10% black',
      shares: [0.6, 0.3, 0.1],
    },
  ],
  [
    'two thirds blue one third white',
    { oils: [], colours: 'blue, white', portions: '66.67% blue; 1/3 white', shares: [0.6667, 0.3333] },
  ],
  [
    'blue white in equal parts',
    { oils: [], colours: 'blue, white', portions: '1/2 blue; 1/2 white', shares: [0.5, 0.5] },
  ],
  [
    '3 layers blue white pink',
    {
      oils: [],
      colours: 'blue, white, pink',
      portions: '1/3 blue; 1/3 white; 1/3 pink',
      shares: [0.3333, 0.3333, 0.3333],
    },
  ],
  ['2 layers blue white pink', { oils: [], colours: 'blue, white, pink' }],
  [
    'blue 50% white 49%',
    { oils: [], colours: 'blue, white', portions: '50.51% blue; 49.49% white', shares: [0.5051, 0.4949] },
  ],
  [
    'blue 50% white 51.5%',
    { oils: [], colours: 'blue, white', portions: '1/2 blue; 1/2 white', shares: [0.5, 0.5] },
  ],
  ['blue 50% white 40%', { oils: [], colours: 'blue, white' }],
  [
    'a quarter blue the rest white',
    { oils: [], colours: 'blue, white', portions: '1/4 blue; 75% white', shares: [0.25, 0.75] },
  ],
  [
    'blue half, white the other half',
    { oils: [], colours: 'blue, white', portions: '1/2 blue; 1/2 white', shares: [0.5, 0.5] },
  ],
  [
    'peach/cream/sage equally',
    {
      oils: [],
      colours: 'peach, cream, sage',
      portions: '1/3 peach; 1/3 cream; 1/3 sage',
      shares: [0.3333, 0.3333, 0.3333],
    },
  ],
  ['blue', { oils: [], colours: 'blue' }],
  ['white and red. got titanium dioxide and red oxide in', { oils: [], colours: 'white, red' }],
  [
    'half natural half blue',
    { oils: [], colours: 'natural, blue', portions: '1/2 plain; 1/2 blue', shares: [0.5, 0.5] },
  ],
  ['black charcoal and white', { oils: [], colours: 'charcoal, white' }],
  ['60/40 blue white pink', { oils: [], colours: 'blue, white, pink' }],
  ['the other half gets split in 3, blue white', { oils: [], colours: 'blue, white' }],
])('a plan of “%s” has %j', (text, told) => {
  expect(planOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['650g oils 3 colours how much each', { grams: 650, parts: 3, colours: [], of: 'oils' }],
  [
    '1 kg batter, blue and white, how much of each',
    { grams: 1000, parts: 2, colours: ['ultramarine blue', 'titanium dioxide'], of: 'batter' },
  ],
  ['1 kg of olive oil in 3 colours', undefined],
  ['12 bars in 3 colours', undefined],
  ['12 bars blue and white', undefined],
  ['50 g batter 3 colours', undefined],
  ['1 kg batter 13 colours', undefined],
  ['1 kg batter, 3 colours: blue and white', undefined],
  ['1 kg batter blue', undefined],
  [
    '70% blanco y 30% azul, 600 de aceites, cuánto de cada uno',
    {
      grams: 600,
      of: 'oils',
      parts: 2,
      colours: ['dióxido de titanio', 'azul ultramar'],
      shares: [0.7, 0.3],
    },
  ],
  ['70% white 30% blue, 1 kg batter, i use titanium and ultramarine', undefined],
  ['how much lye for 1 kg 3 colours', undefined],
  ['1 kg and 2 kg batter 3 colours', undefined],
  ['1 kg batter in halves', undefined],
])('“%s” shares %j', (text, told) => {
  expect(sharesAsked(wordsOf(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    '120 g of blue mica in a tub, batch is 1.5 kg, enough?',
    { colourant: 'blue mica', has: 120, grams: 1500, of: 'batter' },
  ],
  [
    'i have 10 g of mica, is it enough for 1 kg of oils',
    { colourant: 'mica', has: 10, grams: 1000, of: 'oils' },
  ],
  ['enough mica for 1 kg', undefined],
  ['enough lye and 120 g mica for 1 kg', undefined],
  ['20 g mica and 5 g clay for 1 kg enough', undefined],
  ['20 g mica for 50 g enough', undefined],
  [
    'tengo 20 g de mica, alcanza para 2 kg de masa',
    { colourant: 'mica', has: 20, grams: 2000, of: 'batter' },
  ],
])('“%s” asks whether %j are enough', (text, told) => {
  expect(enoughAsked(wordsOf(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['how much mica for 12 bars', { colourant: 'mica', bars: 12 }],
  ['how much mica for 12 bars of 100 g', undefined],
  ['mica for 12 bars', undefined],
  ['how much for 12 bars', undefined],
  ['cuánta mica para 6 pastillas', { colourant: 'mica', bars: 6 }],
  ['how much mica for 0 bars', undefined],
])('“%s” asks for %j', (text, told) => {
  expect(barsAsked(wordsOf(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    'equal parts: peppermint oil, cinnamon and charcoal',
    { colourants: ['charcoal'], others: ['peppermint oil', 'cinnamon'] },
  ],
  ['equal parts charcoal and rose clay', undefined],
  [
    'equal parts lavender oil and charcoal for 1 kg batter',
    { colourants: ['charcoal'], others: ['lavender oil'], whole: '1 kg batter' },
  ],
  ['partes iguales de carbón y sal', { colourants: ['carbon'], others: ['sal'] }],
  ['equal parts of olive and charcoal', undefined],
  ['equal parts lye and charcoal', undefined],
])('“%s” is parted among %j', (text, told) => {
  expect(amongNoColours(wordsOf(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['mica for 100000 kg oils', 'amount-out-of-range'],
  ['mica for 1 kg oils', undefined],
  ['0 g batter', 'amount-out-of-range'],
  ['mica for 0.0001 g batter', 'amount-out-of-range'],
])('“%s” is beyond any portion: %s', (text, told) => {
  expect(portionOutOfRange(wordsOf(text))?.id).toEqual(told);
});
