import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parsePremix } from '../../../src/engine/dosing/parse-premix.ts';
import { powderGrams } from '../../../src/engine/dosing/powder.ts';
import { premixFor } from '../../../src/engine/dosing/premix.ts';
import type { DoseAsked } from '../../../src/engine/dosing/request.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { refusalOf } from '../batch/asked.ts';

/*
 * Doses worked out by hand. Densities at 20 C: water 0.998 and glycerin 1.261 g/ml (CRC Handbook), light oils 0.915
 * (centre of the relative densities in Codex CXS 210).
 */

const jar = (id: string) => colourantById(id)!;
const ask = (id: string, strength = 'full', more: Partial<DoseAsked> = {}): DoseAsked => ({
  colourant: jar(id),
  strength: parseStrength(strength),
  ...more,
});
const answer = (portion: string, ...colourants: readonly DoseAsked[]) =>
  answerDose({ portion: parsePortion(portion), colourants });
const one = (portion: string, asked: DoseAsked) => answer(portion, asked).doses[0]!;

describe('a premix of a powder that weighs 4 g a solid millilitre', () => {
  const density = { low: 4, typical: 4, high: 4 } as unknown as Colourant['density'];
  const dry = { millilitres: 2, grams: { low: 1, typical: 2, high: 3 } };

  test('of 25 % pigment in water: 8 g hold 2 g, and 6 g of water are 6.01 ml beside 0.5 ml of powder', () => {
    const { grams, carrierMillilitres, millilitres, share } = premixFor(
      { by: 'percent', pigmentShare: 0.25, carrier: 'water' },
      dry,
      density,
    );
    expect(grams).toEqual({ low: 4, typical: 8, high: 12 });
    expect(carrierMillilitres).toBeCloseTo(6 / 0.998, 9);
    expect(millilitres).toBeCloseTo(6 / 0.998 + 0.5, 9);
    expect(share).toBeUndefined();
  });

  test('as a paste of 4 ml powder in 12 ml oil: half of it, 5.49 g of oil and 1 to 3 g of powder', () => {
    const { grams, carrierMillilitres, millilitres, share } = premixFor(
      { by: 'spoons', powderMillilitres: 4, carrierMillilitres: 12, carrier: 'oil' },
      dry,
      density,
    );
    expect(share).toBe(0.5);
    expect(carrierMillilitres).toBe(6);
    // Half of 4 g of powder at 4 g/ml takes up half a millilitre.
    expect(millilitres).toBeCloseTo(6.5, 9);
    expect(grams.low).toBeCloseTo(6 * 0.915 + 1, 9);
    expect(grams.typical).toBeCloseTo(6 * 0.915 + 2, 9);
    expect(grams.high).toBeCloseTo(6 * 0.915 + 3, 9);
  });

  test('of unknown strength: between bare glycerin and a paste of half pigment by weight', () => {
    const measured = premixFor({ by: 'unknown', carrier: 'glycerin' }, dry, density);
    // A gram of glycerin and a gram of powder fill 1/1.261 + 1/4 ml.
    const half = 2 / (1 / 1.261 + 1 / 4);
    expect(measured.millilitres).toBe(2);
    expect(measured.carrierMillilitres).toBe(2);
    expect(measured.grams.low).toBeCloseTo(2 * 1.261, 9);
    expect(measured.grams.high).toBeCloseTo(2 * half, 9);
    expect(measured.grams.typical).toBeCloseTo(1.261 + half, 9);
  });

  test('of a powder lighter than its carrier the bare carrier weighs the most', () => {
    const resin = { low: 1.1, typical: 1.1, high: 1.1 } as unknown as Colourant['density'];
    const { grams } = premixFor({ by: 'unknown', carrier: 'glycerin' }, dry, resin);
    expect(grams.high).toBeCloseTo(2 * 1.261, 9);
    expect(grams.low).toBeLessThan(grams.high);
  });
});

describe('what a level spoon weighs', () => {
  const bulkDensity = { low: 0.5, typical: 1, high: 1.5 } as unknown as Colourant['bulkDensity'];
  const weighed = (gramsPerTeaspoon?: number) =>
    powderGrams({ bulkDensity, teaspoons: 2, teaspoonMillilitres: 5, gramsPerTeaspoon });

  // Levelling strays by a twentieth either way (from memory).
  test('as weighed, to a twentieth either way; unweighed, as loose powders of that kind differ', () => {
    expect(weighed(3)).toEqual({ low: expect.closeTo(5.7, 12), typical: 6, high: expect.closeTo(6.3, 12) });
    expect(weighed()).toEqual({ low: 5, typical: 10, high: 15 });
  });

  test('from a tenth of a gram to twenty grams, both ends included', () => {
    expect(weighed(0.1).typical).toBeCloseTo(0.2, 12);
    expect(weighed(20).typical).toBe(40);
    expect(refusalOf(() => weighed(20.1))).toMatchObject({
      id: 'spoon-weight-out-of-range',
      values: { grams: 20.1, low: 0.1, high: 20 },
    });
  });

  test('whether the jar’s own spoon was weighed is said', () => {
    expect(one('1 cup', ask('gold-mica')).weighedSpoon).toBe(false);
    expect(one('1 cup', ask('gold-mica', 'full', { gramsPerTeaspoon: 2 })).weighedSpoon).toBe(true);
  });
});

