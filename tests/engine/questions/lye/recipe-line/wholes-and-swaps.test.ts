import { describe, expect, test } from 'vitest';
import { oilWordsMeant } from '../../../../../src/engine/questions/lye/amounts/chat-words.ts';
import { eachPieceIn } from '../../../../../src/engine/questions/lye/recipe-line/doubts/amounts/each-piece.ts';
import { asksForLyeOfWeighed } from '../../../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
import { type Row, toldBy, whole } from './told-by.ts';

/*
 * How makers tell what a recipe weighs in all, what they swapped and what an oil is like (from memory of how they write). What is whole has a
 * line; of what is not, no lye is reckoned: it is asked.
 */

const WHOLE: readonly Row[] = [
  ['olive 400, coconut 300, 700 g of oil in all. lye?', '400 g olive, 300 g coconut'],
  ['70% olive 30% coconut, 40 ounces total. lye?', '70% olive, 30% coconut ; 40 oz oils'],
  ['lote de 600 g: 400 oliva, 200 coco. sosa?', '400 g oliva, 200 g coco'],
  ['batch b: 600 g lard, 200 g coconut. lye?', '600 g lard, 200 g coconut'],
  ['batch 14, oct: 600 g lard, 200 g coconut. lye?', '600 g lard, 200 g coconut', { left: ['oct'] }],
  ['straight castile 1000 g. lye?', '1000 g olive'],
  ['400 g olive, 200 g coconut. the olive is green. how much soda', '400 g olive, 200 g coconut'],
  [
    '600 olve, 200 cocnut g. lye?',
    '600 g olive, 200 g coconut',
    {
      respelt: [
        { typed: 'olve', read: 'olive' },
        { typed: 'cocnut', read: 'coconut' },
      ],
    },
  ],
  [
    '500 g olive, 200 g lard, 300 g palm, swapped the palm for tallow. lye?',
    '500 g olive, 200 g lard, 300 g tallow',
    { isTurned: true },
  ],
  [
    '500 g olive, 200 g lard, swapped 200 g lard for tallow. lye?',
    '500 g olive, 200 g tallow',
    { isTurned: true },
  ],
  [
    'swapped the 200 g palm for lard, the rest is 400 g olive. lye?',
    '400 g olive, 200 g lard',
    { isTurned: true },
  ],
];

test.each(whole(WHOLE))('a recipe is whole: %s', (text, line, beside) => {
  expect(toldBy(text)).toEqual({ line, ...beside });
});

const ASKED: readonly Row[] = [
  // How much of all of it each is, with two kilos to come to, nobody tells.
  ['olive 400 coconut 300 up to 2 kilos of oil. lye?', '400, 300', { why: 'place' }],
  // A part of an oil that is swapped leaves two of them.
  [
    '500 g olive, 200 g lard, swapped 100 g lard for tallow. lye?',
    'tallow',
    { why: 'place', isTurned: true },
  ],
  ['500 g olive, 200 g coconut, swapped the palm for lard. lye?', 'lard', { why: 'place', isTurned: true }],
  [
    '400 g olive, 200 g coconut. the coconut is melted, and some of it spilt. lye?',
    'it spilt',
    { why: 'place', isTurned: true },
  ],
  [
    'batch b: 600 g lard. batch c: 200 g coconut. lye?',
    'b c',
    {
      why: 'doubt',
      doubt: ['lard', 'coconut'],
      ways: ['600 g lard, 200 g coconut', '200 g coconut', '600 g lard'],
    },
  ],
  ['1000 g castile, olive 1000 g. lye?', '1000 g', { why: 'place' }],
  ['70 g olive, 25 g coconut per bar. lye?', 'per bar', { why: 'words', ways: ['70 g olive, 25 g coconut'] }],
];

test.each(whole(ASKED))('a recipe is asked about: %s', (text, unclear, beside) => {
  expect(toldBy(text)).toEqual({ unclear, ...beside });
});

describe('oils for each of several bars are no batch', () => {
  test.each([
    ['12 bars ; each bar is 70 g olive , 25 g coconut', 'each bar'],
    ['12 bars ; 70 g olive per bar', 'per bar'],
    // Of one bar what is told of each is all.
    ['1 bar ; each bar is 70 g olive', undefined],
    ['each bar is 70 g olive', undefined],
    // What each takes of powder is no recipe.
    ['12 bars ; each bar is 2 g mica', undefined],
  ])('%s: %s', (plain, each) => {
    expect(eachPieceIn(plain)).toBe(each);
  });
});

test.each([
  ['500 g olive, 200 g coconut. lye?', true],
  ['half and half olive and coconut, 2 lb of oils. lye?', true],
  ['half and half olive and coconut. lye?', false],
  ['500 g olive. lye?', false],
  ['500 g olive, superfat 5. lye?', true],
  ['500 g olive, 500 g olive. lye?', false],
  ['500 g olive, 200 g coconut. is it the same lye as before?', false],
  ['500 g olive, 200 g coconut in a jug', false],
])('lye of weighed oils is asked: %s %s', (text, is) => {
  expect(asksForLyeOfWeighed(text)).toBe(is);
});

test.each([
  ['lrad', ['lard']],
  ['taloow', ['tallow']],
  ['coconutt', ['coconut']],
  ['grirasol', ['girasol']],
  // As near to one as to the other.
  ['castr', ['castor', 'caster']],
  // Two slips are no name, and a name is none.
  ['cocnt', []],
  ['coconut', []],
  ['abcdefgh', []],
])('“%s” may be %j', (typed, meant) => {
  expect(oilWordsMeant(typed)).toEqual(meant);
});
