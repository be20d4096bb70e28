import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parseCarrier, parsePremix } from '../../../src/engine/dosing/parse-premix.ts';
import type { Premix } from '../../../src/engine/dosing/request.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { MEASURES, US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { refused } from '../quantities/refused.ts';

const dosed = (premix: Premix | undefined, strength = 'full', portion = '1 cup', id = 'red-iron-oxide') => {
  const colourant = colourantById(id)!;
  return answerDose({
    portion: parsePortion(portion),
    colourants: [
      { colourant, strength: parseStrength(strength), ...(premix === undefined ? {} : { premix }) },
    ],
  });
};

describe('a premix is read as makers write it', () => {
  const paste = (carrier: string) => ({
    by: 'spoons',
    powderMillilitres: US_TEASPOON_ML,
    carrierMillilitres: 3 * US_TEASPOON_ML,
    carrier,
  });
  test.each([
    ['1 tsp in 1 Tbsp oil', 'oil'],
    ['1 tsp in 1 Tbsp of light oil', 'oil'],
    ['1 tsp in 1 T glycerine', 'glycerin'],
    ['1 cdta en 1 cda de aceite', 'oil'],
    ['1 tsp : 1 Tbsp water', 'water'],
    ['1 tsp in 1 Tbsp', 'oil'],
  ])('%s', (text, carrier) => {
    expect(parsePremix(text)).toEqual(paste(carrier));
  });

  test.each([
    ['30%', 0.3, 'glycerin'],
    ['30 % pigment', 0.3, 'glycerin'],
    ['12,5% in oil', 0.125, 'oil'],
    ['5 g in 15 g glycerin', 0.25, 'glycerin'],
    ['10 g en 30 g de aceite', 0.25, 'oil'],
  ])('%s', (text, pigmentShare, carrier) => {
    expect(parsePremix(text)).toEqual({ by: 'percent', pigmentShare, carrier });
  });

  test.each(['unknown', 'unknown in glycerin', 'desconocido', '?'])('%s', text => {
    expect(parsePremix(text)).toEqual({ by: 'unknown', carrier: 'glycerin' });
  });

  test.each([
    ['0%', 'premix-out-of-range'],
    ['100%', 'premix-out-of-range'],
    ['-5%', 'premix-unreadable'],
    ['5 cups in 1 tsp', 'premix-out-of-range'],
    ['1 g in 1 Tbsp oil', 'premix-unreadable'],
    ['soap', 'premix-unreadable'],
    ['', 'premix-unreadable'],
    ['1 tsp in oil', 'amount-unreadable'],
    ['1 tsp in 1 bucket', 'amount-unit-unknown'],
    ['1 tsp in '.repeat(600), 'premix-unreadable'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parsePremix(text))).toBe(id);
  });

  test('a carrier has its names', () => {
    expect(['Oil', 'aceite', 'glicerina', 'AGUA'].map(parseCarrier)).toEqual([
      'oil',
      'oil',
      'glycerin',
      'water',
    ]);
    expect(refused(() => parseCarrier('milk'))).toBe('carrier-unknown');
  });

  test.prop([fc.string({ unit: 'grapheme', maxLength: 80 })])('any text is a premix or a refusal', text => {
    try {
      parsePremix(text, MEASURES.metric);
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
    }
  });
});

describe('the member’s own paste of 1 tsp in 1 Tbsp oil', () => {
  const paste = parsePremix('1 tsp in 1 Tbsp oil');

  test('full red oxide in a cup is a quarter of it, by weight and by spoon', () => {
    const { premix, grams, teaspoons } = dosed(paste).doses[0]!;
    expect(teaspoons).toBe(0.25);
    expect(premix?.share).toBeCloseTo(0.25, 12);
    const wholePaste = grams.typical * 4 + 3 * US_TEASPOON_ML * 0.915;
    expect(premix?.grams.typical).toBeCloseTo(wholePaste / 4, 9);
    // A quarter of a tablespoon of oil, and a little for the solid powder.
    expect(premix?.teaspoons).toBeGreaterThan(0.75);
    expect(premix?.teaspoons).toBeLessThan(0.85);
  });

  test('it brings its own oil and needs no other', () => {
    const { doses, superfatShift, cautions } = dosed(paste);
    expect(doses[0]!.carrier).toMatchObject({ choice: 'oil', why: 'already-wetted' });
    expect(doses[0]!.carrier.millilitres).toBeCloseTo(0.75 * US_TEASPOON_ML, 9);
    expect(superfatShift).toBeDefined();
    expect(cautions.map(({ id }) => id)).not.toContain('dust');
  });

  test('a big portion takes several such pastes', () => {
    expect(dosed(paste, 'full', '20 cups').doses[0]!.premix?.share).toBeCloseTo(5, 9);
  });
});

describe('a bought premix', () => {
  test('of half pigment takes twice the grams of pigment', () => {
    const { premix, grams } = dosed(parsePremix('50%')).doses[0]!;
    expect(premix?.grams.typical).toBeCloseTo(2 * grams.typical, 9);
    expect(premix?.grams.low).toBeCloseTo(2 * grams.low, 9);
  });

  test('in glycerin is stick-blended', () => {
    expect(dosed(parsePremix('50%')).doses[0]!.carrier.blend).toBe('stick-blend');
  });

  test('in another carrier, when the member says so', () => {
    const asked = (id: string, text: string, carrier?: 'oil' | 'water') => () =>
      answerDose({
        portion: parsePortion('1 cup'),
        colourants: [
          {
            colourant: colourantById(id)!,
            strength: parseStrength('full'),
            premix: parsePremix(text),
            ...(carrier === undefined ? {} : { carrier }),
          },
        ],
      }).doses[0]!.carrier.choice;
    expect(asked('red-iron-oxide', '50%', 'oil')()).toBe('oil');
    expect(refused(asked('neon-pink', '50% in water'))).toBe('carrier-cannot-work');
    expect(refused(asked('neon-pink', '50%', 'water'))).toBe('carrier-cannot-work');
    expect(asked('beta-carotene', '30%')()).toBe('glycerin');
  });

  test('the same paste told by weight or by percent is the same dose', () => {
    expect(dosed(parsePremix('5 g in 15 g oil'))).toEqual(dosed(parsePremix('25% in oil')));
  });

  test('of unknown strength starts at a quarter of the full dose', () => {
    const { doses, cautions } = dosed(parsePremix('unknown'));
    expect(doses[0]!.premix?.teaspoons).toBeCloseTo(1 / 16, 12);
    expect(cautions.map(({ id }) => id)).toContain('premix-strength-unknown');
    expect(dosed(parsePremix('unknown'), 'tint').doses[0]!.premix?.teaspoons).toBeCloseTo(1 / 32, 12);
  });

  test.prop([fc.double({ min: 0.01, max: 0.94, noNaN: true })])('a weaker one takes more of it', share => {
    const used = (pigmentShare: number) =>
      dosed({ by: 'percent', pigmentShare, carrier: 'oil' }).doses[0]!.premix!;
    expect(used(share).grams.typical).toBeGreaterThan(used(share + 0.01).grams.typical);
    expect(used(share).teaspoons).toBeGreaterThan(used(share + 0.01).teaspoons);
  });
});
