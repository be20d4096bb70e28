import { describe, expect, test } from 'vitest';
import { leastAssignment } from '../../../../src/engine/colour/measuring/assignment.ts';
import { portionColours } from '../../../../src/engine/colour/measuring/portion-colours.ts';
import { nearestWord } from '../../../../src/engine/colour/reading/plain-words.ts';
import { parsePortionColours } from '../../../../src/engine/colour/reading/portion-colours-text.ts';
import { hexOfLab, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { refused } from '../../quantities/refused.ts';

describe('what portions became', () => {
  const portions = [{ names: ['violet', 'ultramarine violet'] }, { names: ['gold mica'] }];
  const read = (text: string, of = portions) => parsePortionColours(text, of).map(({ portion }) => portion);
  test.each([
    ['violet #6b5aa8; gold mica lab(70 5 40)', [0, 1]],
    ['2 #6b5aa8', [1]],
    ['gold #6b5aa8', [1]],
    ['gold mica rebeccapurple', [1]],
    ['violet #6b5aa8, gold mica #c9b04a', [0, 1]],
  ])('%s', (text, numbers) => {
    expect(read(text)).toEqual(numbers);
  });
  test.each([
    ['3 #6b5aa8', 'batch-colours-unreadable'],
    ['go #6b5aa8', 'batch-colours-unreadable'],
    ['#6b5aa8', 'batch-colours-unreadable'],
    ['violet', 'batch-colours-unreadable'],
    ['violet lab(120 0 0)', 'lab-out-of-range'],
    // It is in the names of both.
    ['mica #6b5aa8', 'answered'],
    ['ultramarine #6b5aa8', 'answered'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => read(text))).toBe(id);
  });
  test('one portion needs no name, and a name that two hold is nobody’s', () => {
    expect(read('#6b5aa8', [portions[0]!])).toEqual([0]);
    const both = [{ names: ['gold mica'] }, { names: ['blue mica'] }];
    expect(refused(() => read('mica #6b5aa8', both))).toBe('batch-colours-unreadable');
  });

  const sought = (hex: string, share: number) => ({ predicted: { lab: labOfHex(hex), plusMinus: 5 }, share });
  const seen = (hex: string, share: number) => ({ lab: labOfHex(hex), share, plusMinus: 3 });
  test('are given their colours so that all together lie nearest', () => {
    const found = portionColours(
      [sought('#3b4cae', 0.5), sought('#c9b04a', 0.5)],
      [seen('#c4a845', 0.5), seen('#4050a8', 0.5)],
    );
    expect(found.map(({ lab }) => hexOfLab(lab))).toEqual(['#4050a8', '#c4a845']);
    expect(found.map(({ unsure, plusMinus }) => [unsure, plusMinus])).toEqual([
      [false, 3],
      [false, 3],
    ]);
  });
  test('of like colours go by their shares, and are unsure where these are alike', () => {
    const two = [sought('#3b4cae', 0.8), sought('#3b4cae', 0.2)];
    const apart = portionColours(two, [seen('#3b4cae', 0.2), seen('#3b4cad', 0.8)]);
    expect(apart.map(({ lab }) => hexOfLab(lab))).toEqual(['#3b4cad', '#3b4cae']);
    expect(apart[0]!.unsure).toBe(false);
    const alike = portionColours(
      [sought('#3b4cae', 0.5), sought('#3b4cae', 0.5)],
      [seen('#3b4cae', 0.5), seen('#3b4cad', 0.5)],
    );
    expect(alike.every(({ unsure }) => unsure)).toBe(true);
  });
  test('of one portion are unsure where a second colour takes a quarter of the face', () => {
    const one = [sought('#3b4cae', 1)];
    expect(portionColours(one, [seen('#3b4cae', 0.75), seen('#c9b04a', 0.25)])[0]!.unsure).toBe(false);
    expect(portionColours(one, [seen('#3b4cae', 0.7), seen('#c9b04a', 0.3)])[0]!.unsure).toBe(true);
    expect(portionColours(one, [])).toEqual([]);
    expect(portionColours([], [seen('#3b4cae', 1)])).toEqual([]);
  });
  // By hand: the cheapest of the six ways.
  test('each row has a column of its own, at the least cost', () => {
    const costs = [
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ];
    expect(leastAssignment(costs)).toEqual({ columnOf: [1, 0, 2], total: 5 });
    expect(leastAssignment([[4], [2], [3]])).toEqual({ columnOf: [undefined, 0, undefined], total: 2 });
    expect(leastAssignment([[4, 1, 3]])).toEqual({ columnOf: [1], total: 1 });
    expect(leastAssignment([])).toEqual({ columnOf: [], total: 0 });
  });
  test('what has hardly any hue is called grey unless it is pale', () => {
    expect(nearestWord({ l: 50, a: 3, b: -8 })).toBe('grey');
    expect(nearestWord({ l: 50, a: 8, b: -24 })).not.toBe('grey');
    expect(nearestWord({ l: 85, a: 2, b: 5 })).not.toBe('grey');
    expect(nearestWord({ l: 10, a: 0, b: 0 })).toBe('black');
  });
});
