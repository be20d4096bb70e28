import { describe, expect, test } from 'vitest';
import { lyeAmissIn } from '../../../../../src/engine/questions/lye/slips/amiss.ts';
import {
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
} from '../../../../../src/engine/questions/lye/slips/told-amounts.ts';
import { acidTakesIn } from '../../../../../src/engine/questions/lye/sums/acid-takes.ts';
import { checkLye, slippedTo } from '../../../../../src/engine/questions/lye/sums/check.ts';
import {
  impureLyeIn,
  readyLyeIn,
  waterForLyeIn,
} from '../../../../../src/engine/questions/lye/sums/ready-lye.ts';
import { scaledIn } from '../../../../../src/engine/questions/lye/sums/scaled.ts';
import { lyeSpilledIn } from '../../../../../src/engine/questions/lye/sums/spilled.ts';

/** Reckoned by hand by a pharmacist who asked these, who had not seen what reads them: percent over, percent of superfat. */
const BY_HAND = [
  ['doubled the lye but not the oils. 500 g olive, 128 g lye. its in the mold', 100, -90, 'lye-heavy'],
  [
    'i put in an ounce over of lye in a 2 lb olive oil batch (recipe was 5%), what now?',
    24,
    -18,
    'lye-heavy',
  ],
  ['i was 10 g short on lye for 800 g olive oil, recipe said 103 g. still soap?', -9.7, 14, 'usual'],
  ['5 g too much lye in a 2 kg batch with 8% superfat, throw it out?', 2, 6, 'usual'],
  ['recipe lye 4.5 oz, i weighed 145 g. how far over am i?', 13.6, -8, 'lye-heavy'],
  ['dupliqué la sosa sin querer, 160 g para 600 g de oliva, todavía en la olla', 100, -97, 'lye-heavy'],
  [
    'me faltaron 20 g de aceite de coco en una receta de un kilo, 5% de sobreengrasado, ya está en el molde',
    2.7,
    2.5,
    'may-be-heavy',
  ],
  ['le puse 5 g de sosa menos de lo que decía, 134 decía, kilo de aceite', -3.7, 8.5, 'usual'],
  [
    'me sobraron 30 g de oliva en la jarra, era 1 kg con 5% de sobreengrasado. quedó cáustico?',
    3,
    2,
    'may-be-heavy',
  ],
  ['olvidé el ricino, eran 50 g de un kilo, la sosa ya estaba mezclada', 5, 0.5, 'may-be-heavy'],
  ['confundí onzas con gramos, decía 4 oz de soda y puse 40 g, 800 g de aceites', -65, 66, 'soft'],
] as const;

describe('lye that went in amiss', () => {
  test.each(BY_HAND)('%s', (question, over, superfat, verdict) => {
    const amiss = lyeAmissIn(question);
    expect(amiss?.verdict).toBe(verdict);
    expect(Math.abs(amiss!.percentOver - over)).toBeLessThan(1);
    expect(Math.abs(amiss!.superfat.typical - superfat)).toBeLessThan(1.6);
    expect(amiss!.superfat.low).toBeLessThan(amiss!.superfat.typical);
    expect(amiss!.superfat.high).toBeGreaterThan(amiss!.superfat.typical);
  });

  test('as much more of every oil brings back the superfat that was meant', () => {
    // Codex CXS 33: olive 184 to 196 mg KOH/g.
    const amiss = lyeAmissIn('I put 160 g lye instead of 128 g in 1000 g olive')!;
    expect(amiss.moreOilGrams).toBeCloseTo(250, 6);
    const { superfat } = checkLye(
      { alkali: 'NaOH', grams: 160, purity: 1 },
      { oils: `${1000 + amiss.moreOilGrams!} g olive` },
    );
    const meant = checkLye({ alkali: 'NaOH', grams: 128, purity: 1 }, { oils: '1000 g olive' });
    expect(superfat.typical).toBeCloseTo(meant.superfat.typical, 6);
  });

  test('of oils nobody named, what is over weighs as much as in olive and lard, and less than in coconut', () => {
    // Codex CXS 33 and 211: 184 to 203 mg KOH/g, so that 15 g NaOH are 10.4 to 11.4 points of 1000 g.
    const { superfat } = lyeAmissIn('15 g of lye too much in 1000 g oils at 5% superfat')!;
    expect(superfat.typical).toBeLessThan(5 - (100 * 15) / (203 * (39.997 / 56.105)));
    expect(superfat.typical).toBeGreaterThan(5 - (100 * 15) / (184 * (39.997 / 56.105)) - 0.1);
    const batch = lyeAmissIn('15 g of lye too much in a 1000 g batch at 5% superfat')!;
    expect(batch.superfat.low).toBeLessThan(superfat.low);
  });

  test('by percent alone, in either order of the words', () => {
    // 100 − 95 × 1.16
    for (const question of ['I put in 16 % too much lye', 'me pasé un 16% de sosa', 'lye was over by 16 %'])
      expect(lyeAmissIn(question)?.superfat.typical).toBeCloseTo(-10.2, 6);
    // 100 − 92 × 1.04
    expect(lyeAmissIn('4 % too much lye went in, recipe at 8% superfat')?.superfat.typical).toBeCloseTo(
      4.32,
      6,
    );
  });

  test.each([
    'I doubled the oils but forgot to double the lye - 1000 g olive and only 64 g lye in the pot',
    'dupliqué los aceites pero no la sosa: 1200 g de oliva y 77 g de sosa',
    'puse 200 g de agua en vez de 300 con 140 de sosa',
    'can I put 5 g more lye so it is harder',
    'my recipe: tallow 700 g, coconut 200 g, castor 100 g, lye 141 g, water 300 g. is that lye ok?',
    'scale was on ounces and i thought grams, i weighed 4.5 when recipe said 4.5 oz. so am i right?',
    'le agregué 50 g de oliva de más, qué pasa',
    '20 g extra water in a 1 kg batch, a problem?',
  ])('is not told of: %s', question => {
    expect(lyeAmissIn(question)).toBeUndefined();
  });

  test('a name may stand in front of each weight', () => {
    const amounts = toldAmounts(wordsOfBatch('aceite 1 kilo sosa 200 gramos agua 350'));
    expect(amounts.map(({ role, grams }) => [role, grams])).toEqual([
      ['whole', 1000],
      ['lye', 200],
      ['water', 350],
    ]);
    expect(lyeAndOilsAlone('aceite 1 kilo sosa 200 gramos agua 350')).toEqual({ lye: 200, oils: 1000 });
    expect(lyeAndOilsAlone('200 g lye in 700 g olive and 300 g coconut')).toBeUndefined();
    expect(lyeAndOilsAlone('200 g potash for 1000 g oils, koh')).toBeUndefined();
  });
});

