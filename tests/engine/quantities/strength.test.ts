import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  parseStrength,
  printStrength,
  STRENGTH_SHARES,
  type Strength,
  splitStrength,
} from '../../../src/engine/quantities/strength.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { refused } from './refused.ts';

describe('a strength is a name or a number of spoons', () => {
  test.each([
    ['tint', 'tint'],
    ['Pastel', 'pastel'],
    ['medio', 'medium'],
    ['FULL', 'full'],
    ['pleno', 'full'],
    ['toque', 'tint'],
    ['un toque', 'tint'],
    ['full colour', 'full'],
    ['color pleno', 'full'],
    ['pálido', 'pastel'],
  ])('%s', (text, name) => {
    expect(parseStrength(text)).toEqual({ by: 'name', name });
  });

  test.each([
    ['0.5', 0.5],
    ['0,25', 0.25],
    ['1/4', 0.25],
    ['½', 0.5],
    ['1/4 tsp', 0.25],
    ['1/4 tsp per cup', 0.25],
    ['1/4tsp/cup', 0.25],
    ['1/4 tsp per cup of batter', 0.25],
    ['½ cdta por taza', 0.5],
    ['1/4 cdta/taza', 0.25],
    ['media cucharadita por taza', 0.5],
    ['1 Tbsp per cup', 3],
  ])('%s is a number of teaspoons a cup', (text, tspPerCup) => {
    expect(parseStrength(text)).toEqual({ by: 'cup', tspPerCup });
  });

  test.each([
    '1 tsp ppo',
    '1 tsp per lb of oils',
    '1 tsp/lb',
    '1 cdta por libra de aceites',
    '1 tsp per pound',
  ])('%s is a teaspoon a pound of oils', text => {
    expect(parseStrength(text)).toEqual({ by: 'pound-of-oils', tspPerPound: 1 });
  });

  test('a percent is of the oils by weight, as makers count (common practice), unless it says of full', () => {
    expect(parseStrength('0.5%')).toEqual({ by: 'percent-of-oils', percent: 0.5 });
    expect(parseStrength('1 %')).toEqual({ by: 'percent-of-oils', percent: 1 });
    expect(parseStrength('1,5% de los aceites')).toEqual({ by: 'percent-of-oils', percent: 1.5 });
    expect(parseStrength('25% of full')).toEqual({ by: 'share', ofFull: 0.25 });
    expect(parseStrength('12,5% de pleno')).toEqual({ by: 'share', ofFull: 0.125 });
    expect(refused(() => parseStrength('25%'))).toBe('strength-percent-large');
  });

  test.each([
    ['half', 0.5],
    ['half strength', 0.5],
    ['mitad', 0.5],
    ['medio', 0.5],
    ['double', 2],
    ['doble', 2],
    ['quarter', 0.25],
    ['light', 0.25],
    ['claro', 0.25],
    ['very light', 0.125],
    ['dark', 1],
    ['deep', 1],
    ['oscuro', 1],
    ['intenso', 1],
    ['muy oscuro', 1],
  ])('%s is %s of full colour, never teaspoons', (text, ofFull) => {
    const read = parseStrength(text);
    expect(read.by === 'name' ? STRENGTH_SHARES[read.name] : read.by === 'share' && read.ofFull).toBe(ofFull);
  });

  test('a number word without a unit is asked back', () => {
    for (const text of ['two', 'dos', 'a third', 'one'])
      expect(refused(() => parseStrength(text))).toBe('strength-unreadable');
  });

  test.each([
    ['0', 'strength-out-of-range'],
    ['-1', 'strength-out-of-range'],
    ['100', 'strength-out-of-range'],
    ['abc', 'strength-unreadable'],
    ['', 'strength-unreadable'],
    ['2 cups', 'strength-unreadable'],
    ['1 g per cup', 'strength-unreadable'],
    ['🌈', 'strength-unreadable'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseStrength(text))).toBe(id);
  });

  test('five thousand characters are refused unread', () => {
    expect(refused(() => parseStrength('full '.repeat(1000)))).toBe('strength-unreadable');
  });

  test('the last word of a colour may be its strength', () => {
    expect(splitStrength('gold mica pastel')).toEqual({
      rest: 'gold mica',
      strength: { by: 'name', name: 'pastel' },
    });
    expect(splitStrength('gold mica')).toEqual({ rest: 'gold mica' });
    expect(splitStrength('pastel')).toEqual({ rest: 'pastel' });
  });
});

test('six in a hundred of the oils is a dose still, more is a share of full colour that was misnamed', () => {
  expect(parseStrength('6%')).toEqual({ by: 'percent-of-oils', percent: 6 });
  expect(refused(() => parseStrength('6.1%'))).toBe('strength-percent-large');
});

const anyStrength: fc.Arbitrary<Strength> = fc.oneof(
  fc.constantFrom('tint', 'pastel', 'medium', 'full').map(name => ({ by: 'name', name }) as const),
  fc.double({ min: 0.01, max: 9, noNaN: true }).map(ofFull => ({ by: 'share', ofFull }) as const),
  fc.double({ min: 0.01, max: 40, noNaN: true }).map(tspPerCup => ({ by: 'cup', tspPerCup }) as const),
  fc
    .double({ min: 0.01, max: 40, noNaN: true })
    .map(tspPerPound => ({ by: 'pound-of-oils', tspPerPound }) as const),
);

describe('for any strength', () => {
  test.prop([anyStrength])('what is printed reads back the same', strength => {
    const printed = printStrength(strength);
    expect(printStrength(parseStrength(printed))).toBe(printed);
    expect(parseStrength(printed).by).toBe(strength.by);
  });
  test.prop([fc.string({ unit: 'grapheme', maxLength: 80 })])('any text is a strength or a refusal', text => {
    try {
      parseStrength(text);
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
    }
  });
});
