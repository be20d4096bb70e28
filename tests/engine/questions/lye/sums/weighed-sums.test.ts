import { describe, expect, test } from 'vitest';
import { plainWords } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { acidTakesIn } from '../../../../../src/engine/questions/lye/sums/acid-takes.ts';
import {
  checkLye,
  lyeForAnyOil,
  slippedTo,
  verdictOf,
  waterForLye,
} from '../../../../../src/engine/questions/lye/sums/check.ts';
import { oilsForLye } from '../../../../../src/engine/questions/lye/sums/inverse.ts';
import {
  impureLyeIn,
  readyLyeIn,
  waterForLyeIn,
} from '../../../../../src/engine/questions/lye/sums/ready-lye.ts';
import {
  readyLyeNamed,
  strengthOfReady,
  withSolution,
} from '../../../../../src/engine/questions/lye/sums/ready-solution.ts';
import { scaledIn } from '../../../../../src/engine/questions/lye/sums/scaled.ts';
import { lyeSpilledIn } from '../../../../../src/engine/questions/lye/sums/spilled.ts';

/*
 * Sums by hand. A solution of p percent holds p of 100 (arithmetic); lye water is made from 20 to 50 % (handbook tables), and less water
 * than lye does not dissolve it (common practice). Molar masses (CIAAW): NaOH 39.997, KOH 56.105, citric acid 192.124 with three protons,
 * acetic 60.052 and lactic 90.078 with one. Saponification: Codex CXS 33 (olive 184 to 196 mg KOH/g) and CXS 210 (coconut 248 to 265).
 */

describe('lye water in place of dry lye', () => {
  test.each([
    ['recipe needs 120 g lye, I have 20% lye solution', 600, undefined],
    ['recipe needs 120 g lye, I have 50% lye solution', 240, undefined],
    ['recipe needs 120 g lye and 300 g water, premixed lye at 40%', 300, 120],
    ['recipe needs 120 g lye, 100 g water, 40% solution', 300, -80],
    ['la receta lleva 100 g de sosa y 200 g de agua, solución a partes iguales', 200, 100],
    ['quiero 100 g de sosa, ya hecha al 50%', 200, undefined],
  ])('%s', (text, solution, water) => {
    expect(readyLyeIn(text)).toMatchObject({ solutionGrams: solution, waterGrams: water });
  });

  test.each([
    ['it is too weak for soap', 'recipe needs 120 g lye, I have 19% lye solution'],
    ['it would set solid', 'recipe needs 120 g lye, I have 56% lye solution'],
    ['nobody says what the recipe needs', 'I have 40% lye solution, 120 g lye'],
    ['it is not said to be a solution', 'recipe needs 120 g lye, 40%'],
    ['two weights of lye are told', 'recipe needs 120 g lye or 130 g lye, 40% solution'],
    ['two strengths are told', 'recipe needs 120 g lye, 40% solution or 50%'],
    ['an oil is weighed too', 'recipe needs 120 g lye, 40% solution, 900 g olive'],
    ['no lye is weighed', 'recipe needs 120 g water, 40% solution'],
  ])('not where %s: %s', (_, text) => {
    expect(readyLyeIn(text)).toBeUndefined();
  });

  test.each([
    ['500 g olive, lye masterbatch at 50%', 50, 'lye masterbatch'],
    ['500 g olive, lye masterbatch', undefined, 'lye masterbatch'],
    ['500 g olive, premixed lye 1:1', 50, 'premixed lye'],
    ['500 g olive, sosa líquida al 40%', 40, 'sosa liquida'],
    ['500 g olive, sosa ya disuelta a partes iguales', 50, 'sosa ya disuelta'],
    ['lye masterbatch at 50%, other lye masterbatch at 40%', undefined, 'lye masterbatch'],
    ['tengo una solución de sosa', undefined, 'solucion de sosa'],
    ['tengo una 50% solución de sosa, 500 g oliva', 50, 'solucion de sosa'],
    ['masterbatch of oils 50%', undefined, undefined],
    ['oil masterbatch 50%, 500 g olive', undefined, undefined],
    ['500 g olive, 70 g lye', undefined, undefined],
  ])('%s: %s %%', (text, strength, name) => {
    const plain = plainWords(text, { clauses: true });
    expect(strengthOfReady(plain)).toBe(strength);
    expect(readyLyeNamed(plain)).toBe(name);
  });

  test.each([
    ['280 g of 50% lye solution', '140 g lye'],
    ['280 g of lye solution at 50%', '140 g lye'],
    ['280 g de disolución de sosa al 50%', '140 g sosa'],
    ['280 g of a 50% naoh solution', '140 g naoh'],
    ['280 g de solución al 40%', '112 g lye'],
    ['lye, 142 g of 50% solution', '71 g lye'],
    ['120 g of lye dissolved in 250 g of water', '120 g lye, 250 g water'],
    ['120 g of caustic soda already mixed up in 250 g of cold water', '120 g caustic soda, 250 g water'],
    ['120 g de sosa ya disuelta en 250 g de agua', '120 g sosa, 250 g water'],
    ["how much of the masterbatch for 500 g olive, it's 50%", "how much lye for 500 g olive, it's 50%"],
  ])('%s holds %s', (text, dry) => {
    expect(withSolution(plainWords(text, { clauses: true })).trim()).toBe(dry);
  });
});

