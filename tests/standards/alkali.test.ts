import { describe, expect, test } from 'vitest';
import { betaQuantile, betaShareAtMost } from '../../src/engine/stability/beta.ts';
import { checkIngredients } from '../../src/engine/stability/check.ts';

/** Words of the table of alkali behaviour map so: conditional stays conditional, lost colours are destroyed, moved ones shift. */
describe('what lye does, after published pigment references', () => {
  test.each<[string, string, string | undefined, string]>([
    [
      'Ultramarine Blue',
      'stable',
      undefined,
      'Ullmann, cited by Haz-Map: destroyed by acid, fairly resistant to alkali',
    ],
    [
      'Ferric Ferrocyanide',
      'destroyed',
      'rust',
      'Field and Salter, Chromatography; Terry, Pigments, Paint and Painting',
    ],
    ['Ferric Ammonium Ferrocyanide', 'destroyed', 'rust', 'as iron blue'],
    [
      'Manganese Violet',
      'destroyed',
      'beige',
      'pigment handbooks (Buxbaum), from memory: destroyed by strong acids and alkalis',
    ],
    [
      'Carmine',
      'shifts',
      'purple-then-dull',
      'JECFA specification of carmines, FNP 52 Add 8 (2000), from memory',
    ],
    ['Iron Oxides', 'stable', undefined, 'pigment handbooks (Buxbaum), from memory'],
    ['Chromium Oxide Greens', 'stable', undefined, 'Gettens and Stout, Painting Materials, p. 107'],
    ['Chromium Hydroxide Green', 'stable', undefined, '21 CFR 73.1326, extract in 2 % sodium hydroxide'],
    ['Titanium Dioxide', 'stable', undefined, 'pigment handbooks, from memory'],
    ['Carbon Black', 'stable', undefined, 'Encyclopaedia Britannica 1911'],
    ['Red 30 Lake', 'stable', undefined, 'organic pigment handbooks, from memory'],
    ['Yellow 5 Lake', 'conditional', 'redder', 'Pharmaceutical Research 1993;10:1458'],
    ['Red 40 Lake', 'conditional', 'duller-brown', 'Pharmaceutical Research 1993;10:1458'],
    ['Bismuth Oxychloride', 'conditional', 'greyer', 'general inorganic chemistry, from memory'],
    ['Zinc Oxide', 'conditional', undefined, 'general inorganic chemistry, from memory'],
    ['Anthocyanins', 'destroyed', 'yellow-brown', 'food chemistry, from memory'],
    ['Curcumin', 'shifts', 'peach-tan', 'indicator tables, from memory'],
    ['Spirulina Platensis Extract', 'destroyed', 'green-beige', 'food chemistry, from memory'],
    ['CI 74160', 'stable', undefined, 'organic pigment handbooks, from memory'],
    ['Polyester-3', 'conditional', undefined, 'pigment handbooks, from memory'],
    ['Aluminum Powder', 'never', undefined, 'general chemistry: hydrogen'],
  ])('%s is %s (toward %s): %s', (list, alkali, towards) => {
    const [component] = checkIngredients(list).components;
    expect(component?.alkali).toBe(alkali);
    expect(component?.towards).toBe(towards);
  });
});

describe('quantiles of the Beta distribution', () => {
  /** NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.3, upper 5 % points of F. */
  test.each([
    [1, 1, 161.448],
    [1, 10, 4.965],
    [2, 5, 5.786],
    [4, 6, 4.534],
    [5, 10, 3.326],
    [10, 20, 2.348],
  ])('F of %d and %d degrees of freedom: %d (NIST e-Handbook)', (d1, d2, critical) => {
    const share = betaQuantile(0.95, d1 / 2, d2 / 2);
    const f = (share / (1 - share)) * (d2 / d1);
    expect(Math.abs(f - critical)).toBeLessThan(critical > 100 ? 5e-3 : 5.1e-4);
  });

  /** Brown, Cai and DasGupta 2001, Interval Estimation for a Binomial Proportion, Jeffreys 95 % limits, n = 10 (from memory). */
  test.each([
    [1, 0.011, 0.381],
    [2, 0.044, 0.503],
    [5, 0.224, 0.776],
  ])('Jeffreys interval of %d in 10: %d to %d', (held, low, high) => {
    expect(betaQuantile(0.025, held + 0.5, 10.5 - held)).toBeCloseTo(low, 3);
    expect(betaQuantile(0.975, held + 0.5, 10.5 - held)).toBeCloseTo(high, 3);
  });

  test.each([
    [0.05, 1, 1, 0.05],
    [0.25, 2, 1, 0.5],
    [0.05, 1, 20, 1 - 0.95 ** (1 / 20)],
    [0.5, 7.3, 7.3, 0.5],
  ])('closed forms: p = %d of Beta(%d, %d) is %d', (p, a, b, share) => {
    expect(betaQuantile(p, a, b)).toBeCloseTo(share, 12);
  });

  test('the arcsine law: Beta(1/2, 1/2) holds 2/pi asin(sqrt x) at or below x', () => {
    for (const x of [0.01, 0.2, 0.5, 0.93]) {
      expect(betaShareAtMost(x, 0.5, 0.5)).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 12);
    }
  });
});
