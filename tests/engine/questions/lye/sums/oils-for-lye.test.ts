import { describe, expect, test } from 'vitest';
import { oilsForLye } from '../../../../../src/engine/questions/lye/sums/inverse.ts';

/** Saponification values, mg KOH per g: Codex Alimentarius CXS 33-1981 (olive) and CXS 210-1999 (coconut). */
const OLIVE = [184, 196] as const;
const COCONUT = [248, 265] as const;
/** Molar masses, g/mol: IUPAC atomic weights. */
const NAOH = 39.997;
const KOH = 56.1056;

/** Grams of an oil that so many grams of pure NaOH saponify, with superfat in percent over. */
const gramsFor = (naoh: number, value: number, superfat: number) =>
  ((naoh / NAOH) * KOH * 1000) / value / (1 - superfat / 100);

describe('oil for lye that is weighed', () => {
  test.each([
    ['I have 100 g lye, how much olive oil', OLIVE, 100, 5],
    ['tengo 100 g de sosa, ¿cuánto aceite de oliva?', OLIVE, 100, 5],
    ['how much coconut oil do I need for 50 g NaOH at 20% superfat', COCONUT, 50, 20],
  ] as const)('%s', (question, [least, most], lye, superfat) => {
    const found = oilsForLye(question);
    expect(found?.superfat).toBe(superfat);
    expect(found!.grams.typical).toBeGreaterThanOrEqual(gramsFor(lye, most, superfat) - 1);
    expect(found!.grams.typical).toBeLessThanOrEqual(gramsFor(lye, least, superfat) + 1);
    expect(found!.grams.low).toBeLessThan(found!.grams.typical);
    expect(found!.grams.high).toBeGreaterThan(found!.grams.typical);
  });

  test.each([
    'I put 100 g lye in 700 g olive oil, is it safe',
    'how much lye for 500 g olive oil',
    'I have 100 g lye, how much water',
    'I have 100 g lye, how much magic oil',
  ])('%s is another question', question => {
    expect(oilsForLye(question)).toBeUndefined();
  });
});