describe('lye that is not pure', () => {
  test.each([
    ['my lye is 97% pure, recipe says 100 g, how much more?', 100 / 0.97],
    ['my lye is 70% pure, 100 g lye, do I need more', 100 / 0.7],
    ['my lye is 99.5% pure, 100 g lye, enough?', 100 / 0.995],
    ['la sosa tiene 95% de pureza, 190 g, ¿ajusto?', 200],
  ])('%s', (text, grams) => {
    expect(impureLyeIn(text)?.grams).toBeCloseTo(grams, 9);
  });

  test.each([
    ['no lye is so weak', 'my lye is 69% pure, 100 g lye, do I need more'],
    ['nothing is amiss', 'my lye is 100% pure, 100 g lye, enough?'],
    ['it may be of something else', '97% pure, 100 g, how much more?'],
    ['nothing is asked', 'lye 97% pure, 100 g'],
    ['it may be a strength', 'lye 97%, 100 g, more?'],
    ['an oil was weighed', 'lye 97% pure, 100 g olive, more?'],
    ['oils were weighed', 'lye 97% pure, 100 g of oils, more?'],
    ['water was weighed', 'lye 97% pure, 100 g water, more?'],
    ['two weights are told', 'lye 97% pure, 100 g and 200 g, more?'],
  ])('not where %s: %s', (_, text) => {
    expect(impureLyeIn(text)).toBeUndefined();
  });
});

describe('water for weighed lye', () => {
  test.each([
    ['water for 100 g lye at 50%', 100, 50],
    ['water for 100 g lye at 25%', 300, 25],
    ['water for 100 g lye at 5:1', 500, 16.67],
    ['water for 100 g lye at 1 to one', 100, 50],
    ['water for 100 g lye 3:2', 150, 40],
    ['water for 100 lye at 2:1', 200, 33.33],
    ['cuánta agua para 100 g de sosa a 2 por uno', 200, 33.33],
    // At the usual third where none is told (common practice).
    ['how much water for 100 g lye', 203.03, 33],
    ['what water for 5 oz lye', 287.79, 33],
    ['how much water for 100 g lye, recipes say 2:1 and 3:1', 203.03, 33],
  ])('%s: %d g', (text, water, percent) => {
    const read = waterForLyeIn(text)!;
    expect(read.waterGrams).toBeCloseTo(water, 2);
    expect(read.percent).toBeCloseTo(percent, 2);
    expect(read.lyeGrams).toBeCloseTo(text.includes('5 oz') ? 141.75 : 100, 2);
  });

  test.each([
    ['lye would not dissolve', 'water for 100 g lye at 51%'],
    ['it is no lye water for soap', 'water for 100 g lye at 15%'],
    ['it is no lye water for soap', 'water for 100 g lye at 6:1'],
    ['oils are weighed too', 'how much water for 100 g lye, 900 g olive'],
    ['a ratio of one’s own is told', 'how much water for 100 g lye, mine is 2:1'],
    ['a strength is hinted at', 'how much water for 100 g lye, double'],
    ['it is the other alkali', 'how much water for 100 g KOH'],
    ['milk took the place of water', 'how much water instead of milk for 100 g lye'],
    ['something was added', 'how much water for 100 g lye and 10 g more'],
    ['no water is asked for', '100 g lye'],
  ])('not where %s: %s', (_, text) => {
    expect(waterForLyeIn(text)).toBeUndefined();
  });

  test('as asked, else at a third', () => {
    expect(waterForLye(100)).toEqual({
      grams: expect.closeTo((100 * 67) / 33, 9),
      percent: expect.closeTo(33, 9),
    });
    expect(waterForLye(100, '2:1').grams).toBeCloseTo(200, 9);
    expect(waterForLye(100, '30% of oils', 1000).grams).toBeCloseTo(300, 9);
    expect(() => waterForLye(100, '30% of oils')).toThrow('size-missing');
  });
});

