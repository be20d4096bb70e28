import { describe, expect, test } from 'vitest';
import { parseLye, speaksOfMasterbatch } from '../../../../src/engine/batch/lye/lye-choice.ts';
import { parseWater } from '../../../../src/engine/batch/lye/water.ts';
import { refusalOf } from '../asked.ts';

/** What a line is refused with, as id and values. */
const no = (read: () => unknown) => {
  const { id, values } = refusalOf(read);
  return { id, values };
};

describe('lye that is refused says what was written', () => {
  test.for([
    ['NaOH -95%', 'lye-unreadable'],
    ['NaOH - 95', 'lye-unreadable'],
    ['wood ash', 'lye-unreadable'],
    // A second number belongs to nothing.
    ['NaOH 95% 5%', 'lye-unreadable'],
    ['crystal drain cleaner', 'lye-drain-cleaner'],
    ['desatascador', 'lye-drain-cleaner'],
    // Carbonates of sodium and potassium make no soap of an oil.
    ['sodium carbonate', 'lye-not-hydroxide'],
    ['baking soda', 'lye-not-hydroxide'],
    ['potash', 'lye-potash-unclear'],
    ['potasa', 'lye-potash-unclear'],
    ['NaOH 2 cups', 'lye-by-volume'],
    ['NaOH 50% v/v', 'lye-by-volume'],
    ['NaOH 120 g', 'lye-weight-told'],
    ['KOH 4 oz', 'lye-weight-told'],
    ['dual lye 60/40', 'lye-shares-unclear'],
    ['both 30%', 'lye-shares-unclear'],
    // Dry potassium hydroxide is sold at 80 to 95 %: as a share of the two it would be a soft soap.
    ['both, KOH 80%', 'lye-shares-unclear'],
    ['50% 30% lye solution', 'lye-unreadable'],
    ['0% lye solution', 'lye-unreadable'],
    // Caustic to some, household bleach to others.
    ['lejía', 'lye-or-bleach'],
    ['lejia 4%', 'lye-or-bleach'],
  ] as const)('%s: %s', ([text, id]) => {
    expect(no(() => parseLye(text))).toEqual({ id, values: { text } });
  });

  test('a solution of both alkalis is refused: which is which cannot be weighed back', () => {
    expect(no(() => parseLye('50% solution of NaOH and KOH'))).toEqual({
      id: 'lye-solution-of-both',
      values: {},
    });
  });

  test.for([
    ['NaOH 60% KOH 30%', 90],
    ['NaOH 60% KOH 40.6%', 100.6],
    ['NaOH 60% KOH 20% 20%', 100],
  ] as const)('shares of %s add up to %d, not to a whole', ([text, sum]) => {
    const told = no(() => parseLye(text));
    expect(told.id).toBe('lye-shares-sum');
    expect((told.values as { sum: number }).sum).toBeCloseTo(sum, 9);
  });
});

describe('lye that is read', () => {
  test.for([
    ['lejía cáustica NaOH', { kind: 'NaOH' }],
    ['potasa cáustica', { kind: 'KOH' }],
    ['caustic potash', { kind: 'KOH' }],
    ['KOH 90', { kind: 'KOH', kohPurity: 0.9 }],
    ['NaOH 98', { kind: 'NaOH', naohPurity: 0.98 }],
    ['KOH 85,5 %', { kind: 'KOH', kohPurity: 0.855 }],
    ['50% NaOH solution', { kind: 'NaOH', solutionPercent: 50 }],
    ['KOH solution 45%', { kind: 'KOH', solutionPercent: 45 }],
    // Water to lye, as everywhere: two of water and one of lye is a third.
    ['masterbatch 1:1', { kind: 'NaOH', solutionPercent: 50 }],
    ['masterbatch 3:1', { kind: 'NaOH', solutionPercent: 25 }],
    ['masterbatch 1,5 to 1', { kind: 'NaOH', solutionPercent: 40 }],
    ['lejía madre 12 a 12', { kind: 'NaOH', solutionPercent: 50 }],
    // Lye kept dissolved is nearly always half water (common practice).
    ['premixed lye', { kind: 'NaOH', solutionPercent: 50 }],
  ] as const)('%s', ([text, lye]) => {
    expect(parseLye(text)).toStrictEqual(lye);
  });

  test.for([
    ['both', 0.05],
    ['NaOH and KOH', 0.05],
    ['both, KOH 79%', 0.79],
    ['both KOH 100%', 1],
    ['both NaOH 90%', 0.1],
    ['both, 12% KOH', 0.12],
    ['both, 12 potassium', 0.12],
    ['KOH 30% NaOH 70%', 0.3],
    ['NaOH 70% KOH 30%', 0.3],
    ['sodium hydroxide 5 potassium hydroxide 95', 0.95],
    // Rounded shares still make a whole within half a percent.
    ['NaOH 66.7% KOH 33.8%', 0.338],
    ['dual lye 50/50', 0.5],
  ] as const)('%s: %d of the work by potassium hydroxide', ([text, share]) => {
    const { kind, kohShare } = parseLye(text);
    expect(kind).toBe('both');
    expect(kohShare).toBeCloseTo(share, 9);
  });

  test('lye kept dissolved is told from lye that is dissolved for this batch', () => {
    expect(
      ['masterbatch', 'master batched lye', 'lejía madre', 'premezclada'].map(speaksOfMasterbatch),
    ).toEqual([true, true, true, true]);
    expect(speaksOfMasterbatch('33% lye solution')).toBe(false);
  });
});

describe('water', () => {
  test.for([
    ['-33% lye', 'water-unreadable'],
    ['- 2:1', 'water-unreadable'],
    ['plenty', 'water-unreadable'],
    ['33% water', 'water-unreadable'],
    ['33% of oils and lye', 'water-unreadable'],
    ['0% lye', 'water-unreadable'],
    ['0:1', 'water-unreadable'],
    ['2:0', 'water-unreadable'],
    ['1001% of oils', 'water-unreadable'],
    ['at 2:1 or so', 'water-unreadable'],
    ['2:1 or so', 'water-unreadable'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(no(() => parseWater(text))).toEqual({ id, values: { text } });
  });

  test('a bare percent, and a lye solution as strong as one that is kept, are asked back', () => {
    expect(no(() => parseWater(' 33 % '))).toEqual({ id: 'water-bare-percent', values: { percent: '33' } });
    expect(no(() => parseWater('45% lye solution'))).toEqual({
      id: 'water-or-masterbatch',
      values: { percent: '45' },
    });
    expect(parseWater('44% lye solution')).toEqual({ by: 'lye-strength', percent: 44 });
    expect(parseWater('45% lye')).toEqual({ by: 'lye-strength', percent: 45 });
  });

  test.for([
    ['3:2', { by: 'ratio', waterPerLye: 1.5 }],
    ['2 to 1 water to lye', { by: 'ratio', waterPerLye: 2 }],
    ['2,5 a 1', { by: 'ratio', waterPerLye: 2.5 }],
    ['38 percent of fat', { by: 'percent-of-oils', percent: 38 }],
    ['aceite 38 por ciento', { by: 'percent-of-oils', percent: 38 }],
    ['1000% of oils', { by: 'percent-of-oils', percent: 1000 }],
  ] as const)('%s', ([text, water]) => {
    expect(parseWater(text)).toEqual(water);
  });
});
