import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import '../../../seed.ts';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { refused } from '../../quantities/refused.ts';

/** Grams of an ounce and of a pound: NIST Handbook 44, Appendix C. */
const [OUNCE, POUND] = [28.349523125, 453.59237] as const;
/** Millilitres of the cup that foods are labelled by in the United States: 21 CFR 101.9(b)(5)(viii). */
const LABEL_CUP = 240;

const gramsOf = (text: string): number => {
  const { low } = parsePortionRange(text);
  return low.measure === 'mass' ? low.grams : Number.NaN;
};
const millilitresOf = (text: string): number => {
  const { low } = parsePortionRange(text);
  return low.measure === 'volume' ? low.millilitres : Number.NaN;
};

const beside = fc.constantFrom(
  (one: string, other: string) => `${one} (${other})`,
  (one: string, other: string) => `${one}, ${other}`,
  (one: string, other: string) => `${one} = ${other}`,
  (one: string, other: string) => `about ${one}, ${other} on the scale`,
);

describe('an amount in two units is one amount', () => {
  property.prop([fc.integer({ min: 2, max: 64 }), beside])('ounces and grams', (ounces, put) => {
    const [imperial, metric] = [`${ounces} oz`, `${Math.round(ounces * OUNCE)} g`];
    for (const text of [put(imperial, metric), put(metric, imperial)])
      expect({ text, right: Math.abs(gramsOf(text) / (ounces * OUNCE) - 1) < 0.02 }).toEqual({
        text,
        right: true,
      });
  });

  property.prop([fc.integer({ min: 1, max: 12 }), beside])(
    'cups and the millilitres they were measured by',
    (cups, put) => {
      const [named, metric] = [cups === 1 ? '1 cup' : `${cups} cups`, `${cups * LABEL_CUP} ml`];
      for (const text of [put(named, metric), put(metric, named)])
        expect({ text, near: Math.abs(millilitresOf(text) / (cups * LABEL_CUP) - 1) < 0.02 }).toEqual({
          text,
          near: true,
        });
    },
  );

  // The imperial pint is 568.26 ml (Weights and Measures Act 1985, Schedule 1), a pound in markets of Spain and Mexico 460 or 500 g.
  test.each([
    ['one pint jug to the brim, 568 ml', 568],
    ['a pint of batter, 568 ml', 568],
    ['one quart, 1 litre', 1000],
  ])('%s', (text, millilitres) => expect(millilitresOf(text)).toBeCloseTo(millilitres, 0));

  test.each([
    ['una libra, 500 g', 500],
    ['a pound, 400 g', 400],
    ['a pound of it I should say, a pound of batter', POUND],
    ['1 lb 4 oz (567 g)', POUND + 4 * OUNCE],
  ])('%s', (text, grams) => expect(gramsOf(text)).toBeCloseTo(grams, 0));

  test('a powder and a batch too', () => {
    expect(readPowder('1 tsp (5 ml) rose clay')).toMatchObject({
      low: { millilitres: expect.closeTo(4.93, 2) },
      name: 'rose clay',
    });
    expect(parseSize('1 kg (2.2 lb) of oils')).toEqual({ by: 'oils', grams: 1000 });
  });
});

describe('what is a sum stays one', () => {
  property.prop([
    fc.integer({ min: 1, max: 9 }),
    fc.integer({ min: 1, max: 11 }),
    fc.constantFrom(' ', ', ', ' and '),
  ])('pounds and ounces', (pounds, ounces, joint) => {
    expect(gramsOf(`${pounds} lb${joint}${ounces} oz`)).toBeCloseTo(pounds * POUND + ounces * OUNCE, 3);
  });

  test.each([
    ['500 g and 200 g', 700],
    ['2 lb plus 100 g', 2 * POUND + 100],
    ['kilo y 200', 1200],
  ])('%s', (text, grams) => expect(gramsOf(text)).toBeCloseTo(grams, 3));

  test('a cup of a told size and two spoons more', () => {
    // A tablespoon is 14.79 ml: NIST Handbook 44, Appendix C.
    expect(millilitresOf('a cup (250 ml) and 2 tbsp')).toBeCloseTo(250 + 2 * 14.787, 1);
  });

  test.each(['400 g 200 g', '4 oz 1 lb', 'un kilo, 950 g', 'a pound, 300 g'])(
    '%s may be either, and is asked',
    text => expect(refused(() => parsePortionRange(text))).toBe('amount-unreadable'),
  );
});