describe('lye that an acid takes', () => {
  test.each([
    ['how much more lye for 10 g citric acid', 'citric', (10 * 3) / 192.124],
    ['how much NaOH does 10 g citric acid use', 'citric', (10 * 3) / 192.124],
    ['how much more lye for 10 g citric acid monohydrate', 'citric-monohydrate', (10 * 3) / 210.139],
    ['how much extra lye for 200 g of 8% vinegar', 'vinegar', 16 / 60.052],
    // Nobody sells vinegar of 40 %: as it stands on the table, 5 %.
    ['how much extra lye for 200 g of 40% vinegar', 'vinegar', 10 / 60.052],
    ['cuánta sosa de más para 200 ml de vinagre', 'vinegar', 10 / 60.052],
    ['vinegar, I used 200 g, how much more lye', 'vinegar', 10 / 60.052],
    ['how much more lye for 1 kg lactic acid', 'lactic', 1000 / 90.078],
    ['cuánta sosa come 1 kg de ácido láctico', 'lactic', 1000 / 90.078],
  ])('%s', (text, acid, moles) => {
    const takes = acidTakesIn(text)!;
    expect(takes.acid).toBe(acid);
    expect(takes.told?.naoh).toBeCloseTo(moles * 39.997, 1);
    expect(takes.told?.koh).toBeCloseTo(moles * 56.105, 1);
  });

  test.each([
    ['how much lye does citric acid take per gram', 'citric', 3 / 192.124],
    ['how much extra lye does vinegar need', 'vinegar', 1 / 60.052],
  ])('by the gram where no weight is told: %s', (text, acid, moles) => {
    const takes = acidTakesIn(text)!;
    expect([takes.acid, takes.told]).toEqual([acid, undefined]);
    expect(takes.perGram.naoh).toBeCloseTo(moles * 39.997, 3);
    expect(takes.perGram.koh).toBeCloseTo(moles * 56.105, 3);
  });

  test.each([
    ['nothing is asked', '10 g citric acid in my lye'],
    ['no lye is spoken of', 'how much citric acid'],
    ['it is not asked what it takes', 'how much lye with 10 g citric acid'],
    ['it is a recipe', 'how much lye for 10 g citric acid and 500 g olive, more'],
    ['it would mend a bar', 'how much extra lye to fix soap with 10 g citric acid'],
    ['the acid is none of these', 'how much more lye for 10 g acetic acid'],
  ])('not where %s: %s', (_, text) => {
    expect(acidTakesIn(text)).toBeUndefined();
  });
});

