import { expect, test } from 'vitest';
import { Refusal } from '../../../src/engine/refusal.ts';
import { colourNamed } from '../../../src/engine/text/colours/colour-name.ts';
import { knowsColour } from '../../../src/engine/text/colours/known-colours.ts';
import { excerpt } from '../../../src/engine/text/excerpt.ts';
import { ideasFrom } from '../../../src/engine/text/learned/ideas.ts';
import { nextOption, quotedValue } from '../../../src/engine/text/lines/option-line.ts';
import { numberTyped, yesNoTyped } from '../../../src/engine/text/lines/option-value.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import { carrierNamed } from '../../../src/engine/text/names/carrier-name.ts';
import { namesIn, percentsMarked, ratioIn } from '../../../src/engine/text/names/listed-names.ts';
import { distance } from '../../../src/engine/text/spelling/edit-distance.ts';
import { respelt } from '../../../src/engine/text/spelling/trade/respelt.ts';
import { stem, tokenise } from '../../../src/engine/text/tokens.ts';

/*
 * How words are cut, spelt and named (common practice; from memory). Optimal string alignment counts a swap of two neighbours as one
 * (Wagner and Lowrance 1975): “mcia” is one slip from “mica”.
 */

function carrierOf(text: string): string | undefined {
  try {
    return carrierNamed(text);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    const why = (refusal.values as { readonly why?: string }).why;
    return `refused: ${refusal.id}${why === undefined ? '' : ` ${why}`}`;
  }
}
/** A list, and after two strokes how many it has. */
function namesOf(text: string): string {
  const [list, count] = text.split(' // ');
  return namesIn(list!, knowsColour, count === undefined ? undefined : Number(count)).join('; ');
}
const ratioOf = (text: string) =>
  ratioIn(text, knowsColour)
    ?.map(({ percent, name }) => `${Number(percent.toFixed(2))} ${name}`)
    .join('; ');
const tokensOf = (text: string) =>
  tokenise(text)
    .map(({ kind, text: word, start, end }) => `${kind} ${word} ${start}-${end}`)
    .join('; ');
const ideas = ideasFrom('scent: scent* fragran* aroma\ncolour: hue tint*\n tono*\nboth: aroma');
const distanceOf = (text: string) => {
  const [one, other] = text.split(' ');
  return distance(one!, other!);
};