describe('a jar twice as strong as its kind', () => {
  const strong = { timesKind: 2 };

  // A full cup of mica takes a teaspoon (common practice).
  test.each([
    ['full', 1 / 2],
    ['half', 1 / 4],
    ['pastel', 1 / 8],
  ])('takes half of what %s means', (strength, teaspoons) => {
    const dose = one('1 cup', ask('gold-mica', strength, strong));
    expect(dose.teaspoons).toBeCloseTo(teaspoons, 9);
    expect(dose.timesKind).toBe(2);
  });

  test('takes half of a quarter of full, where a share of full is asked', () => {
    const quarter = {
      ...ask('gold-mica', 'full', strong),
      strength: { by: 'share', ofFull: 1 / 4 } as const,
    };
    const dose = one('1 cup', quarter);
    expect(dose.teaspoons).toBeCloseTo(1 / 8, 9);
    expect([dose.timesKind, dose.overKind]).toEqual([2, 2]);
  });

  test('and what was said in spoons is taken as said', () => {
    const dose = one('1 cup', ask('gold-mica', '1/2 tsp per cup', strong));
    expect(dose.teaspoons).toBeCloseTo(0.5, 9);
    expect(dose.timesKind).toBeUndefined();
  });
});

test('half a percent of the oils, of a jar whose spoon was never weighed, goes by how heavy the kind lies', () => {
  const mica = jar('gold-mica');
  const dose = one('100 g oils', ask('gold-mica', '0.5%'));
  expect(dose.millilitres).toBeCloseTo(0.5 / mica.bulkDensity.typical, 9);
  expect(dose.grams.typical).toBeCloseTo(0.5, 9);
});

describe('spoons of what it is wetted in', () => {
  const tablespoon = { spoons: [{ spoon: '1 Tbsp', count: 1 }] };

  test('a teaspoon of mica in a tablespoon, and of its own paste three quarters', () => {
    expect(one('1 cup', ask('gold-mica')).carrier.spoons).toMatchObject(tablespoon);
    const paste = parsePremix('1 tsp in 1 Tbsp oil');
    const { carrier, premix } = one('4 cups', ask('red-iron-oxide', 'full', { premix: paste }));
    expect(carrier.spoons).toMatchObject(tablespoon);
    expect(premix?.share).toBeCloseTo(1, 9);
    expect(premix!.spoons.teaspoons).toBeCloseTo(premix!.teaspoons, 0);
    expect(premix!.teaspoons).toBeGreaterThan(3);
  });

  test('what was bought has no paste to take a share of', () => {
    expect(
      one('1 cup', ask('red-iron-oxide', 'full', { premix: parsePremix('30%') })).premix,
    ).not.toHaveProperty('share');
  });
});

describe('what the carriers do to this portion', () => {
  test('oil moves the superfat alone, water the lye alone, glycerin neither', () => {
    const of = (carrier: 'oil' | 'water' | 'glycerin') => {
      const { superfatShift, lyeShift } = answer('1 cup', ask('gold-mica', 'full', { carrier }));
      return [superfatShift !== undefined, lyeShift !== undefined];
    };
    expect(of('oil')).toEqual([true, false]);
    expect(of('water')).toEqual([false, true]);
    expect(of('glycerin')).toEqual([false, false]);
  });

  test('one colour that is stick-blended among others that are whisked is warned of', () => {
    const whisked = ask('gold-mica', 'pastel', { carrier: 'oil' });
    const blended = ask('ultramarine-blue', 'pastel', { carrier: 'glycerin' });
    const ids = (...all: readonly DoseAsked[]) => answer('1 cup', ...all).cautions.map(({ id }) => id);
    expect(ids(whisked, blended)).toContain('stick-blend-thickens');
    expect(ids(whisked)).not.toContain('stick-blend-thickens');
  });
});

test('a white that is just at its ceiling beside a mica: the mix is cut, not the whites among themselves', () => {
  const ids = answer('1 cup', ask('titanium-dioxide', '1 tsp per cup'), ask('gold-mica')).cautions.map(
    ({ id }) => id,
  );
  expect(ids).toContain('mix-scaled');
  expect(ids).not.toContain('whites-scaled');
});

describe('what is refused tells what was wrong and what would be right', () => {
  test('no colour at all is a fault of the program, six are one too many', () => {
    expect(() => answerDose({ portion: parsePortion('1 cup'), colourants: [] })).toThrow(RangeError);
    expect(() => answerDose({ portion: parsePortion('1 cup'), colourants: [] })).toThrow(/at least one/);
    const six = Array.from({ length: 6 }, () => ask('gold-mica', 'tint'));
    expect(refusalOf(() => answer('1 cup', ...six)).values).toEqual({ most: 5 });
  });

  test('what never meets lye, by its name', () => {
    const metal = { ...jar('gold-mica'), alkali: { behaviour: 'never' as const } };
    expect(
      refusalOf(() => answer('1 cup', { colourant: metal, strength: parseStrength('full') })).values,
    ).toEqual({ colourant: metal.names });
  });

  test('a carrier that a powder does not go into, and those that it does', () => {
    const colourant = { ...jar('neon-pink'), carriers: ['glycerin'] as const };
    const refusal = refusalOf(() =>
      answer('1 cup', {
        colourant,
        strength: parseStrength('full'),
        premix: parsePremix('30%'),
        carrier: 'oil',
      }),
    );
    expect(refusal.id).toBe('carrier-cannot-work');
    expect(refusal.values).toEqual({
      colourant: colourant.names,
      kind: 'neon',
      asked: 'oil',
      allowed: ['glycerin'],
    });
  });
});
