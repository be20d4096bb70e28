import { describe, expect, test } from 'vitest';
import { parsePortion } from '../../../../src/engine/quantities/told/portion.ts';
import { saidAmount } from '../../../../src/engine/quantities/told/said-amount.ts';
import { unitSize } from '../../../../src/engine/quantities/unit-words.ts';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { wordsIn } from '../../../../src/words/index.ts';

const [en, es] = [wordsIn('en').quantities, wordsIn('es').quantities];

/** As typed, and as each language says it. */
const AMOUNTS: readonly (readonly [typed: string, english: string, spanish: string])[] = [
  ['2 cups', '2 cups', '2 tazas'],
  ['1 taza', '1 cup', '1 taza'],
  ['1/2 cup', '1/2 cup', '1/2 taza'],
  ['1 1/2 tazas de masa', '1 1/2 cups batter', '1 1/2 tazas de masa'],
  ['2,5 tazas', '2 1/2 cups', '2 1/2 tazas'],
  ['500g', '500 g', '500 g'],
  ['500 g de aceites', '500 g oils', '500 g de aceites'],
  ['500 g of oils', '500 g oils', '500 g de aceites'],
  ['1.5 l batter', '1.5 l batter', '1,5 l de masa'],
  ['1 lb oils', '1 lb oils', '1 lb de aceites'],
  ['2 cdas', '2 Tbsp', '2 cda'],
  ['2 T', '2 Tbsp', '2 cda'],
  ['8 fl oz', '8 fl oz', '8 fl oz'],
  ['2 pints', '2 pints', '2 pintas'],
  ['12 bars of 100 g', '12 bars of 100 g', '12 pastillas de 100 g'],
  // Whatever else is typed stays as it is, but for the decimal sign.
  ['1 lb 4 oz', '1 lb 4 oz', '1 lb 4 oz'],
  ['a good half of 2.5 l', 'a good half of 2.5 l', 'a good half of 2,5 l'],
];

describe('an amount that was told', () => {
  test.each(AMOUNTS)('%s is said in the words of whoever reads it', (typed, english, spanish) => {
    expect([en.said(saidAmount(typed)), es.said(saidAmount(typed))]).toEqual([english, spanish]);
  });

  test.each([
    '2 cups',
    '1 1/2 tazas de masa',
    '2,5 tazas',
    '500 g de aceites',
    '1.5 l',
    '1 lb oils',
    '2 pints',
  ])('%s is taken apart as its reader reads it, and read alike in either language', typed => {
    const read = parsePortion(typed);
    const said = saidAmount(typed);
    if (!('unit' in said)) throw new Error(typed);
    const { measure, size } = unitSize(said.unit, MEASURES.us);
    expect({
      measure,
      [measure === 'mass' ? 'grams' : 'millilitres']: said.count * size,
      of: said.of ?? 'batter',
    }).toEqual(read);
    expect([en.said(said), es.said(said)].map(one => parsePortion(one))).toEqual([read, read]);
  });

  test('a mark with three figures behind it may be thousands, and stays as it was typed', () => {
    expect(saidAmount('1,250 g oils')).toEqual({ typed: '1,250 g', of: 'oils' });
  });
});
