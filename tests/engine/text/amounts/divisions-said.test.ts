import { expect, test } from 'vitest';
import type { Amount } from '../../../../src/engine/quantities/amount.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { layersIn } from '../../../../src/engine/text/amounts/layers/layer-phrases.ts';
import { layersSaid } from '../../../../src/engine/text/amounts/layers/layers-said.ts';
import { placedLayers } from '../../../../src/engine/text/amounts/layers/placed-layers.ts';
import {
  placed,
  placedByClause,
  resting,
  stacked,
} from '../../../../src/engine/text/amounts/portions/portion-places.ts';
import { tokensOf } from '../../../../src/engine/text/amounts/portions/portion-tokens.ts';
import {
  isPlainDivision,
  portionsAmongWords,
} from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';

/*
 * How batter is divided and how its layers lie, as members write it, and how much powder they tell (common practice, from memory; a US teaspoon
 * is 4.929 ml, a pound 453.6 g: NIST SP 811; shares are arithmetic).
 */

const four = (value: number): number => Number(value.toPrecision(4));
const amountText = (amount: Amount): string =>
  amount.measure === 'mass' ? `${four(amount.grams)} g` : `${four(amount.millilitres)} ml`;
function powderOf(text: string): string {
  try {
    const { low, high, percentOfOils, perPound, name } = readPowder(text);
    return [
      ...(low ? [amountText(low)] : []),
      ...(high ? [`to ${amountText(high)}`] : []),
      ...(percentOfOils === undefined ? [] : [`${percentOfOils}% of oils`]),
      ...(perPound ? ['per pound'] : []),
      ...(name === '' ? [] : [`of ${name}`]),
    ].join(' ');
  } catch (refusal) {
    if (refusal instanceof Refusal) return `refused: ${refusal.id}`;
    throw refusal;
  }
}
function placesOf(text: string) {
  const tokens = tokensOf(text);
  return tokens && [placed(tokens), stacked(tokens)].map(one => one ?? null);
}