describe('a recipe made larger or smaller', () => {
  test.each([
    ['500 g oils and 70 g lye, 150 g water, double it', 1000, 140, 300],
    ['500 g oils and 70 g lye, tripled', 1500, 210, undefined],
    ['mitad de 500 g aceites y 70 g sosa', 250, 35, undefined],
    ['500 g oils, 70 g lye, I want 1000 g', 1000, 140, undefined],
    ['500 g oils, 70 g lye, make it 1000 g oils', 1000, 140, undefined],
    ['500 g oils, 70 g lye, 150 g water, I want 40 kg', 40_000, 5600, 12_000],
  ])('%s', (text, oils, lye, water) => {
    const scaled = scaledIn(text)!;
    expect(scaled.oilGrams).toBeCloseTo(oils, 6);
    expect(scaled.lyeGrams).toBeCloseTo(lye, 6);
    expect(scaled.waterGrams === undefined ? undefined : Math.round(scaled.waterGrams)).toBe(water);
    expect(scaled.factor).toBeCloseTo(oils / 500, 9);
  });

  test.each([
    ['a half is of the oils', '500 g oils, 70 g lye, half olive half lard, halve'],
    ['it stays as large', '500 g oils, 70 g lye, I want 500 g'],
    ['nobody makes a hundred times as much', '500 g oils, 70 g lye, I want 100 kg'],
    ['nobody makes a hundredth', '500 g oils, 70 g lye, I want 4 g'],
    ['two weights of lye are told', '500 g oils, 70 g lye, 80 g lye, double'],
    ['two weights of water are told', '500 g oils, 70 g lye, 150 g water, 160 g water, double'],
    ['no oils are weighed', '70 g lye, double'],
    ['three sizes are told', '500 g oils, 600 g oils, 700 g oils, 70 g lye'],
    ['something else is weighed', '500 g oils, 70 g lye, 20 g honey, double'],
    ['it was a mistake', '500 g oils, 70 g lye, doubled by mistake'],
    ['nothing is wished', '500 g oils, 70 g lye'],
  ])('not where %s: %s', (_, text) => {
    expect(scaledIn(text)).toBeUndefined();
  });
});

describe('lye water that was lost', () => {
  test.each([
    ['I spilled 10 g of 400 g lye water', 10, 400, 5],
    ['I spilled 10 g of my lye water, it was 130 g lye and 270 g water', 10, 400, 5],
    ['I spilled 10 g of my lye water, 130 g lye and 270 g water, superfat 8%', 10, 400, 8],
    ['I spilled 199 g of 400 g lye water', 199, 400, 5],
    ['se me derramó 10 g del agua con sosa, 130 g de sosa y 270 g de agua', 10, 400, 5],
    ['perdí 10 g de la lejía, 130 g de sosa y 270 g de agua', 10, 400, 5],
  ])('%s', (text, grams, all, meant) => {
    const spilled = lyeSpilledIn(text)!;
    expect(spilled).toMatchObject({ grams, ofGrams: all, meantSuperfat: meant });
    expect(spilled.percent).toBeCloseTo((100 * grams) / all, 9);
    expect(spilled.superfat).toBeCloseTo(100 - (100 - meant) * (1 - grams / all), 9);
  });

  test.each([
    ['half of it is gone', 'I spilled 200 g of 400 g lye water'],
    ['nobody says of how much', 'I spilled 10 g of my lye solution'],
    ['it was oil', 'I spilled 10 g of olive, 130 g lye and 270 g water'],
    ['the weights stand before what was lost', '130 g lye and 270 g water, spilled some of the lye water'],
    ['an animal met it', 'I spilled 10 g of lye water on the cat, of 400 g'],
    ['nothing was lost', '10 g of 400 g lye water'],
  ])('not where %s: %s', (_, text) => {
    expect(lyeSpilledIn(text)).toBeUndefined();
  });
});

describe('oils for lye that is weighed', () => {
  test.each([
    // 100 g NaOH are 140.3 g KOH; 95 of 100 of the oil's part.
    ['I have 100 g lye, how much olive oil', (100 * 56.105) / 39.997 / (0.19 * 0.95), 5],
    ['tengo 100 g de sosa, cuánta oliva', (100 * 56.105) / 39.997 / (0.19 * 0.95), 5],
    [
      'tengo 100 g de sosa, cuántos gramos de aceite de oliva necesito',
      (100 * 56.105) / 39.997 / (0.19 * 0.95),
      5,
    ],
    ['how many grams of olive for 100 g lye', (100 * 56.105) / 39.997 / (0.19 * 0.95), 5],
    [
      'I have 100 g lye, how many grams of coconut oil do I need',
      (100 * 56.105) / 39.997 / (0.2565 * 0.95),
      5,
    ],
    ['I have 100 g lye, how much olive oil for 10% superfat', (100 * 56.105) / 39.997 / (0.19 * 0.9), 10],
    // Flakes of potassium hydroxide are 90 % (common practice).
    ['I have 100 g KOH, how much olive oil at 0% superfat', 90 / 0.19, 0],
  ])('%s', (text, grams, superfat) => {
    const read = oilsForLye(text)!;
    expect(Math.abs(read.grams.typical / grams - 1)).toBeLessThan(0.01);
    expect(read.grams.low).toBeLessThan(read.grams.typical);
    expect(read.grams.high).toBeGreaterThan(read.grams.typical);
    expect(read.superfat).toBe(superfat);
    expect(read.oils.map(oil => oil.grams)).toEqual([read.grams.typical]);
  });

  test.each([
    ['nobody says which oil', 'I have 100 g lye, how much oil'],
    ['no soap is so fat', 'I have 100 g lye, how much olive oil, 51% superfat'],
    ['another oil is weighed', 'I have 100 g lye, how much olive for 200 g lard'],
    ['no lye is weighed', 'how much olive oil'],
    ['no oil is asked for', 'I have 100 g lye'],
  ])('not where %s: %s', (_, text) => {
    expect(oilsForLye(text)).toBeUndefined();
  });
});

