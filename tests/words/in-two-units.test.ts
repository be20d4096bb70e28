import { expect, test } from 'vitest';
import { wordsIn } from '../../src/words/index.ts';

/* An ounce is 28.349523125 g (NIST Handbook 44, appendix C); ounces are rounded down, so that lye never grows by it. */

test.each(['en', 'es'] as const)(
  'a mass stands in the unit of whoever weighs, with the other beside it, in %s',
  language => {
    const { plan } = wordsIn(language);
    const grams = plan.weightInTwo(150, { decimals: 0, first: 'grams' });
    expect(grams.first).toBe('150 g');
    // 150 g are 5.2911 oz.
    expect(grams.other).toMatch(/^5[.,]29 oz$/u);
    const ounces = plan.weightInTwo(150, { decimals: 0, first: 'ounces' });
    expect([ounces.first, ounces.other]).toEqual([grams.other, grams.first]);
    expect(plan.weight(150, { decimals: 0, first: 'grams' })).toBe(`150 g (${grams.other})`);
  },
);

test('batter stands in millilitres, with cups beside them', () => {
  expect(wordsIn('en').plan.volumeInTwo({ millilitres: 473.2, cups: 2 })).toEqual({
    first: '473 ml',
    other: '2 cups',
  });
  expect(wordsIn('es').plan.volume({ millilitres: 236.6, cups: 1 })).toBe('237 ml (1 taza)');
});

test('what has one unit stands alone', () => {
  expect(wordsIn('en').plan.inTwo({ first: '5.1 %' })).toBe('5.1 %');
});
