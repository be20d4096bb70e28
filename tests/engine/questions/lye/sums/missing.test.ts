import { describe, expect, test } from 'vitest';
import { checkLye } from '../../../../../src/engine/questions/lye/sums/check.ts';
import { lyeMissing } from '../../../../../src/engine/questions/lye/sums/missing.ts';
import * as inEnglish from '../../../../../src/words/en/index.ts';
import * as inSpanish from '../../../../../src/words/es/index.ts';

/** Saponification values of olive and coconut oil, mg KOH per g: Codex Alimentarius CXS 33-1981 and CXS 210-1999. */
const CODEX = { olive: [184, 196], coconut: [248, 265] } as const;
/** Molar masses, g/mol: IUPAC atomic weights. */
const KOH_TO_NAOH = 39.997 / 56.1056;
const taken = (end: 0 | 1) =>
  ((800 * CODEX.olive[end] + 200 * CODEX.coconut[end]) / 1000) * KOH_TO_NAOH * 0.95;

const weighed = (grams: number) =>
  checkLye({ alkali: 'NaOH', grams, purity: 1 }, { oils: '800 g olive, 200 g coconut', superfat: 5 });

describe('lye that is in already is taken off what the oils take, and the rest alone is told', () => {
  test.each([
    'my daughter stirred 90 g lye into the water already, how much more goes in',
    'there are 90 g in the jug. How much is missing?',
    'puse 90 g de sosa, ¿cuánta sosa me falta?',
    'ya hay 90 g de sosa en la jarra, cuánta más le pongo',
  ])('%s', question => {
    const rest = lyeMissing(question, weighed(90))!;
    expect(rest.missing).toBeGreaterThan(taken(0) - 90);
    expect(rest.missing).toBeLessThan(taken(1) - 90);
    // Never rounded up: what is in and what is missing are no more than all.
    expect(rest.missing + 90).toBeLessThanOrEqual(rest.all + 1e-9);
    expect(rest.all).toBeLessThanOrEqual(weighed(90).usualGrams);
  });
  test.each(['I put 90 g lye, is that right?', 'puse 90 g de sosa, ¿está bien?'])('%s is a check', question =>
    expect(lyeMissing(question, weighed(90))).toBeUndefined(),
  );
  test('nothing is missing where enough is in', () =>
    expect(lyeMissing('how much more lye goes in', weighed(150))).toBeUndefined());

  test('the missing grams are said first, then all of them, in both languages', () => {
    const rest = lyeMissing('how much more goes in', weighed(90))!;
    expect(inEnglish.lyeQuestions.missing(rest)).toMatch(/^47\.\d g NaOH are missing: 90 g are in, /u);
    expect(inEnglish.lyeQuestions.missingWhy(rest)).toContain('if you are not sure of it, add none');
    expect(inSpanish.lyeQuestions.missing(rest)).toMatch(/^Faltan 47,\d g de NaOH: ya hay 90 g, /u);
    expect(inSpanish.lyeQuestions.missingWhy(rest)).toContain('si no estás seguro, no añadas');
  });
});
