import { describe, expect, test } from 'vitest';
import { doseEvidence } from '../../../src/engine/flaws/reading/dose-evidence.ts';
import type { Measured } from '../../../src/engine/flaws/reading/measured.ts';
import type { Token } from '../../../src/engine/text/tokens.ts';

/** Words of a text, each with its place; figures and marks stand as they are. */
const tokensOf = (text: string): readonly Token[] =>
  text.split(' ').map((word, at) => {
    const kind = /^\d/.test(word) ? 'number' : /^\p{L}/u.test(word) ? 'word' : 'mark';
    return { kind, text: word, start: at, end: at + 1 };
  });

const amount = (value: number, measure: 'volume' | 'mass', from: number): Measured => ({
  value,
  measure,
  from,
  to: from + 2,
  per: false,
  cups: false,
});

const CUP_ML = 236.588;
const portion = (from: number): Measured => ({ ...amount(CUP_ML, 'volume', from), cups: true });
const findings = (...given: Parameters<typeof doseEvidence>) =>
  doseEvidence(...given).map(one => one.finding);

describe('spoons of nothing named are spoons of colour', () => {
  const told = tokensOf('30 ml for 1 cup');
  const says = (value: number, measure: 'volume' | 'mass', tokens = told) =>
    findings(tokens, [], [amount(value, measure, 0), portion(3)]);

  test('up to two tablespoons, and no jug', () => {
    expect(says(30, 'volume')).toContain('much-colour');
    expect(says(30.1, 'volume')).toEqual([]);
  });

  test('of a weight only a few grams in something', () => {
    const into = tokensOf('5 g in 1 cup');
    expect(says(5, 'mass', into).length).toBeGreaterThan(0);
    expect(says(5.1, 'mass', into)).toEqual([]);
    expect(says(5, 'mass')).toEqual([]);
  });
});

test('what is more than a hundred is the portion, and no colour', () => {
  const [tokens, mention] = [tokensOf('mica 1 g and 100 g of it'), { concept: 'mica', from: 0, to: 1 }];
  const rates = (grams: number) =>
    doseEvidence(tokens, [mention as never], [amount(1, 'mass', 1), amount(grams, 'mass', 4)]).filter(
      ({ rate }) => rate !== undefined,
    );
  expect(rates(101).length).toBeGreaterThan(0);
  expect(rates(100)).toEqual([]);
});

describe('a share of the oils', () => {
  const says = (percent: string) =>
    findings(tokensOf(`${percent} % charcoal on oils`), [{ concept: 'carbon', from: 2, to: 3 } as never], []);

  test('is colour up to fifteen percent; more is an oil’s', () => {
    expect(says('15')).toContain('much-colour');
    expect(says('15.1')).toEqual([]);
    expect(says('0')).toEqual([]);
  });

  test('is found in front of its name, behind one word, and behind its name', () => {
    const carbon = (at: number) => [{ concept: 'carbon', from: at, to: at + 1 } as never];
    expect(findings(tokensOf('15 % of charcoal'), carbon(3), [])).toContain('much-colour');
    expect(findings(tokensOf('charcoal 15 % there'), carbon(0), [])).toContain('much-colour');
    expect(findings(tokensOf('15 % of the charcoal'), carbon(4), [])).toEqual([]);
  });
});
