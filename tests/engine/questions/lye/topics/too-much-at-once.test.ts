import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lyeBeyondAllOils } from '../../../../../src/engine/questions/lye/topics/too-much-at-once.ts';

/*
 * Sodium hydroxide that a gram takes whole, at the high end: saponification values of Codex Alimentarius CXS 210-1999, table 2, in mg of
 * potassium hydroxide, over 1402.5: olive up to 196 (CXS 33-1981), coconut up to 265.
 */
const HIGH = { olive: 196 / 1402.5, coconut: 265 / 1402.5 } as const;
const LOST = 'some of the coconut spilled. Is it right?';

describe('lye that no pot of the oils named would take', () => {
  test('is never said of lye that all of them take', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 900 }),
        fc.integer({ min: 200, max: 900 }),
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        (olive, coconut, share) => {
          const whole = olive * HIGH.olive + coconut * HIGH.coconut;
          const text = `I weighed ${Math.floor(whole * share)} g lye. ${olive} g olive oil, ${coconut} g coconut oil, ${LOST}`;
          expect({ text, lye: lyeBeyondAllOils(text) }).toEqual({ text, lye: undefined });
        },
      ),
    ));

  test('is said of what is a seventh more, however weak it is sold', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 900 }),
        fc.integer({ min: 200, max: 900 }),
        (olive, coconut) => {
          const lye = Math.ceil((olive * HIGH.olive + coconut * HIGH.coconut) * 1.15);
          const text = `I weighed ${lye} g lye. ${olive} g olive oil, ${coconut} g coconut oil, ${LOST}`;
          expect({ text, lye: lyeBeyondAllOils(text) }).toEqual({ text, lye });
        },
      ),
    ));

  test.each([
    ['an oil without a weight', 'I weighed 300 g lye for olive and 300 g coconut oil, half spilled'],
    ['a share', '300 g lye. 60% olive oil, 40% coconut oil'],
    ['two weights of lye', '300 g lye, no, 200 g lye. 500 g olive oil'],
    ['as much of another', '300 g lye. 500 g olive oil, as much of coconut oil'],
    ['none weighed', 'how much lye for 500 g olive oil'],
  ])('is not said beside %s', (_, text) => expect(lyeBeyondAllOils(text)).toBeUndefined());

  test('a weight of nothing that is known counts as of the hungriest oil', () => {
    expect(lyeBeyondAllOils('90 g lye. 300 g olive oil, 300 g of zorple, is it right?')).toBeUndefined();
    expect(lyeBeyondAllOils('90 g lye. 300 g olive oil, is it right?')).toBe(90);
    expect(lyeBeyondAllOils('90 g lye. 300 g olive oil, 300 g water, is it right?')).toBe(90);
  });
});
