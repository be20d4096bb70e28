import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { legalShareOf, otherUseOf, underLaw } from '../../../src/engine/stability/legal-share.ts';
import { nameIn, permittedUses } from '../../../src/engine/stability/permitted.ts';
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

describe('the uses of one component', () => {
  const usesOf = (list: string) => permittedUses(checkIngredients(list).components[0]!);

  test('what is no known substance has none', () => {
    expect(permittedUses({ id: 'no such id', as: 'Moon dust' })).toEqual({ us: [], eu: [] });
  });

  // The plate under a pearl colours nothing, with or without a section of its own.
  test('a substrate is no colour', () => {
    const { us, eu } = usesOf('Synthetic Fluorphlogopite');
    expect([us, eu].map(uses => uses.map(({ status }) => status))).toEqual([['no-colour'], ['no-colour']]);
  });

  test('what is not listed is told by its name', () => {
    expect(usesOf('Charcoal Powder').us).toEqual([{ status: 'not-listed', name: 'Charcoal Powder' }]);
    expect(usesOf('Disodium EDTA').us).toEqual([{ status: 'no-colour', name: 'Disodium EDTA' }]);
  });

  // 21 CFR 82: lakes are those of certified colours; carmine is a lake by its making, and exempt from certification.
  test.for([
    ['Blue 1 Lake', true],
    ['Blue 1', false],
    ['Carmine', false],
    ['Iron Oxides', false],
  ] as const)('%s: a certified lake: %s', ([list, lake]) => {
    expect(usesOf(list).us).toEqual([expect.objectContaining({ status: 'listed', lake })]);
  });
});

describe('the tightest share', () => {
  const componentsOf = (list: string) => checkIngredients(list).components;

  // Annex IV: CI 12085 to 3 %, CI 42520 to 5 ppm.
  test('is that of the colour with the least, wherever it stands', () => {
    for (const list of ['CI 12085, CI 42520', 'CI 42520, CI 12085'])
      expect(legalShareOf(componentsOf(list))?.share).toBeCloseTo(5e-6, 12);
  });

  // 21 CFR 74.2208 is the US's limit, Annex IV entry 9 the EU's.
  test('names the law that limits it', () => {
    expect(legalShareOf(componentsOf('D&C Green No. 8'))?.law).toBe('us');
    expect(legalShareOf(componentsOf('CI 12085'))?.law).toBe('eu');
  });

  test('a dose that the law just allows is not called cut', () => {
    const dye = colourantById('red-40-dye')!;
    const green = componentsOf('D&C Green No. 8');
    const { dose } = underLaw(dye, green);
    expect(underLaw({ ...dye, dose }, green).legal).toBeUndefined();
  });

  test('is none of a colour that is not in the powder', () => {
    expect(legalShareOf([{ ...componentsOf('D&C Green No. 8')[0]!, percent: 0 }])).toBeUndefined();
  });

  test('holds the full dose too, not the ceiling alone', () => {
    const { dose } = underLaw(colourantById('red-40-dye')!, componentsOf('D&C Green No. 8'));
    expect(dose.fullTspPerCup).toBeLessThanOrEqual(dose.ceilingTspPerCup);
  });
});
