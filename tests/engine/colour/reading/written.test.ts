import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { parseBar } from '../../../../src/engine/colour/reading/bar-text.ts';
import { parseBase } from '../../../../src/engine/colour/reading/base-text.ts';
import { parseMix } from '../../../../src/engine/colour/reading/mix-text.ts';
import { MEASURES, US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { refused } from '../../quantities/refused.ts';

const mix = (text: string) =>
  parseMix(text, MEASURES.us).map(({ name, dose }) => [
    name,
    dose.by === 'amount'
      ? dose.amount.measure === 'volume'
        ? `${Math.round((dose.amount.millilitres / US_TEASPOON_ML) * 64) / 64} tsp`
        : `${dose.amount.grams} g`
      : dose,
  ]);
const named = (name: string) => ({ by: 'name', name });

describe('a mix as members write it', () => {
  test.each([
    [
      'ultramarine violet pastel + titanium dioxide 1/4 tsp',
      [
        ['ultramarine violet', named('pastel')],
        ['titanium dioxide', '0.25 tsp'],
      ],
    ],
    [
      '1/4 tsp ultramarine violet, 1/16 tsp ultramarine blue',
      [
        ['ultramarine violet', '0.25 tsp'],
        ['ultramarine blue', '0.0625 tsp'],
      ],
    ],
    [
      '2 g gold mica and white tint',
      [
        ['gold mica', '2 g'],
        ['white', named('tint')],
      ],
    ],
    ['gold mica 1 1/2 tsp', [['gold mica', '1.5 tsp']]],
    ['red 40 lake 1 tsp', [['red 40 lake', '1 tsp']]],
    ['CI 77007 1/4 tsp', [['CI 77007', '0.25 tsp']]],
    ['D&C Red 30 lake', [['D&C Red 30 lake', named('full')]]],
    ['1 Tbsp + 1/4 tsp gold mica', [['gold mica', '3.25 tsp']]],
    ['1/2 tsp per cup gold mica', [['gold mica', { by: 'cup', tspPerCup: 0.5 }]]],
    ['azul ultramar 1/4 cdta por taza', [['azul ultramar', { by: 'cup', tspPerCup: 0.25 }]]],
    [
      'media cucharadita de mica dorada y blanco pastel',
      [
        ['mica dorada', '0.5 tsp'],
        ['blanco', named('pastel')],
      ],
    ],
    ['gold mica 25% of full', [['gold mica', { by: 'share', ofFull: 0.25 }]]],
  ])('%s', (text, parts) => {
    expect(mix(text)).toEqual(parts);
  });

  test('leaves a name with an "and" in it whole', () => {
    const isName = (text: string) => text === 'Salt and Sea';
    expect(parseMix('Salt and Sea + white', MEASURES.us, isName).map(({ name }) => name)).toEqual([
      'Salt and Sea',
      'white',
    ]);
  });

  test.each([
    ['🧼', 'mix-part-without-name'],
    [' + , ', 'mix-empty'],
    ['1/4 tsp', 'mix-part-without-name'],
    ['a+b+c+d+e+f', 'mix-too-many'],
    ['gold mica 1,500 g', 'amount-ambiguous'],
    ['gold mica 900 tsp per cup', 'strength-out-of-range'],
  ])('%s is refused with %s', (text, id) => {
    expect(refused(() => parseMix(text, MEASURES.us))).toBe(id);
  });

  property.prop([fc.string({ unit: 'grapheme', maxLength: 300 })])('any text is read or refused', text => {
    for (const read of [() => parseMix(text, MEASURES.us), () => parseBase(text), () => parseBar(text)]) {
      try {
        read();
      } catch (refusal) {
        expect(refusal).toBeInstanceOf(Refusal);
      }
    }
  });
});

describe('a base', () => {
  test.each([
    ['white', 'white'],
    ['Cream base', 'cream'],
    ['jabón verde', 'green'],
  ])('%s is of the %s cast', (text, shade) => {
    expect(parseBase(text).shade).toBe(shade);
  });

  test('goes by its oils: olive is green, coconut white', () => {
    expect(parseBase('olive 60%, coconut 40%')).toEqual({
      shade: undefined,
      shades: [
        { shade: 'green', share: 0.6 },
        { shade: 'white', share: 0.4 },
      ],
    });
  });

  test('that says nothing is refused', () => {
    expect(refused(() => parseBase('purple'))).toBe('base-unreadable');
  });
});

describe('a test bar', () => {
  test.each([
    ['1/4 tsp/cup #6b5aa8', { by: 'cup', tspPerCup: 0.25 }],
    ['#6b5aa8 1/4 tsp', { by: 'cup', tspPerCup: 0.25 }],
    ['pastel = rebeccapurple', named('pastel')],
    ['1/8 dark slate blue', { by: 'cup', tspPerCup: 0.125 }],
    ['plain #efe6cf', { by: 'plain' }],
    ['0 #efe6cf', { by: 'plain' }],
    ['0.8 g/cup #6b5aa8', { by: 'grams-a-cup', grams: 0.8 }],
    ['1/4 cdta por taza #6b5aa8', { by: 'cup', tspPerCup: 0.25 }],
  ])('%s', (text, dose) => {
    expect(parseBar(text).dose).toEqual(dose);
  });

  test.each(['full Lab 52, 20, -31', 'full lab(52 20 -31)', 'full L 52 a 20 b −31'])(
    '%s has its Lab',
    text => {
      expect(parseBar(text)).toEqual({ dose: named('full'), lab: { l: 52, a: 20, b: -31 } });
    },
  );

  test.each([
    ['#6b5aa8', 'test-bar-unreadable'],
    ['1/4 tsp', 'test-bar-unreadable'],
    ['full lab(120 0 0)', 'lab-out-of-range'],
    ['99 tsp/cup #fff', 'strength-out-of-range'],
  ])('%s is refused with %s', (text, id) => {
    expect(refused(() => parseBar(text))).toBe(id);
  });
});
