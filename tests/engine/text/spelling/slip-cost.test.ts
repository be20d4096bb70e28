import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { OILS } from '../../../../src/engine/batch/oils/index.ts';
import { slipCost } from '../../../../src/engine/text/spelling/slip-cost.ts';

const ROWS = ['qwertyuiop', 'asdfghjklñ', 'zxcvbnm'];
const isNeighbour = (one = '', other = ''): boolean =>
  ROWS.some((row, at) => {
    const place = row.indexOf(one);
    if (one === '' || other === '' || place < 0) return false;
    const around = [row[place - 1], row[place + 1], ROWS[at + 1]?.[place], ROWS[at + 1]?.[place - 1]];
    const above = ROWS[at - 1] ?? '';
    return [...around, above[place], above[place + 1]].includes(other);
  });
const PAIRS = 'ck cs kq cq sz cz bv vw gj yi ei eo ae ao ou ai jh mn xs xj dt ie ea oe oa uo io'.split(' ');
const areAlike = (one: string, other: string): boolean =>
  PAIRS.includes(one + other) || PAIRS.includes(other + one);
const isVowel = (letter: string): boolean => 'aeiouy'.includes(letter);

const replaced = (one: string, other: string): number =>
  one === other ? 0 : areAlike(one, other) ? 0.6 : isNeighbour(one, other) ? 0.7 : 1;
const leftOut = (letter: string, ...beside: (string | undefined)[]): number =>
  beside.includes(letter) ? 0.4 : letter === 'h' ? 0.5 : isVowel(letter) ? 0.7 : 0.8;
function tooMany(letter: string, ...beside: (string | undefined)[]): number {
  if (beside.includes(letter)) return 0.4;
  if (beside.some(one => isNeighbour(letter, one))) return 0.7;
  return isVowel(letter) || letter === 'h' ? 0.8 : 0.9;
}

/**
 * Optimal string alignment, as it is defined (Wagner and Lowrance 1975), of prefixes by prefixes: nothing is cut short, and no row is
 * used twice. The costs are those of `slip-cost.ts`.
 */
function theLongWay(typed: string, meant: string): number {
  const known = new Map<string, number>();
  const apart = (i: number, j: number): number => {
    const key = `${i} ${j}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const [one, other] = [typed[i - 1]!, meant[j - 1]!];
    const ways = i === 0 && j === 0 ? [0] : [];
    if (i > 0) ways.push(apart(i - 1, j) + tooMany(one, typed[i - 2], typed[i]));
    if (j > 0) ways.push(apart(i, j - 1) + leftOut(other, meant[j - 2], ...(i > 0 ? [meant[j]] : [])));
    if (i > 0 && j > 0) ways.push(apart(i - 1, j - 1) + replaced(one, other));
    if (i > 1 && j > 1 && one === meant[j - 2] && typed[i - 2] === other)
      ways.push(apart(i - 2, j - 2) + 0.6);
    known.set(key, Math.min(...ways));
    return known.get(key)!;
  };
  const isStart = typed[0] === meant[0] || areAlike(typed[0] ?? '', meant[0] ?? '');
  return typed === meant ? 0 : apart(typed.length, meant.length) + (isStart ? 0 : 0.4);
}

const NAMES = OILS.flatMap(({ names, synonyms }) => [names.en, names.es, ...synonyms]).flatMap(name =>
  name.toLowerCase().split(' '),
);
const letters = fc.constantFrom(...Array.from('abcdefghijklmnopqrstuvwxyzñéß-😀'));
const word = fc.oneof(
  fc.string({ unit: letters, maxLength: 12 }),
  fc.constantFrom(...NAMES),
  // One of our names with a letter between.
  fc
    .tuple(fc.constantFrom(...NAMES), fc.nat(8), letters)
    .map(([name, at, letter]) => name.slice(0, at) + letter + name.slice(at + 1)),
);

describe('how far a word is from the one that it was meant for', () => {
  property.prop([word, word], { numRuns: 500 })('is what the long way gives', (typed, meant) => {
    expect(slipCost(typed, meant)).toBe(theLongWay(typed, meant));
  });

  property.prop([word, word, fc.double({ min: 0, max: 4, noNaN: true })], { numRuns: 500 })(
    'is told exactly up to the most that is asked for, and beyond it as beyond',
    (typed, meant, most) => {
      const exact = theLongWay(typed, meant);
      if (exact <= most) expect(slipCost(typed, meant, most)).toBe(exact);
      else expect(slipCost(typed, meant, most)).toBeGreaterThan(most);
    },
  );

  test('two letters that change places cost what they cost in the middle of a word too, however little more is asked for', () => {
    // On the way between the two rows that a swap joins everything costs more than it does.
    expect(slipCost('oilve', 'olive', 0.6)).toBe(0.6);
    expect(slipCost('oilve', 'olive', 0.59)).toBeGreaterThan(0.59);
  });

  test('a text longer than any word is still measured', () => {
    const long = 'olive'.repeat(40);
    expect(slipCost(`${long}x`, long)).toBe(theLongWay(`${long}x`, long));
    expect(slipCost('olve', 'olive')).toBe(0.7);
  });
});
