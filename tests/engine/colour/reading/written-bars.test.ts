import { describe, expect, test } from 'vitest';
import { colourLast, parseBar, parseBarDose } from '../../../../src/engine/colour/reading/bar-text.ts';
import { parseBase } from '../../../../src/engine/colour/reading/base-text.ts';
import { parseMixedBar } from '../../../../src/engine/colour/reading/mixed-bar-text.ts';
import { colourDifference, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { refused } from '../../quantities/refused.ts';

describe('a bar as it is written', () => {
  const violet = labOfHex('#6b5aa8');
  test.each([
    ['blue 1 tsp: #6b5aa8', ['blue 1 tsp']],
    ['blue 1 tsp → #6b5aa8', ['blue 1 tsp']],
    ['full lab(52 20 -31)', ['full ']],
    ['blue 1 tsp', []],
    ['#6b5aa8', []],
  ])('%s: what stands before its colour', (text, before) => {
    expect(colourLast(text).map(one => one.before)).toEqual(before);
  });
  test('names of colours of three words and two are tried before one', () => {
    const tried = colourLast('blue 1 tsp dark slate blue');
    expect(tried.map(({ before }) => before)).toEqual(
      ['blue 1 tsp', 'blue 1 tsp dark', 'blue 1 tsp dark slate'].filter((_, index) => index < tried.length),
    );
    expect(colourDifference(tried[0]!.lab, labOfHex('#483d8b'))).toBeCloseTo(0, 6);
  });
  test.each([
    [
      'blue 1 tsp + white 1/2 tsp per cup: #6b5aa8',
      [
        ['blue', 1],
        ['white', 0.5],
      ],
    ],
    ['blue 1 tsp: #6b5aa8', [['blue', 1]]],
  ] as const)('%s', (text, parts) => {
    const bar = parseMixedBar(text, MEASURES.us, () => false)!;
    expect(
      bar.parts.map(({ name, dose }) => [name, dose.by === 'cup' && Math.round(dose.tspPerCup * 1e6) / 1e6]),
    ).toEqual(parts);
    expect(colourDifference(bar.lab, violet)).toBeCloseTo(0, 9);
  });
  test('of jars by weight, and none where no colour ends it', () => {
    expect(parseMixedBar('blue 2 g: #6b5aa8', MEASURES.us, () => false)?.parts).toEqual([
      { name: 'blue', dose: { by: 'grams-a-cup', grams: 2 } },
    ]);
    expect(parseMixedBar('blue 2 g', MEASURES.us, () => false)).toBeUndefined();
    expect(refused(() => parseMixedBar('a+b+c+d+e+f: #6b5aa8', MEASURES.us, () => false))).toBe(
      'mix-too-many',
    );
  });
  test.each([
    ['plain', { by: 'plain' }],
    ['sin color', { by: 'plain' }],
    ['0 tsp', { by: 'plain' }],
    ['0.8 g', { by: 'grams-a-cup', grams: 0.8 }],
    ['0.8 gramos por taza', { by: 'grams-a-cup', grams: 0.8 }],
    ['pastel =', { by: 'name', name: 'pastel' }],
    ['', undefined],
    ['zork', undefined],
  ])('the dose %s', (text, dose) => {
    expect(parseBarDose(text)).toEqual(dose);
  });
  test.each([
    ['full lab(100 128 -128)', 'answered'],
    ['full lab(100.1 0 0)', 'lab-out-of-range'],
    ['full lab(50 129 0)', 'lab-out-of-range'],
    ['full lab(50 0 -129)', 'lab-out-of-range'],
    ['zork lab(50 0 0)', 'test-bar-unreadable'],
    ['full', 'test-bar-unreadable'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseBar(text))).toBe(id);
  });

  test.each([
    ['cream', 'cream'],
    ['the green soap', 'green'],
    ['una base amarilla', 'yellow'],
    ['coconut', undefined],
    ['olive 60%, coconut 40%', undefined],
  ])('the base %s', (text, shade) => {
    expect(parseBase(text).shade).toBe(shade);
  });
  test.each([
    ['olive', 'green'],
    ['coconut', 'white'],
  ])('one oil alone: %s', (text, shade) => {
    expect(parseBase(`${text} oil`).shades).toEqual([{ shade, share: 1 }]);
  });
  test.each([
    ['purple', 'base-unreadable'],
    ['', 'base-unreadable'],
    [', 1', 'oil-unknown'],
    ['zork 60%, coconut 40%', 'oil-unknown'],
    ['olive 60%, coconut 30%', 'oils-percent-sum'],
  ])('the base %s is refused: %s', (text, id) => {
    expect(refused(() => parseBase(text))).toBe(id);
  });
});
