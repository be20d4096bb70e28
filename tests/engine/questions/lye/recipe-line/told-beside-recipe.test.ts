import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { isPlainRecipe } from '../../../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';
import { scaledIn } from '../../../../../src/engine/questions/lye/sums/scaled.ts';
import { isAskedBack, readInChat } from '../../read-in-chat.ts';

function oilsOf(question: string): Record<string, number> {
  const { given } = readInChat(question);
  const { shares, totalGrams = 0 } = parseOils(given.oils ?? '');
  const grams = given.size === undefined ? totalGrams : gramsOf(given.size);
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * grams)]));
}

type Row = readonly [question: string, oils: Record<string, number>];
const reads = (rows: readonly Row[]) =>
  test.each(rows)('%s', (question, oils) => expect(oilsOf(question)).toEqual(oils));
const asks = (questions: readonly string[]) =>
  test.each(questions)('asked: %s', question => expect(isAskedBack(question)).toBe(true));

describe('brackets', () => {
  reads([
    ['mango 80 (manteca), babasú 200, oliva 400. sosa', { mango: 80, babassu: 200, olive: 400 }],
    ['uva 100 (pepitas), coco 200, oliva 500. Sosa?', { grapeseed: 100, coconut: 200, olive: 500 }],
    ['algodón 400 g (aceite), coco 300. ¿sosa?', { cottonseed: 400, coconut: 300 }],
    [
      '300g sunflower (the high oleic one), 300g coconut. lye?',
      { 'sunflower-high-oleic': 300, coconut: 300 },
    ],
    ["babassu 300g (can't do coconut, itchy), olive 600g. lye?", { babassu: 300, olive: 600 }],
    ['babasú 300 (el coco me brota), oliva 550. ¿soda?', { babassu: 300, olive: 550 }],
  ]);
  asks([
    // Another oil in brackets, one that is weighed elsewhere, and one that is not in yet.
    '200 g coconut (palm kernel), 500 g olive. lye?',
    "coconut 200 g, olive 500 g (can't do coconut). lye?",
    'olive 500 g, coconut 200 g (not in yet). lye?',
    'olive 500 g, castor 50 g (the neighbour kept it). lye?',
  ]);
});

describe('another soap, told first', () => {
  reads([
    [
      'first one i made was all olive, never mind that one. This one: 550 tallow, 250 coconut. lye?',
      { tallow: 550, coconut: 250 },
    ],
    [
      'La primera que hice fue puro coco y me secó las manos. Ahora quiero: oliva 500, coco 200. ¿Soda?',
      { olive: 500, coconut: 200 },
    ],
    [
      'ayer hice el de 500 oliva y 500 coco. Hoy quiero hacer otro: 600 de girasol, 300 de coco. ¿sosa?',
      { sunflower: 600, coconut: 300 },
    ],
  ]);
  asks([
    // What is as it was then is not told.
    'Last one I made had shea in it, same again. Today 500 olive, 200 coconut. lye?',
    'La primera que hice llevaba ricino. Ahora igual pero 500 oliva, 200 coco. ¿Soda?',
  ]);
});

describe('what is asked of an oil beside its recipe', () => {
  reads([
    [
      'Beeswax 20 g in with 580 olive and 300 coconut. does the wax count for lye? lye?',
      { beeswax: 20, olive: 580, coconut: 300 },
    ],
    [
      'cera de abejas 15 g, oliva 585, coco 300. la cera la cuento para la soda?',
      { beeswax: 15, olive: 585, coconut: 300 },
    ],
    [
      '150 hemp 450 olive 300 coco at 5, btw does hemp go rancid fast',
      { hemp: 150, olive: 450, coconut: 300 },
    ],
  ]);
  asks([
    '600 olive 300 coconut. does the castor need lye too? lye?',
    '600 g olive 300 g coconut, does the coconut go in tomorrow? lye?',
  ]);
});

describe('a stock of oils', () => {
  reads([
    [
      'My masterbatch of oils is 50% olive, 30% coconut, 20% palm. I take 900 g of it and add 100 g castor. 5% superfat, how much lye?',
      { olive: 450, coconut: 270, palm: 180, castor: 100 },
    ],
    [
      'Mi mezcla madre de aceites es 60 % oliva y 40 % coco. Saco 750 g y le agrego 50 g de karité. ¿Cuánta sosa?',
      { olive: 450, coconut: 300, shea: 50 },
    ],
  ]);
  asks([
    // No whole, nothing taken, and a masterbatch of lye.
    'My masterbatch of oils is 50% olive, 30% coconut. I take 900 g of it. lye?',
    'My oil masterbatch is 50% olive, 50% coconut and 100 g castor beside it. lye?',
    'Weighed 290 g out of my 50% masterbatch for 700 g of olive and 300 g of coconut. Safe?',
  ]);
});