test.each<readonly [text: string, told: unknown]>([
  ['layers: blue, white, pink', 'blue, white, pink'],
  ['from top: blue, white, pink', 'pink, white, blue'],
  ['top blue, bottom white', 'white, blue'],
  ['bottom blue, top white', 'blue, white'],
  ['pink over white over blue', 'blue, white, pink'],
  ['negro encima de rojo, y el rojo va sobre amarillo', 'amarillo, rojo, negro'],
  ['grey and white alternating, 5 layers, grey first', 'grey, white, grey, white, grey'],
  ['grey and white alternating, 5 layers, white first', 'white, grey, white, grey, white'],
  ['3 layers: blue, white, pink', 'blue, white, pink'],
  ['one layer of blue', 'blue'],
  ['blue white blue', 'blue, white, blue'],
  ['blue white', undefined],
  ['azul, blanco y rosa en capas', 'azul, blanco, rosa'],
  ['blue then white then pink like the flag', 'blue, white, pink'],
  ['start at the bottom: blue, white', 'blue, white'],
  ['blue on top of white', 'white, blue'],
  ['blue', undefined],
  ['1. blue 2. white', 'blue, white'],
  ['empezando por arriba: azul, blanco', 'blanco, azul'],
])('the layers of “%s” from the bottom up: %s', (text, told) => {
  expect(layersIn(text)?.join(', ')).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['pink sandwiched between two browns', '1 parts brown; 1 parts pink; 1 parts brown'],
  ['azul entre blanco y verde', '1 parts blanco; 1 parts azul; 1 parts verde'],
  ['pink between white', 'pink between white'],
  ['pink between gravel and white', 'pink between gravel and white'],
  ['pour the grey, leave it ten minutes, pour teal over a spoon', '1 parts grey; 1 parts teal'],
  ['pour the grey, add sprinkles of gold, pour teal', 'pour the grey, add sprinkles of gold, pour teal'],
  ["thin pencil line, then grey. line's charcoal", 'charcoal, then grey'],
  ['blue and white', 'blue and white'],
  ['leave it, pour grey', 'leave it, pour grey'],
])('“%s” lies as “%s”', (text, told) => {
  expect(layersSaid(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['yellow in the middle, grey at the bottom, white goes on last', 'grey, yellow, white'],
  ['topmost lilac, under it white', 'white, lilac'],
  ['white at the bottom and top, blue in the middle', 'white, blue, white'],
  ['arriba azul, abajo blanco', 'blanco, azul'],
  ['blue top, white top', undefined],
  ['blue on top, then white', 'white, blue'],
  ['1 blue top', undefined],
  ['blue, white', undefined],
  ['white at the bottom, gravel on top', undefined],
  ['blue at the bottom and white on top', 'blue, white'],
])('each in its place, “%s”: %s', (text, told) => {
  expect(placedLayers(text)?.join(', ')).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['half blue, half white', '50% blue; 50% white'],
  ['50% blue, rest white', '50% blue; rest white'],
  ['blue 2 parts white 1 part', '2 parts blue; 1 parts white'],
  ['white 50%, blue 50%', '50% white; 50% blue'],
  ['all of it green', '100% green'],
  ['todo verde', '100% verde'],
  ['celeste el doble que el amarillo', '2 parts celeste; 1 parts amarillo'],
  ['twice as much white as blue', '2 parts white; 1 parts blue'],
  ['three times as much white as blue', '3 parts white; 1 parts blue'],
  [
    'split 4 ways even, pink peach white and yellow',
    '1 parts pink; 1 parts peach; 1 parts white; 1 parts yellow',
  ],
  ['en 3 partes: rojo, blanco, azul', '1 parts rojo; 1 parts blanco; 1 parts azul'],
  ['half green, then half of what was left black, rest white', '50% green; 25% black; rest white'],
  ['half green, a third of the rest black', '50% green; 16.666667% black'],
  ['blue n purple the same, and pink double of either', '1 parts blue; 1 parts purple; 2 parts pink'],
  ['purple 3 : lilac 2', '3 parts purple; 2 parts lilac'],
  ['purple 3 : gravel 2', 'purple 3 : gravel 2'],
  ['tenth is red, other 90 grey', '10% red; 90% grey'],
  ['tres cuartas partes café y una de beige', '75% café; 25% beige'],
  ['50/50 blue white', '50% blue; 50% white'],
  ['30/70 blue and white', '30% blue; 70% white'],
  ['mostly white with a bit of blue', 'a bit of blue, rest white'],
  ['blue and white', '1 parts blue; 1 parts white'],
  ['blue', 'blue'],
  ['top: 50% blue; bottom: 50% white', '50% blue; 50% white'],
  ['1. blue; 2. white', '1 parts blue; 1 parts white'],
  ['azul la mitad y blanco la mitad', '50% azul; 50% blanco'],
  ['500 ml blue, 300 ml white', '500 ml blue; 300 ml white'],
  ['a cup of blue and a cup of white', '1 cup blue; 1 cup white'],
  ['60% blue 60% white', '60% blue; 60% white'],
  ['40% blue 30% white and the rest pink', '40% blue; 30% white; rest pink'],
  ['uncoloured half, blue half', '50% uncoloured; 50% blue'],
  ['blue, white and pink in that order', '1 parts blue; 1 parts white; 1 parts pink'],
])('“%s” is divided as “%s”', (text, told) => {
  expect(sharesPhrase(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['we want half blue and the other half white', '50% blue; 50% white'],
  ['blue thirds white thirds pink thirds', '1 parts blue; 1 parts white; 1 parts pink'],
  ['two thirds white and one third blue', '66.666667% white; 33.333333% blue'],
  ['half blue and half split between white and pink', '50% blue; 25% white; 25% pink'],
  ['blue bottom white top', '1 parts blue; 1 parts white'],
  ['white sits on teal, teal on navy', '1 parts navy; 1 parts teal; 1 parts white'],
  ['the base is black, white in the middle, pink at the top', '1 parts black; 1 parts white; 1 parts pink'],
  ['blue with white', undefined],
  ['90% white 20% blue', undefined],
  ['60 blue 40 white', '60% blue; 40% white'],
  ['3 blue 1 white', undefined],
  ['halves, blue and white', '1 parts blue; 1 parts white'],
])('among its words “%s” is divided as %s', (text, told) => {
  expect(portionsAmongWords(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['50% blue; 50% white', true],
  ['blue and white', false],
  ['1 parts blue; 1 parts white', true],
  ['60% blue; 60% white', true],
  ['500 ml blue; rest white', true],
])('“%s” is a plain division: %s', (text, told) => {
  expect(isPlainDivision(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['2 tsp rose clay', '9.858 ml of rose clay'],
  ['1/4-1/2 tsp', '1.232 ml to 2.464 ml'],
  ['2 oz bag of zinc oxide', '56.7 g of zinc oxide'],
  ['1/2 tsp ppo', '2.464 ml per pound'],
  ['gold mica 5 g', '5 g of gold mica'],
  ['at 2% of the oils kaolin', '2% of oils of kaolin'],
  ['half a percent of oil weight', '0.5% of oils'],
  ['kaolin 2% of oils', '2% of oils of kaolin'],
  ['one and a half percent kaolin', '1.5% of oils of kaolin'],
  ['1 tsp per pound of oils', '4.929 ml per pound'],
  ['2 g per 500 g oils mica', '1.814 g per pound of mica'],
  ['6 g mica, weighed it twice', '6 g of mica'],
  ['1 tsp mica, then put in another half', '7.393 ml of mica'],
  ['1 tsp mica... so two of mica all told', '9.858 ml of mica'],
  ['media cucharada... ponle una cucharadita y media', '7.393 ml'],
  ['2 heaping... no, I levelled them. 2 tsp', '9.858 ml'],
  ['mica', 'refused: powder-without-amount'],
  ['5 g of that mica', '5 g of mica'],
  ['between 1 and 2 tsp mica', '4.929 ml to 9.858 ml of mica'],
  ["it's 2 tsp mica please", '9.858 ml of mica'],
  ['tsp mica', '4.929 ml of mica'],
  ['un par de cucharaditas de mica', '9.858 ml of mica'],
])('“%s” is %s', (text, told) => {
  expect(powderOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['blue bottom white top', ['1 parts blue; 1 parts white', '1 parts blue; 1 parts white']],
  [
    'top blue middle white bottom pink',
    ['1 parts pink; 1 parts white; 1 parts blue', '1 parts pink; 1 parts white; 1 parts blue'],
  ],
  ['blue white top pink bottom', [null, '1 parts pink; 1 parts white; 1 parts blue']],
  ['bottom blue bottom white', [null, null]],
  ['blue bottom top white', [null, '1 parts blue; 1 parts white']],
  ['blue then white then pink', [null, '1 parts blue; 1 parts white; 1 parts pink']],
  ['top blue white', [null, '1 parts white; 1 parts blue']],
  ['blue white pink top', [null, '1 parts blue; 1 parts white; 1 parts pink']],
  ['start blue white top pink', [null, '1 parts blue; 1 parts white; 1 parts pink']],
  ['white middle blue top pink bottom', ['1 parts pink; 1 parts white; 1 parts blue', null]],
  ['blue top white top pink', [null, '1 parts blue; 1 parts white; 1 parts pink']],
])('by its places “%s” is %j', (text, told) => {
  expect(placesOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['white at the bottom and blue on top', '1 parts white; 1 parts blue'],
  ['white top, blue top', undefined],
  ['white, blue top', undefined],
  ['white and blue top, pink bottom', undefined],
  ['white at the top', undefined],
])('clause by clause “%s” is %s', (text, told) => {
  expect(placedByClause(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['white sits on teal, teal on navy', '1 parts navy; 1 parts teal; 1 parts white'],
  ['white on teal', '1 parts teal; 1 parts white'],
  ['white on teal, pink on navy', undefined],
  ['white on gravel', undefined],
  ['blue', undefined],
])('resting on another, “%s” is %s', (text, told) => {
  expect(resting(text)).toEqual(told);
});