describe('a decimal that slipped', () => {
  const check = (grams: number) =>
    slippedTo(checkLye({ alkali: 'NaOH', grams, purity: 1 }, { oils: '700 g olive, 300 g coconut' }));
  test('is asked by tens, and only where that would be a usual recipe', () => {
    expect(check(14.2)).toBeCloseTo(142, 6);
    expect(check(1.42)).toBeCloseTo(142, 6);
    expect(check(25)).toBeUndefined();
    expect(check(142)).toBeUndefined();
    expect(check(7)).toBeUndefined();
  });
});

describe('lye that an acid takes', () => {
  // Molar masses (CIAAW): NaOH 39.997, KOH 56.105, citric acid 192.124 with three protons, acetic acid 60.052 with one.
  test('by molar masses', () => {
    const citric = acidTakesIn('10 g citric acid in my batch, how much extra lye does that eat?');
    expect(citric?.told?.naoh).toBeCloseTo((10 * 3 * 39.997) / 192.124, 2);
    expect(citric?.told?.koh).toBeCloseTo((10 * 3 * 56.105) / 192.124, 2);
    const monohydrate = acidTakesIn('how much more lye for 10 g citric acid monohydrate');
    expect(monohydrate?.told?.naoh).toBeCloseTo((10 * 3 * 39.997) / 210.139, 2);
    const lactic = acidTakesIn('how much lye does 10 g of lactic acid take');
    expect(lactic?.told?.naoh).toBeCloseTo((10 * 39.997) / 90.078, 2);
  });

  test('vinegar by the share that is told, else as it is sold', () => {
    const five = acidTakesIn('i used 300 g of 5% vinegar instead of water, how much more lye do i need?');
    expect(five?.told?.naoh).toBeCloseTo((15 * 39.997) / 60.052, 2);
    const six = acidTakesIn('cambié el agua por vinagre, 250 g al 6%, cuánta sosa de más?');
    expect(six?.told?.naoh).toBeCloseTo((15 * 39.997) / 60.052, 2);
    const usual = acidTakesIn('how much lye does 100 ml vinegar use up');
    expect(usual?.told?.grams).toBe(100);
    expect(usual?.told?.naoh).toBeCloseTo((5 * 39.997) / 60.052, 2);
    expect(
      acidTakesIn('el ácido cítrico se come parte de la sosa no? cuánta por gramo')?.told,
    ).toBeUndefined();
  });

  test.each([
    'how much citric acid to fix lye heavy soap, how much lye does it take',
    'how much lye for 1000 g olive with 10 g citric acid',
    'can I put vinegar on lye',
  ])('is not told of: %s', question => {
    expect(acidTakesIn(question)).toBeUndefined();
  });
});

