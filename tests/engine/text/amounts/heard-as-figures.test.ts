import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { spokenAmounts } from '../../../../src/engine/quantities/spoken/spoken-amounts.ts';
import { outsideField } from '../../../../src/engine/questions/fields/scope.ts';
import { strengthIn } from '../../../../src/engine/questions/found/strength/strength-in.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { colourNamed } from '../../../../src/engine/text/colours/colour-name.ts';

// The wordings are our own, after kinds of misses in sets by other hands (tests/sets).
describe('figures that stand for words', () => {
  test.each([
    ['lye 4 1000g lard', 'lye for 1000g lard'],
    ['how much 4 a 2 lb loaf', 'how much for a 2 lb loaf'],
    ['how much lye 2 use', 'how much lye to use'],
    ['3n a half cups', '3 1/2 cups'],
    ['4 500 g bars', '4 500 g bars'],
    ['lye 4 100 g bars', 'lye 4 100 g bars'],
    ['how much 4 1/2 cups', 'how much 4 1/2 cups'],
  ])('%s', (text, meant) => expect(spokenAmounts(text)).toBe(meant));
});

describe('oils in parts of a whole', () => {
  test.each([
    ['half lard quarter olive quarter coconut', [0.5, 0.25, 0.25]],
    ['two thirds olive one third coconut', [2 / 3, 1 / 3]],
    ['tres cuartos oliva y un cuarto coco', [0.75, 0.25]],
  ])('%s', (text, parts) => {
    const { shares } = parseOils(text);
    expect(shares.map(({ share }) => Number(share.toFixed(3)))).toEqual(
      parts.map(part => Number(part.toFixed(3))),
    );
  });
  test('parts that make no whole are asked', () =>
    expect(() => parseOils('half olive, a quarter coconut')).toThrow('oil-unknown'));
});

describe('a strength under a negation', () => {
  test.each([
    ['how much spirulina, a strong green, not pale', 'full'],
    ['un azul fuerte, que no quede clarito', 'full'],
    ['a red, not too dark', 'medium'],
    ['half strengh please', 'half'],
    ['un verde clarito', 'pastel'],
  ])('%s', (text, strength) => expect(strengthIn(wordsOf(text), [])).toBe(strength));
});

describe('slips within names of two words', () => {
  test.each([
    ['midnite blue', 'midnight blue'],
    ['OD grn', 'od green'],
    ['turkesa como el mar', 'turquesa'],
    ['sky', 'sky'],
  ])('%s', (text, name) => expect(colourNamed(text)?.name).toBe(name));
});

describe('what is no matter of soap', () => {
  test.each([
    ['is a melt-and-pour base fine', 'melt-and-pour'],
    ['can i drink the nettle tea', 'medical'],
    ['puedo tomarme el te de ortiga', 'medical'],
    ['soap on a deep cut', 'medical'],
  ])('%s', (text, field) => expect(outsideField(text)).toBe(field));
  test('tea in the lye water is ours', () =>
    expect(outsideField('can i put nettle tea in the lye water')).toBeUndefined());
});

test.each([
  ['two 1/4 tsp scoops of green oxide', '0.5 tsp of green oxide'],
  ['three 1/2 tsp spoonfuls of clay', '1.5 tsp of clay'],
  ['2 1/4 tsp of mica', '2 1/4 tsp of mica'],
])('“%s” is %s: spoons of a size are counted, a mixed number is one', (text, said) => {
  expect(spokenAmounts(text)).toBe(said);
});
