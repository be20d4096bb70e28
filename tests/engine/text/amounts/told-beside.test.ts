import { expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { placedLayers } from '../../../../src/engine/text/amounts/layers/placed-layers.ts';
import { listedShares } from '../../../../src/engine/text/amounts/shares/share-lists.ts';
import { sizeBeside, withHundreds } from '../../../../src/engine/text/amounts/told-beside.ts';

/* How makers tell amounts, common practice (no source); the sums are arithmetic. */

test.each([
  ['please it takes 1500 ml, I measured with water', { by: 'batter-volume', millilitres: 1500 }],
  ['le entran 900 ml justos, lo probé con agua', { by: 'batter-volume', millilitres: 900 }],
  ['2 kg total with water and lye', { by: 'batter-mass', grams: 2000 }],
  ['12 moldecitos de 80 gramos cada uno', { by: 'batter-mass', grams: 960 }],
])('a size “%s”', (text, size) => {
  expect(parseSize(text)).toEqual(size);
});

test('a size with no word of water or lye is none of these', () => {
  expect(sizeBeside('2 kg total')).toBeUndefined();
  expect(sizeBeside('1500 ml of oils')).toBeUndefined();
});

test('hundreds go for both ends of a range, and only upwards', () => {
  expect(parsePortionRange('3-400 ml')).toMatchObject({
    low: { millilitres: 300 },
    high: { millilitres: 400 },
  });
  expect(withHundreds('4-300 ml')).toBe('4-300 ml');
});

test.each([
  ['una taza de las de 250', 250],
  ['a cup of 200 ml', 200],
])('the cup in “%s” tells its size: %d ml', (text, millilitres) => {
  expect(parsePortionRange(text).low).toMatchObject({ millilitres });
});

test('a unit that is told behind in brackets is that of the figure', () => {
  expect(parsePortionRange('765 oils (g)').low).toEqual({ measure: 'mass', grams: 765, of: 'oils' });
});

test.each([
  ['60 40 pink to white', '60% pink; 40% white'],
  ['2 partes de azul, una de blanco y una de rojo', '2 parts azul; 1 parts blanco; 1 parts rojo'],
  ['4 de verde por 1 de amarillo', '4 parts verde; 1 parts amarillo'],
  [
    'like a quarter each.. purple teal yellow white',
    '1 parts purple; 1 parts teal; 1 parts yellow; 1 parts white',
  ],
  ['400 ml red 400 ml white 200 green', '400 ml red; 400 ml white; 200 ml green'],
])('shares “%s”', (text, shares) => {
  expect(listedShares(text)).toBe(shares);
  expect(parsePortions(text)).toHaveLength(shares.split(';').length);
});

test.each([
  ['figures that make no hundred', '60 50 pink to white'],
  ['too few colours for the parts', 'a quarter each, purple and teal'],
  ['counts that may be of anything', '2 red and 1 white'],
  ['two units', '400 ml red 400 g white 200 green'],
])('%s are left to be asked about', (_, text) => {
  expect(listedShares(text)).toBeUndefined();
});

test.each([
  ['yellow in the middle, grey at the bottom, white goes on last', ['grey', 'yellow', 'white']],
  ['topmost lilac, under it white, under that dark purple', ['dark purple', 'white', 'lilac']],
  ["brown at t' bottom like soil, then green, white on top", ['brown', 'green', 'white']],
  ['rojo abajo, azul arriba, blanco en el medio', ['rojo', 'blanco', 'azul']],
])('layers “%s” from the bottom up', (text, layers) => {
  expect(placedLayers(text)).toEqual(layers);
});

test('two layers of one place, or a word that is no colour, are left to the other readers', () => {
  expect(placedLayers('red on top, blue on top')).toBeUndefined();
  expect(placedLayers('red on top, stuff at the bottom')).toBeUndefined();
});

test.each([
  ['3 parts water for 1 part clay, I make it like pancake batter', 3],
  ["one o' powder to three o' sunflower oil", 3],
  ['el dióxido lo tengo en agua, una parte por cinco de agua', 5],
])('a paste “%s” has %d parts of liquid to one of powder', (text, parts) => {
  const paste = parsePremix(text);
  if (paste.by !== 'spoons') throw new Error(paste.by);
  expect(paste.carrierMillilitres / paste.powderMillilitres).toBeCloseTo(parts);
});