describe('lye of another strength', () => {
  test('lye water in the place of dry lye: half of 240 g is 120 g lye, the rest water that is there', () => {
    expect(
      readyLyeIn(
        'i have a jar of 50% lye solution premixed, recipe needs 120 g lye and 280 g water, how much of the jar?',
      ),
    ).toEqual({ strength: 50, lyeGrams: 120, solutionGrams: 240, waterGrams: 160 });
    expect(
      readyLyeIn('tengo lejía al 50% ya hecha, necesito 100 g de sosa, cuánto peso?')?.solutionGrams,
    ).toBe(200);
    expect(readyLyeIn('recipe needs 120 g lye, 5% superfat, is it ready')).toBeUndefined();
    expect(readyLyeIn('I need 120 g lye as 60% solution')).toBeUndefined();
  });

  test('lye that is not pure', () => {
    const impure = impureLyeIn('la sosa pesaba 128 pero el bote dice 96% de pureza, me falta?');
    expect(impure?.grams).toBeCloseTo(128 / 0.96, 9);
    expect(impureLyeIn('1 kg de oliva con sosa al 98% de pureza, 5%, cuánta?')).toBeUndefined();
    expect(impureLyeIn('500 g olive, lye 98 % pure, enough?')).toBeUndefined();
  });

  test('water for lye by strength or ratio, never less than lye', () => {
    expect(waterForLyeIn('agua para 130 g de sosa al 33%?')?.waterGrams).toBeCloseTo((130 * 67) / 33, 9);
    expect(waterForLyeIn('cuánta agua para 90 g de sosa, dos a uno')?.waterGrams).toBe(180);
    expect(waterForLyeIn('how much water for 90 g lye at 60%')).toBeUndefined();
  });
});

describe('a recipe made larger or smaller', () => {
  test.each([
    ['recipe is 500 g oils, 70 g lye, 150 g water. what is it doubled?', 1000, 140, 300],
    ['my recipe has 1200 g oils and 168 g lye. i only want 800 g oils, lye?', 800, 112, undefined],
    [
      'mi receta es para 600 g de aceites y lleva 84 g de sosa, la quiero de 1,5 kg, cuánta sosa?',
      1500,
      210,
      undefined,
    ],
    ['doble de la receta: 750 aceite, 102 sosa, 225 agua', 1500, 204, 450],
    ['la mitad de 1800 g de aceite, 250 g sosa, 540 agua?', 900, 125, 270],
  ])('%s', (question, oils, lye, water) => {
    const scaled = scaledIn(question)!;
    expect(scaled.oilGrams).toBeCloseTo(oils, 6);
    expect(scaled.lyeGrams).toBeCloseTo(lye, 6);
    expect(Math.round(scaled.waterGrams ?? 0)).toBe(water ?? 0);
  });

  test.each([
    'I doubled the lye by mistake, 140 g, 500 g oils',
    'double 500 g olive, 64 g lye',
    '500 g oils, 70 g lye',
  ])('is none: %s', question => {
    expect(scaledIn(question)).toBeUndefined();
  });
});

describe('lye water that was spilt', () => {
  test('takes lye and water alike', () => {
    // 100 − 95 × 413/423
    const spilled = lyeSpilledIn(
      'spilled about 10 g of my lye water before pouring, recipe 141 g lye in 282 g water, 1000 g oils. still ok?',
    );
    expect(spilled?.superfat).toBeCloseTo(100 - (95 * 413) / 423, 9);
    const asItStood = lyeSpilledIn(
      'se me derramó un poco de la sosa con agua, como 20 g de 420 g en total, ¿sigo?',
    );
    expect(asItStood?.percent).toBeCloseTo((100 * 20) / 420, 9);
  });

  test.each([
    'I spilled 10 g of lye water on my hand, 141 g lye in 282 g water',
    'spilled 300 g of my lye water, 141 g lye in 282 g water',
    'spilled lye water on the counter',
  ])('is not reckoned: %s', question => {
    expect(lyeSpilledIn(question)).toBeUndefined();
  });
});

describe('what is too much or too little of something else than lye', () => {
  test.each([
    'I put in 900 g of olive oil and 120 g of lye, but the olive bottle was 100 g short. 5% superfat, is that right?',
    'I was going to use 900 g of olive oil, but my scale always reads 100 g too much. By the scale I put in 900. Lye at 5%?',
    'I put 700 g of tallow in, 50 g less than I meant to. lye at 5%?',
    'Iba a usar 900 g de aceite de oliva, pero mi báscula marca siempre 100 g de más. Según la báscula puse 900. ¿Sosa con 5%?',
    'Tengo 500 g de oliva y 300 g de coco, salvo que de coco me faltan 50 g. ¿Sosa con 5%?',
    'Puse 800 g de manteca de cerdo, pero me faltan 50 g. ¿Sosa con 5%?',
  ])('is no lye that went in amiss: %s', question => {
    expect(lyeAmissIn(question)).toBeUndefined();
  });

  test.each([
    ['I put in an ounce over of lye in a 2 lb olive oil batch', 'lye-heavy'],
    ['Me pasé con 20 g de sosa en 500 g de oliva', 'lye-heavy'],
  ])('and lye beside its name is: %s', (question, verdict) => {
    expect(lyeAmissIn(question)?.verdict).toBe(verdict);
  });
});