test.each<readonly [text: string, told: unknown]>([
  ['ultramarine with citric acid', 'citric acid'],
  ['con limón en el jabón', 'zumo de limon'],
  ['lemon as scent', undefined],
  ['zumo de limon', 'zumo de limon'],
  ['stearic acid', undefined],
  ['acid red 52', undefined],
  ['with acid in it', 'acid'],
  ['ácido con agua', 'acido'],
  ['vinegar', 'vinegar'],
  ['add lime to it', 'lime juice'],
  ['with lima encima', 'zumo de lima'],
  ['mica', undefined],
])('the acid in “%s” is %s', (text, told) => {
  expect(acidIn(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['water', 'water'],
  ['distilled water', 'water'],
  ['sweet almond', 'oil'],
  ['aceite de arroz', 'oil'],
  ['oil', 'oil'],
  ['glycerine', 'glycerin'],
  ['water and oil', undefined],
  ['milk', undefined],
  ['coconut milk', undefined],
  ['lavender oil', 'refused: carrier-is-fragrance'],
  ['rose hip oil', 'oil'],
  ['fragrance oil', 'refused: carrier-is-fragrance'],
  ['vodka', 'refused: carrier-is-alcohol'],
  ['lemon juice', 'refused: carrier-harms acid'],
  ['bleach', 'refused: carrier-harms bleach'],
  ['lye water', 'refused: carrier-harms lye'],
  ['motor oil', 'refused: carrier-harms petroleum'],
  ['vinegar', 'refused: carrier-harms acid'],
  ['  isopropyl alcohol  ', 'refused: carrier-is-alcohol'],
  ['gravel', undefined],
  ['lejía', 'refused: carrier-harms bleach'],
  ['aceite de menta', 'refused: carrier-is-fragrance'],
  ['aloe', 'water'],
])('“%s” wets as %s', (text, told) => {
  expect(carrierOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['pink white blue', 'pink; white; blue'],
  ['light blue dark blue white n teal // 4', 'light blue; dark blue; white; teal'],
  ['red, white and blue', 'red; white; blue'],
  ['red white // 2', 'red; white'],
  ['blue green', 'blue green'],
  ['gravel stone // 2', 'gravel; stone'],
  ['gravel stone', 'gravel stone'],
  ['red gravel blue', 'red gravel blue'],
  ['pink/white + blue', 'pink; white; blue'],
  ['a b c // 3', 'a; b; c'],
  ['blue // 1', 'blue'],
])('“%s” lists %s', (text, told) => {
  expect(namesOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['50/30/20 blue white pink', '50 blue; 30 white; 20 pink'],
  ['white to blue 70:30', '70 white; 30 blue'],
  ['half and half white and blue', '50 white; 50 blue'],
  ['white and blue half and half', '50 white; 50 blue'],
  ['a third each: red, white, blue', '33.33 red; 33.33 white; 33.33 blue'],
  ['a third each: red, white', undefined],
  ['equal parts blue, white and pink', '33.33 blue; 33.33 white; 33.33 pink'],
  ['blue and white in equal parts', '50 blue; 50 white'],
  ['2:1 blue white', '66.67 blue; 33.33 white'],
  ['60/30 blue white', undefined],
  ['50/50 blue white pink', undefined],
  ['0:1 blue white', undefined],
  ['equal parts half blue and white', undefined],
  ['25% each blue, white, pink, red', '25 blue; 25 white; 25 pink; 25 red'],
  ['50/50 blue 2 white', undefined],
])('“%s” shares %s', (text, told) => {
  expect(ratioOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['70 white 30 blue', '70% white 30% blue'],
  ['rosa 70 y el resto beige', 'rosa 70% y el resto beige'],
  ['70 white 20 blue', '70 white 20 blue'],
  ['70 g white 30 g blue', '70 g white 30 g blue'],
  ['70/30 white blue', '70/30 white blue'],
  ['4 white rest blue', '4 white rest blue'],
  ['70 percent white 30 percent blue', '70% white 30% blue'],
  ['100 white', '100 white'],
  ['33.3 a 33.3 b 33.4 c', '33.3% a 33.3% b 33.4% c'],
])('“%s” with its percents marked is “%s”', (text, told) => {
  expect(percentsMarked(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    '80 g ultramrine blue',
    { text: '80 g ultramarine blue', changes: [{ from: 'ultramrine', to: 'ultramarine' }] },
  ],
  ['ultra marine blue', { text: 'ultra marine blue', changes: [] }],
  ['midnite mica', { text: 'midnight mica', changes: [{ from: 'midnite', to: 'midnight' }] }],
  ['chek the shelf', { text: 'chek the shelf', changes: [] }],
  ['red oxid', { text: 'red oxide', changes: [{ from: 'oxid', to: 'oxide' }] }],
  ['  ', { text: '  ', changes: [] }],
  [
    'titaniun dioxide, 5 g',
    { text: 'titanium dioxide, 5 g', changes: [{ from: 'titaniun', to: 'titanium' }] },
  ],
  ['micca!', { text: 'mica!', changes: [{ from: 'micca', to: 'mica' }] }],
  ['hydroxid', { text: 'hydroxide', changes: [{ from: 'hydroxid', to: 'hydroxide' }] }],
  ['green', { text: 'green', changes: [] }],
])('“%s” is meant as %j', (text, told) => {
  expect(respelt(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['layers', 'layer'],
  ['glass', 'glass'],
  ['berries', 'berry'],
  ['curing', 'curing'],
  ['cured', 'cured'],
  ['bing', 'bing'],
  ['stirring', 'stir'],
  ['blended', 'blend'],
  ['mica', 'mica'],
  ['oxide', 'oxid'],
  ['red', 'red'],
  ['ing', 'ing'],
  ['sees', 'see'],
  ['sed', 'sed'],
  ['curding', 'curd'],
])('what stays of “%s” is “%s”', (text, told) => {
  expect(stem(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    'Soooo gray, 2,5 kg!',
    'word soo 0-5; word grey 6-10; mark , 10-11; number 2,5 12-15; word kg 16-18; mark ! 18-19',
  ],
  ["it's “½” cup… ok", 'word its 0-4; number ½ 6-7; word cup 9-12; word ok 14-16'],
  ['a - b -> c', 'word a 0-1; mark - 1-4; word b 4-5; mark -> 6-8; word c 9-10'],
  ['3½', 'number 3 0-1; number ½ 1-2'],
])('“%s” is cut into %s', (text, told) => {
  expect(tokensOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['item: mica amount:5 g', { name: 'item', from: 0, to: 5 }],
  ['no option here', undefined],
  ['Color:blue', { name: 'colour', from: 0, to: 6 }],
  ['a:b', { name: 'a', from: 0, to: 2 }],
  ['x item:mica', { name: 'item', from: 2, to: 7 }],
])('the next option of “%s” is %j', (text, told) => {
  expect(nextOption(text, 0)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['with:clay item:mica', { name: 'with-1', from: 0, to: 5 }],
  ['other:x item:mica', { name: 'item', from: 8, to: 13 }],
  ['other:x', undefined],
])('the next known option of “%s” is %j', (text, told) => {
  expect(nextOption(text, 0, ['item', 'with-1'])).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['"rose clay" rest', { text: 'rose clay', end: 11, closed: true }],
  ['“rose clay”', { text: 'rose clay', end: 11, closed: true }],
  ['"open', { text: 'open', end: 5, closed: false }],
  ['"a \\"b\\" c"', { text: 'a "b" c', end: 11, closed: true }],
  ['«uno» dos', { text: 'uno', end: 5, closed: true }],
  ['"back\\\\slash"', { text: 'back\\slash', end: 13, closed: true }],
])('the value in %s is %j', (text, told) => {
  expect(quotedValue(text, 0)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['5', 5],
  ['-5', -5],
  ['+2,5', 2.5],
  ['5.', 5],
  ['.5', 0.5],
  ['5 g', undefined],
  ['1.2.3', undefined],
  ['5,', 5],
])('“%s” typed is %s', (text, told) => {
  expect(numberTyped(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['yes', true],
  ['Sí', true],
  ['si', true],
  ['no', false],
  ['F', undefined],
  ['false', false],
  ['y', true],
  ['TRUE', true],
  ['perhaps', undefined],
])('“%s” typed says %s', (text, told) => {
  expect(yesNoTyped(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['fragrance last', ['scent']],
  ['tints and aroma', ['scent', 'colour', 'both']],
  ['tono', ['colour']],
  ['s', []],
  ['scents hue', ['scent', 'colour']],
])('“%s” stands for %j', (text, told) => {
  expect(ideas(text.split(' '))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['mica mica', 0],
  ['mica micca', 1],
  ['mica mcia', 1],
  ['kitten sitting', 3],
  ['abc ', 3],
  ['ab ba', 1],
  ['abc acb', 1],
  ['abcd acbd', 1],
])('two words “%s” are %d apart', (text, told) => {
  expect(distanceOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['rose clay', 'rose clay'],
  ['aaaaaaaaaabbbbbbbbbbccccccccccdddddddddd', 'aaaaaaaaaabbbbbbbbbbccccccccccdddddddddd'],
  ['aaaaaaaaaabbbbbbbbbbccccccccccddddddddddx', 'aaaaaaaaaabbbbbbbbbbccccccccccddddddddd…'],
  ['  padded  ', 'padded'],
])('“%s” is shown as “%s”', (text, told) => {
  expect(excerpt(text)).toEqual(told);
});

test.each([
  ['#8fae9b', '#8fae9b', '#8fae9b', false],
  ['something near #8fae9b', '#8fae9b', '#8fae9b', false],
  ['rgb 120 40 60', '#78283c', '#78283c', false],
  ['808080', '#808080', '#808080', false],
  ['midnite blue', 'midnight blue', '#1c2547', true],
  ['rosa capote', 'rosa', '#f08fb0', false],
])('“%s” is the colour %s', (text, name, hex, corrected) => {
  expect(colourNamed(text)).toEqual({ name, hex, corrected });
});
test.each(['qwxz', 'blu', ''])('“%s” names no colour', text => {
  expect(colourNamed(text)).toBeUndefined();
});
/** Red, green and blue, 0 to 255. */
const channels = (text: string): readonly number[] =>
  [1, 3, 5].map(at => Number.parseInt(colourNamed(text)!.hex.slice(at, at + 2), 16));
const sum = (text: string): number => channels(text).reduce((all, one) => all + one, 0);
// What a word beside a colour does to it can be seen.
test('a pale colour is lighter, a deep one darker, and one that is between two lies between them', () => {
  expect(sum('light dusty rose')).toBeGreaterThan(sum('dusty rose'));
  expect(sum('very pale green')).toBeGreaterThan(sum('green'));
  expect(sum('azul clarito')).toBeGreaterThan(sum('azul'));
  expect(sum('darker than navy')).toBeLessThan(sum('navy'));
  expect(sum('almost black blue')).toBeLessThan(sum('blue'));
  for (const at of [0, 1, 2]) {
    const ends = [channels('teal')[at]!, channels('navy')[at]!];
    expect(channels('between teal and navy')[at]).toBeGreaterThanOrEqual(Math.min(...ends) - 12);
    expect(channels('between teal and navy')[at]).toBeLessThanOrEqual(Math.max(...ends) + 12);
  }
});
test('towards another colour is nearer to it, and less of it is farther', () => {
  const [r, g, b] = [0, 1, 2];
  expect(channels('olive but greener')[g]! - channels('olive but greener')[r]!).toBeGreaterThan(
    channels('olive')[g]! - channels('olive')[r]!,
  );
  expect(channels('more orange than peach')[b]).toBeLessThan(channels('peach')[b]!);
  expect(channels('white with a bit of pink')[g]).toBeLessThan(channels('white')[g]!);
  expect(channels('white with a bit of pink')[g]).toBeGreaterThan(channels('pink')[g]!);
});
