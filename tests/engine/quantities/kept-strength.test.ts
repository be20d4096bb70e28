import { describe, expect, test } from 'vitest';
import {
  parseStrength,
  printStrength,
  readKeptStrength,
  type Strength,
} from '../../../src/engine/quantities/strength.ts';
import { reportRow } from '../../../src/presenting/evidence.ts';
import { wordsIn } from '../../../src/words/index.ts';

const strengths: readonly Strength[] = [
  { by: 'name', name: 'pastel' },
  { by: 'share', ofFull: 0.25 },
  { by: 'percent-of-oils', percent: 0.5 },
  { by: 'cup', tspPerCup: 0.25 },
  { by: 'pound-of-oils', tspPerPound: 1 },
];

describe('a strength that was kept as it was printed', () => {
  test.each(strengths)('%o reads back as it was', strength => {
    expect(readKeptStrength(printStrength(strength))).toEqual(strength);
  });

  // Reports from before percents named what they are of: a bare percent was of full colour.
  test.each([
    ['25%', 0.25],
    ['4%', 0.04],
    ['100%', 1],
  ])('%s is a share of full colour', (printed, ofFull) => {
    expect(readKeptStrength(printed)).toEqual({ by: 'share', ofFull });
  });

  test('typed today, the same percent is asked back or is of the oils', () => {
    expect(() => parseStrength('25%')).toThrow(/strength-percent-large/u);
    expect(parseStrength('4%')).toEqual({ by: 'percent-of-oils', percent: 4 });
  });

  test.each([
    ['en', '25%', '25 % of full colour'],
    ['es', '25%', '25 % del color pleno'],
    ['es', '0.5% of oils', '0,5 % de los aceites'],
    ['en', 'some', 'some'],
  ] as const)('a report in %s that says %s shows “%s”', (language, strength, shown) => {
    const report = { result: 'held', process: 'gel', strength, photo: false, mine: false } as never;
    expect(reportRow(report, wordsIn(language))).toContain(shown);
  });
});
