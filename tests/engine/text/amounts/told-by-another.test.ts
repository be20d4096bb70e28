import { expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { oilsOfBatch } from '../../../../src/engine/batch/oils/lists/bare-grams.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { layersSaid } from '../../../../src/engine/text/amounts/layers/layers-said.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';

/* What is told by what stands beside it: how makers speak, common practice (no source); the sums are arithmetic. */

test.each([
  ['dos partes de gris y una de negro y otra de blanco', '2 parts gris; 1 parts negro; 1 parts blanco'],
  [
    'la mitad amarillo, una cuarta parte anaranjado y otra cuarta blanco',
    '50% amarillo; 25% anaranjado; 25% blanco',
  ],
  ['tres cuartas partes café y una de beige', '75% café; 25% beige'],
  ['half white, then t’other half split even, green and brown', '50% white; 25% green; 25% brown'],
  ['half green, then half of what was left black, rest white', '50% green; 25% black; rest white'],
  ['a third red, then half of what is left blue, rest white', '33.333333% red; 33.333333% blue; rest white'],
  ['purple 3 : lilac 2', '3 parts purple; 2 parts lilac'],
  ['blue n purple the same, and pink double of either', '1 parts blue; 1 parts purple; 2 parts pink'],
  ['blue n purple the same, and pink triple of either', '1 parts blue; 1 parts purple; 3 parts pink'],
  ['tenth is red only, other 90 gray', '10% red; 90% gray'],
  ['two thirds orange, one third brown', '66.666667% orange; 33.333333% brown'],
  [
    'cuatro colores igualitos, azul violeta rosa y blanco',
    '1 parts azul; 1 parts violeta; 1 parts rosa; 1 parts blanco',
  ],
  ['500 g amarillo 300 blanco 200 verde, de un kilo', '500 g amarillo; 300 g blanco; 200 g verde'],
])('“%s” is divided as %s', (text, division) => {
  expect(sharesPhrase(text).replace(/,;/gu, ';')).toBe(division);
});

test.each([
  ['pink sandwiched between two browns', 'brown pink brown'],
  ['azul entre blanco y verde', 'blanco azul verde'],
  ['Black at the foot, brown over that, and a cream head on it like a pint of stout', 'Black brown cream'],
  ['En el medio el violeta, abajo el amarillo y arriba el naranja', 'amarillo violeta naranja'],
  ['verde oscuro abajo del todo, verde claro en medio y crema en lo alto', 'verde oscuro verde claro crema'],
  ['Pour the grey, leave it ten mins, pour teal over a spoon', 'grey teal'],
])('layers of “%s” from the bottom', (text, layers) => {
  const names = layersSaid(text)
    .split('; ')
    .map(piece => piece.replace('1 parts ', ''));
  expect(names.join(' ')).toBe(layers);
});

test('a line that is said not to count is no layer, and nothing else is left out by that', () => {
  expect(sharesPhrase('navy, pencil line dont count, then turquoise on top')).toBe(
    '1 parts navy; 1 parts turquoise',
  );
  expect(layersSaid('1 kg oils not counting the lye water')).toBe('1 kg oils not counting the lye water');
});

test('a layer that is only referred to is one', () => {
  expect(sharesPhrase('negro encima de rojo, y el rojo va sobre amarillo')).toBe(
    '1 parts amarillo; 1 parts rojo; 1 parts negro',
  );
});

test.each([
  ['6g, weighed it twice cos the scales play up', { grams: 6 }, ''],
  ['verde cromo, 4 g y ni uno más', { grams: 4 }, 'verde cromo'],
  ['1 tsp then put in another half', { millilitres: 1.5 * US_TEASPOON_ML }, ''],
  ['one teaspoon, looked puny. So two of turmeric all told', { millilitres: 2 * US_TEASPOON_ML }, 'turmeric'],
  [
    'media cucharada... ponle una cucharadita y media de cacao',
    { millilitres: 1.5 * US_TEASPOON_ML },
    'cacao',
  ],
])('powder “%s”', (text, low, name) => {
  expect(readPowder(text)).toMatchObject({ low: expect.objectContaining(low), name });
});

test('a percent of the oils keeps the name before it, and one may be spelt', () => {
  expect(readPowder('TiO2 at 2% of oil weight')).toMatchObject({ percentOfOils: 2, name: 'TiO2' });
  expect(readPowder('al uno por ciento sobre aceites')).toMatchObject({ percentOfOils: 1 });
  expect(readPowder('one gram per hundred gram oils').low).toMatchObject({
    grams: expect.closeTo(4.5359, 3),
  });
});

test('an upper end behind an amount makes a range of it, where it is higher', () => {
  expect(parsePortionRange('Two cups, could be up to three')).toMatchObject({
    low: { millilitres: expect.closeTo(2 * US_CUP_ML, 6) },
    high: { millilitres: expect.closeTo(3 * US_CUP_ML, 6) },
  });
  expect(parsePortionRange('400 g, quizás hasta 500')).toMatchObject({
    low: { grams: 400 },
    high: { grams: 500 },
  });
});

test.each([
  ['700 g, that’s just the oils no water no lye', 700, 'oils'],
  ['12 oz on the scale, batter not oils', 12 * 28.349523125, 'batter'],
  ['600 de oliva y 150 de coco, o sea 750 g', 750, 'oils'],
  ['medio kilo justo de oliva y nada más', 500, 'oils'],
  // 250 g and half of that (from memory).
  ['cuarto y mitad de aceite', 375, 'oils'],
  ['una librita de aceites', 453.59237, 'oils'],
  ['900 g of batter for the olive green', 900, 'batter'],
])('“%s” is %d g of %s', (text, grams, of) => {
  expect(parsePortionRange(text).low).toEqual({ measure: 'mass', grams: expect.closeTo(grams, 3), of });
});

test('what fills a mould is batter, and two and a half litres are no two halves', () => {
  expect(parseSize('Es chiquito, entran seiscientos gramos de jabón')).toEqual({
    by: 'batter-mass',
    grams: 600,
  });
  expect(parseSize('el molde es de un kilo, el de madera que me hizo mi yerno')).toEqual({
    by: 'batter-mass',
    grams: 1000,
  });
  expect(parseSize('2 and a half litre slab mould (the wooden one he made me)')).toMatchObject({
    mould: { count: 1, eachMillilitres: 2500 },
  });
  expect(parseSize('3 1/2 litre moulds')).toMatchObject({ mould: { count: 3, eachMillilitres: 500 } });
});

test.each([
  ['TD:water 1:2', 2, 'water'],
  ['equal powder n oil', 1, 'oil'],
  ['equal water and clay', 1, 'water'],
  ['Una medida de carbón, cinco de girasol (aceite)', 5, 'oil'],
])('a paste “%s” has %d parts of %s', (text, parts, carrier) => {
  const { powderMillilitres: powder, ...read } = parsePremix(text) as Record<string, unknown>;
  expect(read).toEqual({
    by: 'spoons',
    carrier,
    carrierMillilitres: expect.closeTo(parts * Number(powder), 6),
  });
});

test('East African shea is shea', () => {
  // Vitellaria paradoxa subsp. nilotica: Hall et al., Vitellaria paradoxa: a monograph, 1996 (from memory).
  expect(oilsOfBatch('shea nilotica 40%, coconut 60%').shares.map(({ oil }) => oil.id)).toEqual([
    'shea',
    'coconut',
  ]);
});
