import { describe, expect, test } from 'vitest';
import { lyeAmissIn } from '../../../../../src/engine/questions/lye/slips/amiss.ts';
import {
  asksWhetherTooMuch,
  differenceTopic,
  tellsDifference,
} from '../../../../../src/engine/questions/lye/slips/lye-difference.ts';
import { wordsOfBatch } from '../../../../../src/engine/questions/lye/slips/told-amounts.ts';
import { putInAmiss, spoonedOnTop } from '../../../../../src/engine/questions/lye/slips/weighed-amiss.ts';

/*
 * Lye that went in amiss, reckoned by hand. What a recipe's own lye leaves is 100 − (100 − its superfat) × what went in ÷ what was meant
 * (arithmetic; 5 % where none is told: common practice). Olive takes 184 to 196 mg KOH a gram (Codex CXS 33), so some 135.5 g NaOH a kilo
 * (molar masses 39.997 and 56.105, CIAAW); castor 176 to 187 (from memory), coconut 248 to 265 (CXS 210).
 */

type Hand = {
  readonly over: number;
  readonly leaves: number;
  readonly put?: number;
  readonly meant?: number;
  readonly oils?: number;
};

describe('by what went in and what was meant', () => {
  test.each<readonly [string, Hand]>([
    ['I put in 160 g lye, the recipe said 128 g', { over: 25, leaves: -18.75, put: 160, meant: 128 }],
    ['I weighed 128 g of lye and it should have been 160 g', { over: -20, leaves: 24, put: 128, meant: 160 }],
    ['I used 160 g NaOH when it said 128 g', { over: 25, leaves: -18.75, put: 160, meant: 128 }],
    ['I used 100 g NaOH when it said 128 g', { over: -21.9, leaves: 25.8, put: 100, meant: 128 }],
    ['usé 100 g de sosa y eran 128', { over: -21.9, leaves: 25.8, put: 100, meant: 128 }],
    ['160 g of lye instead of 128 g, water 300 g', { over: 25, leaves: -18.75, put: 160, meant: 128 }],
    ['10 g too much lye, the recipe said 128 g', { over: 7.8, leaves: -2.4, put: 138, meant: 128 }],
    ['10 g too much lye on 128 g of lye', { over: 7.8, leaves: -2.4, put: 138, meant: 128 }],
    ['10 g short of lye, it said 128 g', { over: -7.8, leaves: 12.4, put: 118, meant: 128 }],
    [
      'doubled up on the lye, 128 g for 500 g of oils',
      { over: 100, leaves: -90, put: 128, meant: 64, oils: 500 },
    ],
    ['5% too much lye', { over: 5, leaves: 0.25 }],
    ['5 percent over on the lye', { over: 5, leaves: 0.25 }],
    ['me pasé un 5 por ciento de sosa', { over: 5, leaves: 0.25 }],
    ['the lye was over by 5 %', { over: 5, leaves: 0.25 }],
    ['7% más de sosa', { over: 7, leaves: -1.65 }],
    ['5% extra of lye, 800 g of oils', { over: 5, leaves: 0.25, oils: 40 }],
  ])('%s', (text, { over, leaves, put, meant, oils }) => {
    const amiss = lyeAmissIn(text)!;
    expect(amiss.percentOver).toBeCloseTo(over, 1);
    expect(amiss.superfat.typical).toBeCloseTo(leaves, 1);
    // Oils of one name differ by some three points of what they take.
    const ratio = 1 + over / 100;
    expect(amiss.superfat.low).toBeCloseTo(leaves - 3 * ratio, 1);
    expect(amiss.superfat.high).toBeCloseTo(leaves + 3 * ratio, 1);
    expect([amiss.putGrams, amiss.meantGrams]).toEqual([put, meant]);
    expect(amiss.moreOilGrams && Math.round(amiss.moreOilGrams)).toBe(oils);
    expect(amiss).toMatchObject({ meantSuperfat: 5, isTold: false, isOilShort: false });
  });

  test.each<readonly [string, Hand]>([
    [
      'I put 160 g lye instead of 128 g in 1000 g olive',
      { over: 25, leaves: -18, put: 160, meant: 128, oils: 250 },
    ],
    [
      'puse 160 g de sosa en vez de 128 g en 1000 g de oliva',
      { over: 25, leaves: -18, put: 160, meant: 128, oils: 250 },
    ],
    // Twice what the oils want is what went in; what they want is what was meant, and twice as much went in.
    ['I put twice the lye, 128 g, 500 g olive', { over: 100, leaves: -89, put: 128, meant: 64, oils: 500 }],
    ['doubled the lye: 64 g, 500 g olive', { over: 100, leaves: -89, put: 128, meant: 64, oils: 500 }],
    [
      'puse el doble de sosa, 128 g, 500 g de oliva',
      { over: 100, leaves: -89, put: 128, meant: 64, oils: 500 },
    ],
    ['tripled the lye, 195 g in 500 g olive', { over: 200, leaves: -188, put: 195, meant: 65, oils: 1000 }],
    [
      'tripliqué la sosa, 195 g en 500 g de oliva',
      { over: 200, leaves: -188, put: 195, meant: 65, oils: 1000 },
    ],
    [
      '10 g too much lye in 1000 g olive at 5% superfat',
      { over: 7.8, leaves: -2.5, put: 138.9, meant: 128.9, oils: 77.6 },
    ],
    [
      '10 g too much lye in 1000 g olive, recipe was 8%',
      { over: 8, leaves: 0.6, put: 134.8, meant: 124.8, oils: 80.1 },
    ],
    [
      '10 g too much lye in 1000 g olive, receta al 0%',
      { over: 7.4, leaves: -7.4, put: 145.7, meant: 135.7, oils: 73.7 },
    ],
    // 56.105/39.997 times as much potassium hydroxide, which is sold with water in it.
    ['10 g too much KOH in 500 g olive', { over: 10, leaves: -4.5, put: 110.4, meant: 100.4, oils: 49.8 }],
  ])('and the oils that it is for: %s', (text, { over, leaves, put, meant, oils }) => {
    const amiss = lyeAmissIn(text)!;
    expect(Math.abs(amiss.percentOver - over)).toBeLessThan(0.06);
    expect(Math.abs(amiss.superfat.typical - leaves)).toBeLessThan(0.8);
    for (const [read, byHand] of [
      [amiss.putGrams, put],
      [amiss.meantGrams, meant],
      [amiss.moreOilGrams, oils],
    ])
      expect(Math.abs(read! - byHand!)).toBeLessThan(0.1);
  });

  test.each([
    ['5 g too much lye on 128 g of lye', 'may-be-heavy'],
    ['10 g too much lye on 128 g of lye', 'lye-heavy'],
    ['10 g short of lye, it said 128 g', 'usual'],
    ['30 g short of lye, it said 128 g', 'soft'],
  ])('%s: %s', (text, verdict) => {
    expect(lyeAmissIn(text)?.verdict).toBe(verdict);
  });

  test.each([
    ['two figures, and neither is said to be what was meant', 'doubled the lye, 128 g and 64 g, 500 g olive'],
    ['nothing was weighed', 'dupliqué la sosa'],
    ['it was not doubled', 'never doubled the lye, 64 g, 500 g olive'],
    ['it was not doubled', 'no dupliqué la sosa, 64 g, 500 g de oliva'],
    ['it is asked ahead', 'if I double the lye, 128 g, 500 g olive'],
    ['it is asked ahead', 'can I put 128 g lye instead of 64 g'],
    ['it is asked ahead', 'si echo 160 g de sosa en vez de 128'],
    ['it is asked ahead', 'puedo poner 160 g de sosa en vez de 128'],
    ['as much as was meant went in', 'put 128 g lye instead of 128 g'],
    ['nobody puts in twenty times as much', 'put 2600 g lye instead of 128 g'],
    ['no soap has such a superfat', '10 g too much lye in 1000 g olive, sf 60'],
    ['too much and too little at once', '10 g too much lye, 10 g too little lye, 1 kg olive'],
    ['nobody says that it was lye', '10 g too much, 1 kg of oils'],
    ['it is superfat', '5% over on the fat, 100 g lye'],
    ['it is superfat', 'lye 5% over the oils'],
    ['nothing is over', '0% too much lye'],
    ['only what went in is told', 'I put 200 g lye in 1 kg olive'],
    ['only what was meant is told', 'recipe said 128 g lye, 1000 g olive'],
    ['nobody knows of what the spoon was', 'I put 128 g lye, then two tablespoons of lye'],
  ])('not where %s: %s', (_, text) => {
    expect(lyeAmissIn(text)).toBeUndefined();
  });
});