describe('swaps', () => {
  reads([
    [
      'y si en vez de palma le pongo sebo? la receta: oliva 400, coco 300, palma 300. ¿soda?',
      { olive: 400, coconut: 300, tallow: 300 },
    ],
    [
      'swapped the 200g palm for lard, rest is the same, 400 olive 250 coconut. lye?',
      { olive: 400, coconut: 250, lard: 200 },
    ],
    [
      'ran out of coconut, can I use babassu instead and keep the same lye? recipe was 450 olive 300 coconut, grams',
      { olive: 450, babassu: 300 },
    ],
    [
      'mismo jabón pero sin el coco: era oliva 800, coco 200, ricino 50. Quita el coco. ¿sosa?',
      { olive: 800, castor: 50 },
    ],
    [
      'I swapped the 150 g palm for 150 g of tallow, rest same (400 olive, 200 coconut). lye?',
      { tallow: 150, olive: 400, coconut: 200 },
    ],
  ]);
  asks([
    // A part of it, and one that is weighed by itself.
    'oliva 800, coco 200, ricino 50. Quita 50 del coco. ¿sosa?',
    'en vez de palma le pongo coco: oliva 400, coco 300, palma 300. ¿soda?',
    'swapped the 200g palm for olive, rest is the same, 400 olive 250 coconut. lye?',
  ]);
  test('an oil that is not to be forgotten stays in', () =>
    expect(isAskedBack("500 g olive, 200 g coconut, don't forget the coconut. lye?")).toBe(true));
});

describe('a ratio', () => {
  reads([
    [
      'traigo manteca de puerco 2 a 1 con coco, son 900 gramos las dos juntas. ¿Sosa?',
      { lard: 600, coconut: 300 },
    ],
    ['lard 2:1 with coconut, 900 g in all. lye?', { lard: 600, coconut: 300 }],
    ['2:1 lard and coconut, 900 g in all. lye?', { lard: 600, coconut: 300 }],
    ['lard and coconut 2:1, 900 g in all. lye?', { lard: 600, coconut: 300 }],
    ['duplíqueme esta: 250 oliva, 150 coco. ¿La sosa?', { olive: 500, coconut: 300 }],
  ]);
});

describe('sizes and multiples', () => {
  reads([
    [
      'resize: olive 400 coconut 300 lard 300 up to 2 kilos of oil. lye?',
      { olive: 800, coconut: 600, lard: 600 },
    ],
    [
      'llevame esto a 2 kilos de aceites: oliva 500, coco 300, cacao 200. y la soda, al 5',
      { olive: 1000, coconut: 600, 'cocoa-butter': 400 },
    ],
    ['Triple it. 200 coconut, 350 olive is the single. lye for the triple', { coconut: 600, olive: 1050 }],
    [
      'achicar: oliva 1000 coco 600, a la mitad porque el molde es chico. soda para la mitad',
      { olive: 500, coconut: 300 },
    ],
    [
      'need lye for a half recipe. full is 1000 olive 400 coconut so cut it in two',
      { olive: 500, coconut: 200 },
    ],
    ['Coco 330 g, oliva el doble, ricino 60. ¿Soda?', { coconut: 330, olive: 660, castor: 60 }],
    ['Lard 700 + coco 200 + olive 100 = 1 kg. lye?', { lard: 700, coconut: 200, olive: 100 }],
  ]);
  asks([
    // What was halved, and is halved again.
    'half the batch: olive 1000 coconut 400. then half of that again. lye?',
    'Coco 330 g, palma 200, oliva el doble. ¿Soda?',
  ]);
});

describe('superfat', () => {
  test.each([
    ['16 oz olive 8 oz coconut, lye and water please, I keep it at 6', 6],
    ['600 oliva, 200 coco, siempre lo dejo al 8. ¿sosa?', 8],
    ['aceite de girasol 400, coco 300, sobre 5. ¿sosa?', 5],
    ['oliva 420, coco 210. Decime soda y agua, sobreengr. 6', 6],
    ['olive 640 coconut 260. lye at 5 after the swap', 5],
    ['oliva 510 coco 250 cerdo 150 5% soda??', 5],
    ['tallow 700g coconut 100g. 6%. lye?', 6],
    ['500 rapeseed 200 coconut. If I go from 5 to 8 percent superfat, lye?', 8],
    ['how much lie for 500 g olive and 200 g coconut at five percent super fat', 5],
  ])('%s', (question, superfat) => expect(readInChat(question).given.superfat).toBe(superfat));
  test('an hour is none', () =>
    expect([
      isAskedBack('coconut 300 g, olive 700 g went in at 8. lye?'),
      readInChat('started the melt at 6, coconut 300 g, olive 700 g. lye?').given.superfat,
    ]).toEqual([true, undefined]));
});

