import { expect, test } from 'vitest';
import { layersIn } from '../../../../src/engine/text/amounts/layers/layer-phrases.ts';
import { portionsAmongWords } from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import { listedShares } from '../../../../src/engine/text/amounts/shares/share-lists.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';
import { wordedShares } from '../../../../src/engine/text/amounts/shares/share-wordings.ts';
import { thousandsPlain } from '../../../../src/engine/text/amounts/thousands.ts';
import { sizeBeside } from '../../../../src/engine/text/amounts/told-beside.ts';
import { withUpperEnd } from '../../../../src/engine/text/amounts/upper-end.ts';

/*
 * What makers write of a range, of thousands and of how batter is divided, and where that ends: another unit, an end that is no larger, a
 * word that is no colour (from memory of how they write; shares are arithmetic).
 */

test.each([
  ['2 cups, could be up to 3', '2-3 cups'],
  ['400 g, quizás hasta 500', '400-500 g'],
  ['2 cups of batter, up to 3 please', '2-3 cups of batter please'],
  ['2 cups up to 3 cups', '2-3 cups'],
  ['1,5 kg, hasta 2', '1,5-2 kg'],
])('%s has an upper end: %s', (text, range) => expect(withUpperEnd(text)).toBe(range));

test.each(['2 cups, up to 2', '3 cups, up to 2', '400 g, quizás hasta 500 ml', '5 eggs, up to 6'])(
  '%s tells no range',
  text => expect(withUpperEnd(text)).toBe(text),
);

test.each([
  ['1,250 ml', '1250 ml'],
  ['1.250ml', '1250ml'],
  ['1.250 g', '1250 g'],
])('no batter is told to the thousandth: %s', (text, plain) => expect(thousandsPlain(text)).toBe(plain));

test.each(['1,250 oz', '0,250 g', '1,25 g', '1.250.000 g', '1,250 blorps'])('%s stays as it is', text =>
  expect(thousandsPlain(text)).toBe(text),
);

test.each([
  ['twice as much white as blue', '2 parts white; 1 parts blue'],
  ['three times as much red as gold', '3 parts red; 1 parts gold'],
  ['celeste el doble que el amarillo', '2 parts celeste; 1 parts amarillo'],
  ['rojo el triple que el azul', '3 parts rojo; 1 parts azul'],
  ['all of it green', '100% green'],
  ['verde todo', '100% verde'],
  ['split 4 ways even, pink peach mint n lemon', '1 parts pink; 1 parts peach; 1 parts mint; 1 parts lemon'],
  ['in 3 parts: red, white, blue', '1 parts red; 1 parts white; 1 parts blue'],
  ['twice as much white as bloop', undefined],
  ['twice as much bloop as blue', undefined],
  ['all of it bloop', undefined],
  ['split 3 ways, pink peach mint n lemon', undefined],
  ['in 2 parts: red and the rest blue', undefined],
])('a division in words: %s', (text, shares) => expect(wordedShares(text)).toBe(shares));

test.each([
  ['400 ml red 400 ml white 200 green', '400 ml red; 400 ml white; 200 ml green'],
  ['green 2 parts, gold 1, black 1', '2 parts green; 1 parts gold; 1 parts black'],
  ['400 ml red 400 g white 200 green', undefined],
  ['400 ml red 400 ml bloop 200 green', undefined],
  ['400 ml red 400 ml white 200 ml green', undefined],
  ['green 2 parts, gold 1, bloop 1', undefined],
])('the first one’s unit goes for who has none: %s', (text, shares) =>
  expect(listedShares(text)).toBe(shares),
);

test.each([
  ['pink 20 percent and the other 80 is white', '20% pink; 80% white'],
  ['half red, half of what is left blue, the rest white', '50% red; 25% blue; rest white'],
  ['mostly white with 20% blue', '20% blue; rest white'],
  ['white base, 20% blue', '20% blue; rest white'],
  ['60% split between blue and green, 40% white', '30% blue; 30% green; 40% white'],
  ['20% blue and green each, rest white', '20% blue; 20% green; rest white'],
  ['two parts white to one part blue', '2 parts white; 1 parts blue'],
  ['white 1: blue 2: red 3', '1 parts white; 2 parts blue; 3 parts red'],
])('shares of a batch: %s', (text, shares) => expect(sharesPhrase(text)).toBe(shares));

test.each([
  ['mostly white with 20% blue', 'rest white; 20% blue'],
  ['60% split between blue and green, 40% white', '30% blue; 30% green; 40% white'],
  ['two parts white to one part blue', '2 parts white; 1 parts blue'],
  ['60% blue and green each, 40% white', undefined],
])('a division among other words: %s', (text, shares) => expect(portionsAmongWords(text)).toBe(shares));

const turns = (count: number) => Array.from({ length: count }, (_, at) => (at % 2 === 0 ? 'grey' : 'white'));
test.each([
  ['grey and white alternating, 12 layers', turns(12)],
  ['grey and white by turns, 3 layers', turns(3)],
  ['blue white pink', ['blue', 'white', 'pink']],
  ['blue white blue', ['blue', 'white', 'blue']],
  ['blue white', undefined],
  ['top blue, bottom white', ['white', 'blue']],
  ['one layer of blue', ['blue']],
])('layers from the bottom up: %s', (text, layers) => expect(layersIn(text)).toEqual(layers));

test.each(['grey and white alternating, 13 layers', 'grey and bloop alternating, 4 layers'])(
  'no two colours by turns: %s',
  text => expect(new Set(layersIn(text) ?? []).size).not.toBe(2),
);

test.each([
  ['40 oz total batch w water n lye', '40 oz batter'],
  ['1,8 kg en total con agua y sosa', '1,8 kg batter'],
  ['it takes 1500 ml, I measured with water', '1500 ml batter'],
  ['le entran 900 ml, lo probé con agua', '900 ml batter'],
  ['12 moldecitos de 80 gramos cada uno', '12 bars of 80 gramos'],
  ['40 oz with milk', undefined],
])('what lye and water are in, or what holds so much water, is batter: %s', (text, size) =>
  expect(sizeBeside(text)).toBe(size),
);