describe('oil that is missing', () => {
  // What is missing takes lye that now meets the rest: 95 of 100 of its share (arithmetic), castor some 128, coconut some 183 g NaOH a kilo.
  test.each([
    ['forgot the castor, 50 g of 1000 g of oils', 50, (50 * 0.1285) / (950 * 0.1355), 5],
    ['forgot 50 g castor of a 1 kg batch', 50, (50 * 0.1285) / (950 * 0.1355), 5],
    ['I left out 50 g of castor from 1 kg of oils, 8% superfat', 50, (50 * 0.1285) / (950 * 0.1355), 8],
    ['me faltaron 50 g de coco en 1 kg de aceites', 50, (50 * 0.183) / (950 * 0.1355), 5],
    ['missed 100 g coconut in a 1 kg batch, 5% superfat', 100, (100 * 0.183) / (900 * 0.1355), 5],
    ['100 g of olive was left over in the jug, 1 kg of oils', 100, 100 / 900, 5],
  ])('%s', (text, grams, share, meant) => {
    const amiss = lyeAmissIn(text)!;
    expect(Math.abs(amiss.percentOver - 100 * share)).toBeLessThan(0.2);
    expect(Math.abs(amiss.superfat.typical - (meant - (100 - meant) * share))).toBeLessThan(0.2);
    expect(amiss.superfat.low).toBeLessThan(amiss.superfat.typical - 3);
    expect(amiss.superfat.high).toBeGreaterThan(amiss.superfat.typical + 3);
    expect(amiss).toMatchObject({ isOilShort: true, moreOilGrams: grams, meantSuperfat: meant });
    expect([amiss.putGrams, amiss.meantGrams, amiss.isTold]).toEqual([
      undefined,
      undefined,
      /\d ?%/u.test(text),
    ]);
  });

  test('of a batch, less may be oil than of what is told as oils', () => {
    const of = (text: string) => lyeAmissIn(text)!.superfat;
    expect(of('forgot 50 g castor of a 1 kg batch').low).toBeLessThan(
      of('forgot 50 g castor of 1 kg of oils').low - 1,
    );
  });

  test.each([
    ['lye is told beside it', 'olvidé 50 g de ricino, 1 kg de aceites, lye 140 g'],
    ['more is missing than there was', 'forgot the castor, 1000 g out of 50 g'],
    ['both are oils by name', 'forgot 500 g of olive, 1000 g of coconut'],
    ['nobody says which oil', 'forgot 50 g of fat, 1 kg of oils'],
    ['nothing is missing', '50 g castor of 1000 g of oils'],
    ['a third weight stands beside it', 'forgot the castor, 50 g of 1000 g of oils, 30 g honey'],
  ])('not where %s: %s', (_, text) => {
    expect(lyeAmissIn(text)?.isOilShort).not.toBe(true);
  });
});

