import { expect, test } from 'vitest';
import { parseLye } from '../../../src/engine/batch/lye/lye-choice.ts';
import { dilutionRise, lyeMixingRise } from '../../../src/engine/batch/lye/lye-solution.ts';
import { parseWater } from '../../../src/engine/batch/lye/water.ts';

/* How lye and its water are told as options; what may be meant in two ways is refused (common practice). */

const refused = (read: () => unknown): string | undefined => {
  try {
    read();
    return undefined;
  } catch (refusal) {
    return (refusal as { id: string }).id;
  }
};

test.each([
  ['2:1', { by: 'ratio', waterPerLye: 2 }],
  ['2 a 1', { by: 'ratio', waterPerLye: 2 }],
  ['2:1 water', { by: 'ratio', waterPerLye: 2 }],
  ['1:1', { by: 'ratio', waterPerLye: 1 }],
  ['1:1.25', { by: 'ratio', waterPerLye: 0.8 }],
  ['1:5', { by: 'ratio', waterPerLye: 0.2 }],
  ['33% lye', { by: 'lye-strength', percent: 33 }],
  ['44% lye solution', { by: 'lye-strength', percent: 44 }],
  ['38% of oils', { by: 'percent-of-oils', percent: 38 }],
])('water of %s', (text, water) => {
  expect(parseWater(text)).toEqual(water);
});
test.each([
  // One and a half to four parts of lye to one of water were likelier written the other way round.
  ['1:1.5', 'water-turned-round'],
  ['1:2', 'water-turned-round'],
  ['1:4', 'water-turned-round'],
  ['33%', 'water-bare-percent'],
  ['  33 % ', 'water-bare-percent'],
  ['33% of lye and oils', 'water-unreadable'],
  ['33% xyz', 'water-unreadable'],
  ['33%xyz', 'water-unreadable'],
  ['45% lye solution', 'water-or-masterbatch'],
  ['-2:1', 'water-unreadable'],
  ['0:1', 'water-unreadable'],
  ['1:0', 'water-unreadable'],
  ['1001% lye', 'water-unreadable'],
  ['. % lye', 'water-unreadable'],
  ['plenty', 'water-unreadable'],
])('water of %s is refused: %s', (text, id) => {
  expect(refused(() => parseWater(text))).toBe(id);
});
test('who wrote them the other way round is told both figures', () => {
  expect(() => parseWater('1:2')).toThrow(
    expect.objectContaining({ values: { text: '1:2', water: '1', lye: '2' } }),
  );
});

test.each([
  ['NaOH 97%', { kind: 'NaOH', naohPurity: 0.97 }],
  ['KOH 90', { kind: 'KOH', kohPurity: 0.9 }],
  ['lye solution', { kind: 'NaOH', solutionPercent: 50 }],
  ['lye solution 40%', { kind: 'NaOH', solutionPercent: 40 }],
  ['.5% lye solution', { kind: 'NaOH', solutionPercent: 0.5 }],
  ['lye solution 1:1', { kind: 'NaOH', solutionPercent: 50 }],
  ['lye solution 3:1', { kind: 'NaOH', solutionPercent: 25 }],
  ['KOH solution 50%', { kind: 'KOH', solutionPercent: 50 }],
  // Two alkalis: one percent is that of the alkali beside it, two make a whole in the order in which they are named.
  ['NaOH 60% + KOH 40%', { kind: 'both', kohShare: 0.4 }],
  ['KOH 60% + NaOH 40%', { kind: 'both', kohShare: 0.6 }],
  ['NaOH 60 KOH 40.5', { kind: 'both', kohShare: 0.405 }],
  ['NaOH 40% and KOH', { kind: 'both', kohShare: 0.6 }],
  ['KOH 40% and NaOH', { kind: 'both', kohShare: 0.4 }],
  ['both 50% and 50%', { kind: 'both', kohShare: 0.5 }],
  ['dual lye koh 60%', { kind: 'both', kohShare: 0.6 }],
  ['dual lye, potassium hydroxide at 60%', { kind: 'both', kohShare: 0.6 }],
])('lye told as %s', (text, lye) => {
  expect(parseLye(text)).toEqual(lye);
});
test.each([
  ['both 60%', 'lye-shares-unclear'],
  ['NaOH and KOH 90%', 'lye-shares-unclear'],
  ['both 60% and 40%', 'lye-shares-unclear'],
  ['both: KOH 60% and 40%', 'lye-shares-unclear'],
  ['both: NaOH 60% and 40%', 'lye-shares-unclear'],
  ['NaOH 60 KOH 41', 'lye-shares-sum'],
  ['NaOH + KOH 20% 30% 50%', 'lye-shares-sum'],
  ['KOH 90 95', 'lye-unreadable'],
  ['lye solution 50% 40%', 'lye-unreadable'],
  ['lye solution 0:0', 'lye-unreadable'],
  ['water', 'lye-unreadable'],
])('lye told as %s is refused: %s', (text, id) => {
  expect(refused(() => parseLye(text))).toBe(id);
});

test('water without alkali does not warm', () => {
  expect(lyeMixingRise(0, 0, 100)).toBe(0);
  expect(lyeMixingRise(0, 0, 0)).toBe(0);
  expect(dilutionRise(0, { waterBefore: 10, waterAfter: 100 })).toBe(0);
  expect(dilutionRise(0, { waterBefore: 0, waterAfter: 0 })).toBe(0);
});
