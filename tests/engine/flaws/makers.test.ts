import { describe, expect, test } from 'vitest';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import { consider } from '../../../src/engine/flaws/consider.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import { flawWords } from '../../../src/engine/flaws/reading/concepts.ts';
import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import { LONGEST_WORDS } from '../../../src/engine/text/tokens.ts';
import { leastCpu } from '../../cpu-time.ts';
import { drawn } from '../../walk.ts';
import { described } from './evaluate.ts';
import beginner from './makers/beginner.json' with { type: 'json' };
import seller from './makers/seller.json' with { type: 'json' };
import six from './makers/six-makers.json' with { type: 'json' };
import { type FlawLine, type FlawScore, scoreFlaws, scoreText } from './score-flaws.ts';

type MakerList = {
  readonly maker: string;
  readonly firstRun: { readonly first: number; readonly firstThree: number; readonly total: number };
  readonly lines: readonly FlawLine[];
};

/** Lists by other hands, written before the rules; the first two were tuned to after their first run, the third never, nor learned from. */
const LISTS = [
  { list: beginner as MakerList, first: 106, firstThree: 109 },
  { list: seller as MakerList, first: 107, firstThree: 109 },
  { list: six as MakerList, first: 116, firstThree: 118 },
];

describe.each(LISTS)('as $list.maker tells it', ({ list, first, firstThree }) => {
  test(`the right cause comes first in ${first} of ${list.firstRun.total} and among three in ${firstThree}`, () => {
    const score = scoreFlaws(list.lines);
    console.info(`${scoreText(list.maker, score)}\n  first run: ${JSON.stringify(list.firstRun)}`);
    expect(list.lines).toHaveLength(list.firstRun.total);
    expect(score.first).toBeGreaterThanOrEqual(first);
    expect(score.firstThree).toBeGreaterThanOrEqual(firstThree);
  });

  test('and the list tells of every cause that was known when it was written', () => {
    expect(new Set(list.lines.map(({ cause }) => cause))).toEqual(new Set(CAUSE_IDS.slice(0, 41)));
  });
});

/** Descriptions kept out of tuning, in two halves: one to fit a temperature, one to check it. */
const kept = described('heldout').filter(item => item.cause !== null) as FlawLine[];
const [fitted, checked] = [kept.filter((_, i) => i % 2 === 0), kept.filter((_, i) => i % 2 === 1)];

/** Mean surprise, in nats, at whether the first cause was right, with its odds raised to 1 / temperature. */
function surprise(outcomes: readonly (readonly [number, boolean])[], temperature: number): number {
  const sum = outcomes.reduce((total, [chance, hit]) => {
    const p = Math.min(0.999, Math.max(0.001, chance));
    const odds = (p / (1 - p)) ** (1 / temperature);
    return total - Math.log(hit ? odds / (1 + odds) : 1 / (1 + odds));
  }, 0);
  return sum / outcomes.length;
}

const outcomesOf = (lines: readonly FlawLine[]) =>
  lines.map(({ text, cause, also = [] }) => {
    const [top] = diagnose(text).causes;
    return [top?.probability ?? 0, top?.id === cause || also.includes(top?.id as never)] as const;
  });

const from = ({ reliability }: FlawScore, low: number) => {
  const rows = reliability.filter(row => row.low >= low);
  const cases = rows.reduce((sum, row) => sum + row.cases, 0);
  return { cases, right: rows.reduce((sum, row) => sum + row.right * row.cases, 0) / cases };
};

describe('chances mean what they say', () => {
  test('of what is called 90 % or more, nine in ten are right on texts it was not tuned to', () => {
    const score = scoreFlaws(checked);
    console.info(scoreText('kept out of tuning, second half', score));
    const sure = from(score, 0.9);
    expect(sure.cases).toBeGreaterThan(100);
    expect(sure.right).toBeGreaterThanOrEqual(0.9);
    for (const row of score.reliability.filter(({ cases }) => cases >= 10))
      expect(Math.abs(row.stated - row.right)).toBeLessThan(0.2);
  });

  // Temperature scaling: Guo, Pleiss, Sun, Weinberger 2017, On Calibration of Modern Neural Networks.
  test('a temperature fitted on one half lies near 1, so that on the other half it would mend nothing', () => {
    const outcomes = outcomesOf(fitted);
    const steps = Array.from({ length: 31 }, (_, i) => 0.5 + i * 0.05);
    const best = steps.reduce((least, t) => (surprise(outcomes, t) < surprise(outcomes, least) ? t : least));
    const others = outcomesOf(checked);
    console.info(
      `temperature ${best.toFixed(2)}: surprise on the other half ${surprise(others, 1).toFixed(3)} as stated, ${surprise(others, best).toFixed(3)} with it`,
    );
    expect(best).toBeGreaterThanOrEqual(0.7);
    expect(best).toBeLessThanOrEqual(1.4);
    expect(surprise(others, 1)).toBeLessThan(surprise(others, best) + 0.02);
  });

  test('one word never gives 70 %', () => {
    const given = drawn([...flawWords()], 1000, 'one word').map(
      word => [word, Math.max(...Object.values(consider(word).posterior.causes))] as const,
    );
    expect(flawWords().size).toBeGreaterThan(3000);
    expect(given.filter(([, chance]) => chance >= 0.7)).toEqual([]);
  });

  test.each(['my soap cracked, why?', 'help, there are spots', 'se agrietó', 'it is soft', 'white stuff'])(
    'nor does a sentence that hangs on one: %s',
    words => {
      expect(diagnose(words).causes[0]?.probability ?? 0).toBeLessThan(0.7);
    },
  );
});

describe('one story under two names: rivers and white-pigment crackle', () => {
  const chances = (words: string) => {
    const all = new Map(diagnose(words).causes.map(({ id, probability }) => [id, probability]));
    return {
      crackle: all.get('white-pigment-crackle') ?? 0,
      rivers: all.get('glycerin-rivers') ?? 0,
    };
  };

  test.each([
    'see-through veins all through the bar, it gelled hot',
    'translucent veins in the white part only, titanium dioxide, it gelled',
    'crackled lines like old china and translucent rivers everywhere',
    'vetas transparentes por todo el jabón, se calentó',
    'glycerin rivers, or is it crackle? I used titanium dioxide',
  ])('never take more than the whole between them: %s', words => {
    const { crackle, rivers } = chances(words);
    expect(crackle + rivers).toBeGreaterThan(0.3);
    expect(crackle + rivers).toBeLessThanOrEqual(1);
  });

  test.each([
    [
      'translucent veins only in the white part, with titanium dioxide',
      'translucent veins all through the brown bar, no white pigment in it',
    ],
    [
      'vetas translúcidas solo en la parte blanca, lleva dióxido de titanio',
      'vetas translúcidas por toda la barra café, sin dióxido de titanio',
    ],
  ])('the white tells which: %s / %s', (white, other) => {
    expect(chances(white).crackle).toBeGreaterThan(chances(white).rivers);
    expect(chances(other).rivers).toBeGreaterThan(chances(other).crackle);
  });
});

test('5,000 characters are read in under 50 ms of processor time', async () => {
  const text = (beginner as MakerList).lines
    .map(line => line.text)
    .join('. ')
    .slice(0, LONGEST_WORDS);
  expect(text).toHaveLength(LONGEST_WORDS);
  expect(await leastCpu(() => readWords(text), 50)).toBeLessThan(50);
});