describe('figures that may be a superfat or a weight', () => {
  // A bare fifteen behind a name, and a percent that no superfat reaches unasked.
  asks(['olive 500 g, coconut, 15. lye?', 'oliva 510 coco 250 cerdo 150 25% soda??']);
});

describe('lye that is checked', () => {
  test.each([
    ['I only have 92 g of lye left in the tub. 500 olive and 200 coconut, is that 92 enough', 92],
    ['what superfat did I end up with if it was 130 g lye into 650 olive and 300 coconut', 130],
    [
      "forgot to weigh the cocoa butter. It's 60 g on top of 340 g olive and 200 g coconut. lye was 85 g. Am I safe",
      85,
    ],
    ['i put 145 g of lye with 1000 g of olive oil and its zappy still', 145],
  ])('%s', (question, grams) => {
    const { weighed, given } = readInChat(question);
    expect([weighed?.grams, given.oils !== undefined]).toEqual([grams, true]);
  });
  asks(['92 g of lye, 500 olive and 200 coconut, is that 100 enough']);
});

/** What was meant to go in stands beside what is: nobody here knows whether it is in. */
const MEANT = {
  en: ['I was going to put', 'I had planned', 'I meant to add', 'I was supposed to have'],
  es: ['Pensaba poner', 'Iba a echar', 'Quería poner', 'Tenía que haber'],
} as const;
const SO = { en: ['so', 'but', 'so now'], es: ['así que', 'pero', 'entonces'] } as const;
const WHY = {
  en: ['it never came', 'the shop was shut', 'the cat had it', 'we ate it', ''],
  es: ['no llegó', 'estaba cerrado', 'se la comió el perro', 'nadie la trajo', ''],
} as const;
describe('oils that were meant', () => {
  test.each(['en', 'es'] as const)('%s', language =>
    fc.assert(
      fc.property(
        fc.constantFrom(...MEANT[language]),
        fc.constantFrom(...WHY[language]),
        fc.constantFrom(...SO[language]),
        (meant, why, so) => {
          const [of, and, asked] =
            language === 'en' ? ['of palm', 'and', 'how much lye'] : ['de palma', 'y', 'cuánta sosa'];
          const question = `${meant} 200 g ${of}${why === '' ? '' : `, ${why}`}, ${so} 500 g ${language === 'en' ? 'olive' : 'oliva'} ${and} 300 g coco. ${asked}?`;
          expect(isAskedBack(question)).toBe(true);
        },
      ),
    ),
  );
  asks(['200 g palm that never came, 500 g olive, 300 g coconut. lye?']);
});

/** Everything that is wet may stand beside the oils in a weight, in any order. */
describe('a weight of oils and water together', () => {
  const wet = fc.shuffledSubarray(['water', 'lye', 'milk'], { minLength: 1 });
  test('is asked for', () =>
    fc.assert(
      fc.property(wet, fc.boolean(), (list, isFirst) => {
        const all = isFirst ? ['oils', ...list] : [...list, 'oils'];
        const said = `Everything in the mould comes to 1500 g, ${all.join(' and ')} together. Oils are 70% olive 30% coconut. lye?`;
        expect(isAskedBack(said)).toBe(true);
      }),
    ));
  asks(['oliva 45 %, coco 55 %, molde de 1200 g de masa en total. ¿sosa?']);
  reads([['oils 1500 g, 70% olive 30% coconut, lye and water please', { olive: 1050, coconut: 450 }]]);
});

describe('dry skin', () => {
  test.each([
    [
      'mitad oliva y mitad coco, 640 g entre los dos, sobregrasa 8 porque tengo la piel muy seca. soda y agua',
      true,
    ],
    ['mitad oliva y mitad coco, 640 g entre los dos, sobregrasa 8, me arde la piel. soda y agua', false],
  ])('%s', (question, isPlain) => expect(isPlainRecipe(question)).toBe(isPlain));
});

describe('half of what', () => {
  test('half olive, half lard is what the oils share', () =>
    expect(scaledIn('1100 g of oils, half olive, half lard, 140 g lye')).toBeUndefined());
  test('half of a recipe is a multiple', () =>
    expect(scaledIn('recipe is 1000 g of oils and 140 g lye, I make half of it')?.lyeGrams).toBe(70));
});