describe('which matter it is, by its own figures', () => {
  test.each([
    ['I put 160 g lye instead of 128 g in 1000 g olive', 'too-much-in'],
    ['puse 160 g de sosa en vez de 128 g en 1000 g de oliva', 'too-much-in'],
    ['I used 100 g NaOH when it said 128 g', 'too-little-in'],
    ['usé 100 g de sosa y eran 128', 'too-little-in'],
    ['1,5 oz de sosa en lugar de 2,5', 'too-little-in'],
    ['superfat -5', 'extra-lye'],
    ['superfat of -5%', 'extra-lye'],
    ['sf: -3', 'extra-lye'],
    ['sobreengrasado de -5', 'extra-lye'],
    ['I then put two tablespoons of lye', 'too-much-in'],
    ['luego le eché dos cucharadas de sosa', 'too-much-in'],
    ['one more scoop of the lye', 'too-much-in'],
    ['encima le puse una cucharada más de sosa', 'too-much-in'],
    ['water 100 g for 140 g lye', 'too-little-water'],
    ['100 g water for 140 g lye', 'too-little-water'],
    ['agua 100 g para 140 g de sosa', 'too-little-water'],
    ['100 g de agua con 140 g de sosa', 'too-little-water'],
    ['I have water, about 100 g for 140 g of lye', 'too-little-water'],
    ['100 g water in 140 g KOH', 'too-little-water'],
  ] as const)('%s: %s', (text, matter) => {
    expect(putInAmiss(text)).toBe(matter);
  });

  test.each([
    ['as much as was meant', 'put 128 g lye instead of 128 g'],
    ['water was weighed instead', 'I put 160 g water instead of 128, lye'],
    ['one stands in the place of another', '160 g of lye instead of KOH 128'],
    ['a unit was mistaken', '160 grams instead of 128 ounces of lye'],
    ['no lye is spoken of', 'I put 160 g instead of 128'],
    ['a line says what it asks', '/plan superfat:-5'],
    ['nothing is below nothing', 'sf 5'],
    ['it is asked ahead', 'can I put another spoon of lye'],
    ['it is asked ahead', 'puedo echar otra cucharada de sosa'],
    ['it is all of the lye', 'a tablespoon of lye'],
    ['as much water as lye dissolves it', '140 g water for 140 g lye'],
    ['there is more water', '200 g water for 140 g lye'],
    ['oils stand beside it', '100 g water for 140 g lye, 900 g olive'],
  ])('none where %s: %s', (_, text) => {
    expect(putInAmiss(text)).toBeUndefined();
  });

  test.each([
    ['I then put two tablespoons of lye', true],
    ['luego le eché dos cucharadas de sosa', true],
    ['a few more spoons of lye', true],
    ['otra cucharadita de sosa', true],
    ['a tablespoon of lye', false],
    ['another spoon of mica', false],
  ])('by the spoon, on top of what was weighed: %s: %s', (text, is) => {
    expect(spoonedOnTop(text)).toBe(is);
  });

  test.each([
    ['is 142 g of lye too much for 600 g lard', true],
    ['was 142 g lye way too little for 1 kg', true],
    ['son 142 g de sosa demasiado', true],
    ['serían 142 g de la sosa muy poca', true],
    ['142 g of lye too much went in', false],
    ['is 142 g of lye the right weight', false],
  ])('all of it is asked of: %s: %s', (text, is) => {
    expect(asksWhetherTooMuch(wordsOfBatch(text))).toBe(is);
  });

  test.each([
    ['15 g more lye', true, undefined],
    ['put 15 g more lye', true, 'too-much-in'],
    ['put 15 g less lye', true, 'too-little-in'],
    ['if I put 15 g more lye', true, undefined],
    ['eché 15 g de sosa de menos', true, 'too-little-in'],
    ['eché 15 g menos de sosa', true, 'too-little-in'],
    ['15 oz extra of the lye was added', true, 'too-much-in'],
    ['1.5 onzas de sosa de sobra, pesé mal', true, 'too-much-in'],
    ['I put 15 g lye', false, undefined],
    ['was 15 g of lye too much that I put', false, undefined],
  ] as const)('so much more or less: %s', (text, is, matter) => {
    expect(tellsDifference(text)).toBe(is);
    expect(differenceTopic(text)).toBe(matter);
  });
});