describe('weighed lye in weighed oils', () => {
  const lye = (grams: number, alkali: 'NaOH' | 'KOH' = 'NaOH') => ({ alkali, grams, purity: 1 });
  // 1000 g olive take 190 g KOH, 135.45 g NaOH.
  test.each([
    [128.7, 5, 'usual'],
    [135.45, 0, 'may-be-heavy'],
    [160, -18, 'lye-heavy'],
    [110, 18.8, 'soft'],
  ] as const)('%d g in a kilo of olive leave %d %%: %s', (grams, superfat, verdict) => {
    const check = checkLye(lye(grams), { oils: '1000 g olive' });
    expect(Math.abs(check.superfat.typical - superfat)).toBeLessThan(0.4);
    expect(verdictOf(check.superfat)).toBe(check.verdict);
    expect(check.verdict).toBe(verdict);
    expect(Math.abs(check.usualGrams - 128.7)).toBeLessThan(0.3);
    expect(check).toMatchObject({ oilGrams: 1000, usualPercent: 5 });
  });

  test('at another superfat, another size, and with the other alkali', () => {
    expect(checkLye(lye(128.7), { oils: '1000 g olive', superfat: 10 }).usualGrams).toBeCloseTo(121.9, 0);
    expect(checkLye(lye(64.35), { oils: '100% olive', sizeGrams: 500 }).superfat.typical).toBeCloseTo(5, 0);
    expect(checkLye(lye(180.5, 'KOH'), { oils: '1000 g olive' }).superfat.typical).toBeCloseTo(5, 0);
    expect(() => checkLye(lye(64), { oils: '100% olive' })).toThrow('size-missing');
  });

  test('an acid takes its lye first: 10 g citric acid, counted as its hydrate of 210.139 g/mol, take 5.71 g', () => {
    const plain = checkLye(lye(128.7), { oils: '1000 g olive' });
    const sour = checkLye(lye(128.7 + 5.71), { oils: '1000 g olive', additives: '10 g citric acid' });
    expect(sour.superfat.typical).toBeCloseTo(plain.superfat.typical, 1);
    expect(sour.usualGrams - plain.usualGrams).toBeCloseTo(5.71, 1);
  });

  test('a verdict is by what is left: none, perhaps none, as usual, much', () => {
    const of = (low: number, typical: number) => verdictOf({ low, typical, high: typical + 3 });
    expect([of(-4, -0.1), of(-0.1, 3), of(0, 3), of(12, 15), of(12, 15.1)]).toEqual([
      'lye-heavy',
      'may-be-heavy',
      'usual',
      'usual',
      'soft',
    ]);
  });

  test('a figure that slipped by tens is one that would be a usual recipe', () => {
    const slipped = (grams: number) => slippedTo(checkLye(lye(grams), { oils: '1000 g olive' }));
    expect([slipped(12.8), slipped(1.28), slipped(0.128)].map(one => one && Math.round(one))).toEqual([
      128, 128, 128,
    ]);
    expect([slipped(13.4), slipped(10.8), slipped(28), slipped(128)]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('of oils nobody named: more than coconut takes is too much for all, less hangs on them', () => {
    // Coconut and babassu take most, 248 to 265 mg KOH a gram (CXS 210): some 183 g NaOH a kilo.
    expect(lyeForAnyOil(lye(240), 1000)).toBe('too-much-for-all');
    expect(lyeForAnyOil(lye(150), 1000)).toBe('hangs-on-oils');
  });
});
