import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { otherUseOf } from '../../../src/engine/stability/legal-share.ts';
import { nameIn } from '../../../src/engine/stability/permitted.ts';
import { permittedSummary } from '../../../src/engine/stability/permitted-summary.ts';

const summaryOf = (list: string) => permittedSummary(checkIngredients(list).components);

/**
 * 21 CFR parts 73 and 74, subparts C; Annex IV of Regulation (EC) No 1223/2009. What decides is named.
 */
describe('where a whole powder stands with the law', () => {
  test.for<[string, string, readonly string[], string, readonly string[]]>([
    // 21 CFR 73.2250; Annex IV 135.
    ['Iron Oxides', 'listed', ['Iron Oxides'], 'listed', ['Iron Oxides']],
    // 73.2496; in the EU mica is no colour but a filler.
    ['Mica', 'listed', ['Mica'], 'no-colour', ['Mica']],
    // 74.2208: to 0.01 % of the finished product; Annex IV 91: not on mucous membranes.
    ['D&C Green No. 8', 'limited', ['Green 8'], 'limited', ['Green 8']],
    // No row in our copy of the US list; Annex IV 10.
    ['CI 12120', 'check', ['CI 12120'], 'listed', ['CI 12120']],
    // No colour additive in the US; Annex IV 128.
    ['Charcoal Powder', 'not-listed', ['Charcoal Powder'], 'listed', ['Charcoal Powder']],
    // 74.2052: eye pencils, brows, lips and the like, no soap.
    ['Carbon Black', 'other-use', ['Black 2'], 'limited', ['Black 2']],
    // 73.2190: hair.
    ['Henna', 'other-use', ['Lawsonia Inermis Leaf Powder'], 'check', ['Lawsonia Inermis Leaf Powder']],
    ['Glycerin', 'no-colour', ['Glycerin'], 'no-colour', ['Glycerin']],
    ['moonbeams', 'no-colour', [], 'no-colour', []],
    // The worst of several decides.
    ['Mica, Charcoal Powder', 'not-listed', ['Charcoal Powder'], 'listed', ['Charcoal Powder']],
    [
      'Mica, Green 8, Carbon Black, Charcoal Powder',
      'other-use',
      ['Black 2'],
      'limited',
      ['Green 8', 'Black 2'],
    ],
    ['Iron Oxides, CI 12120, Green 8', 'check', ['CI 12120'], 'limited', ['Green 8']],
    ['Mica, Iron Oxides', 'listed', ['Mica', 'Iron Oxides'], 'listed', ['Iron Oxides']],
    ['Glycerin, Mica', 'listed', ['Mica'], 'no-colour', ['Glycerin', 'Mica']],
    [
      'Charcoal Powder, CI 12120',
      'not-listed',
      ['Charcoal Powder'],
      'listed',
      ['Charcoal Powder', 'CI 12120'],
    ],
  ])('%s: US %s %j, EU %s %j', ([list, us, usNames, eu, euNames]) => {
    expect(summaryOf(list)).toEqual({
      us: { standing: us, because: usNames },
      eu: { standing: eu, because: euNames },
    });
  });

  test('an ingredient that is there twice is named once', () => {
    const [iron] = checkIngredients('Iron Oxides').components;
    expect(permittedSummary([iron!, iron!]).us.because).toEqual(['Iron Oxides']);
  });
});

test('a substance is told by its own name, a member of a family by what the list wrote', () => {
  expect(nameIn({ id: 'green-8', as: 'CI 59040' })).toBe('Green 8');
  expect(nameIn({ id: 'no such id', as: 'Moon dust' })).toBe('Moon dust');
  const [boron] = checkIngredients('Boron Nitride').components;
  expect(nameIn(boron!)).toBe('Boron Nitride');
});

/** 21 CFR 73.2125 teeth, 73.2190 hair, 73.2500 nails, 73.2995 novelty make-up, 74.2052 make-up, 74.2053 eyes. */
test.for([
  ['Henna', 'hair'],
  ['Luminescent Zinc Sulfide', 'novelty-make-up'],
  ['Carbon Black', 'make-up'],
  ['D&C Black No. 3', 'eyes'],
  ['Iron Oxides', undefined],
  ['Charcoal Powder', undefined],
  ['Glycerin', undefined],
] as const)('%s is listed for %s alone', ([list, use]) => {
  expect(otherUseOf(checkIngredients(list).components[0]!)).toBe(use);
});
