import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { emergenciesIn } from '../../../src/conversation/first-aid/told.ts';
import { readEmergencies } from '../../../src/engine/hazards/index.ts';
import { plainAmount } from '../../../src/engine/quantities/plain-amount.ts';
import { parsePortionRange } from '../../../src/engine/quantities/told/portion.ts';
import { parseStock } from '../../../src/engine/quantities/told/stock.ts';
import { UNIT_WORDS } from '../../../src/engine/quantities/unit-words.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

const read = (text: string, measures = MEASURES.us) => {
  try {
    return parsePortionRange(text, measures).low;
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.id;
    throw refusal;
  }
};

const figures = fc.oneof(
  fc.integer({ min: 0, max: 99_999 }).map(String),
  fc.double({ min: 0, max: 9_999, noNaN: true }).map(value => value.toFixed(2)),
);
const behind = fc.constantFrom('', ' oils', ' oil', ' aceite', ' batter', ' masa');

/** What of a jar is read, whatever it is; a refusal by its id. */
const stock = (text: string, measures = MEASURES.us) => {
  try {
    return parseStock(text, measures);
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.id;
    throw refusal;
  }
};

describe('a figure with its unit', () => {
  property.prop([figures, fc.constantFrom(...UNIT_WORDS), behind])(
    'of what a jar holds is read as the grammar reads it',
    (figure, unit, of) => {
      for (const measures of [MEASURES.us, MEASURES.metric])
        expect(stock(`${figure} ${unit}${of}`, measures)).toEqual(
          stock(`about ${figure} ${unit}${of}`, measures),
        );
    },
  );

  test('of what a jar holds is read from a milligram to 100 kg, and no further', () => {
    expect(stock('1 mg')).toEqual({ measure: 'mass', grams: 0.001 });
    expect(stock('0.99 mg')).toBe('amount-out-of-range');
    expect(stock('100 kg')).toEqual({ measure: 'mass', grams: 100_000 });
    expect(stock('100.01 kg')).toBe('amount-out-of-range');
    // A bare figure is grams: scales and jars say grams.
    expect(stock('25')).toEqual({ measure: 'mass', grams: 25 });
    // A US teaspoon is 4.92892 ml: NIST Handbook 44, appendix C.
    expect(stock('2 tsp')).toEqual({ measure: 'volume', millilitres: expect.closeTo(9.85784, 4) });
  });

  property.prop([figures, fc.constantFrom(...UNIT_WORDS), behind])(
    'is read as the grammar of all amounts reads it',
    (figure, unit, of) => {
      // "About" tells no more and no less, and is for the grammar.
      for (const measures of [MEASURES.us, MEASURES.metric])
        expect(read(`${figure} ${unit}${of}`, measures)).toEqual(
          read(`about ${figure} ${unit}${of}`, measures),
        );
    },
  );

  test('is of batter unless oils are told', () => {
    expect(read('500 g')).toEqual({ measure: 'mass', grams: 500, of: 'batter' });
    expect(read('500 g oils')).toEqual({ measure: 'mass', grams: 500, of: 'oils' });
    // A US cup is 236.588 ml: NIST Handbook 44, appendix C.
    expect(read('2.5 cups')).toMatchObject({ measure: 'volume', millilitres: expect.closeTo(591.47, 1) });
  });

  test.each([
    '1.500 kg',
    '1,500 g',
    '2-3 cups',
    '1/2 cup',
    '500 ml lye',
    '500',
    'ml',
    '2 cups in my eye',
    '',
  ])('%j is more than that, or less', text => expect(plainAmount(text)).toBeUndefined());

  test('is read from a millilitre to 200 l, and no further', () => {
    expect(read('1 ml')).toMatchObject({ millilitres: 1 });
    expect(read('0.99 ml')).toBe('amount-out-of-range');
    expect(read('200 l')).toMatchObject({ millilitres: 200_000 });
    expect(read('200.01 l')).toBe('amount-out-of-range');
  });

  property.prop([figures, fc.constantFrom(...UNIT_WORDS), behind])(
    'tells of no emergency, however it is read',
    (figure, unit, of) => {
      expect(readEmergencies(`${figure} ${unit}${of}`)).toEqual([]);
      expect(emergenciesIn([`${figure} ${unit}${of}`])).toEqual([]);
    },
  );
});
