import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../../../src/engine/colourants/catalogue.ts';
import { survivalAsked } from '../../../../../src/engine/questions/found/asked/survives.ts';
import {
  PLANT_CLASS_ORIGINS,
  PLANT_CLASSES,
  plantNamed,
} from '../../../../../src/engine/stability/plant-classes.ts';

/*
 * What colours each: anthocyanins of berries and red cabbage (Eiro & Heinonen 2002), betalains of beet, cactus fruit and pitaya
 * (Azeredo 2009), carotenes of carrot, tomato and papaya (Kimura et al. 1990); the others by botany, from memory.
 */
test.each([
  ['does blackberry survive lye', 'blackberry', 'anthocyanins'],
  ['la col lombarda aguanta la sosa?', 'red cabbage', 'anthocyanins'],
  ['is prickly pear ok in soap', 'prickly pear', 'betalains'],
  ['will beetroot juice hold up in cold process', 'beetroot', 'betalains'],
  ['does papaya keep its colour in soap', 'papaya', 'carotenoids'],
  ['carrot juice in place of the water, stays orange?', 'carrot', 'carotenoids'],
  ['¿el brócoli se mantiene verde en el jabón?', 'broccoli', 'chlorophyll'],
  ['onion skins in lye, do they fade', 'onion skin', 'flavonoids'],
  ['el zumaque se mantiene en jabón', 'sumac', 'tannins'],
  ['palo de campeche aguanta la sosa', 'logwood', 'dyewood'],
  ['espresso instead of water, does the brown stay?', 'coffee', 'browned-sugar'],
  ['blue spirulina ok in soap', 'blue spirulina', 'phycocyanin'],
  ['guava ok in soap', 'guava', 'tannins'],
  ['el jugo de mora aguanta la sosa', 'blackberry', 'anthocyanins'],
  ['la flor de chícharo mariposa en jugo aguanta la sosa?', 'butterfly pea', 'anthocyanins'],
])('“%s” asks of %s, coloured by %s', (question, plant, of) => {
  expect(survivalAsked(question)).toMatchObject({ plant, of });
});

test('what no list holds is named as it was typed', () => {
  expect(survivalAsked('does jackfruit survive lye')).toEqual({
    name: 'jackfruit',
    isLiquid: false,
    isOfSoap: true,
  });
  expect(survivalAsked('copoazu aguanta la sosa')?.name).toBe('copoazu');
});

test('a juice, a tea or a puree goes in for water, a powder does not', () => {
  expect(survivalAsked('will blackberry juice survive lye')?.isLiquid).toBe(true);
  expect(survivalAsked('will blackberry survive lye')?.isLiquid).toBe(false);
});

test.each([
  ['an amount', 'how much carrot juice for 500 g of oils, does it stay orange'],
  ['a bar that is made', 'my carrot juice soap turned beige, does it fade'],
  ['what is drunk', 'does matcha in soap keep if i drink it'],
  ['what the catalogue holds', 'will ultramarine survive lye'],
  ['an oil', 'does olive oil survive lye'],
  ['a scent', 'does carrot essential oil survive lye'],
  ['nothing named', 'will it survive lye'],
  ['soap itself', 'is my lye ok in soap'],
  ['no soap and no colour', 'does spinach keep in the fridge'],
])('%s is another matter: “%s”', (_, question) => {
  expect(survivalAsked(question)).toBeUndefined();
});

test('every class tells its source, and says what the catalogue says of the plants that both know', () => {
  for (const of of PLANT_CLASSES) expect(PLANT_CLASS_ORIGINS[of].source).toMatch(/\p{L}{4}/u);
  const destroyed = ['beetroot', 'hibiscus', 'butterfly-pea'];
  for (const id of destroyed) {
    expect(colourantById(id)?.alkali.behaviour).toBe('destroyed');
    expect(plantNamed(id.replace('-', ' '))?.of).toMatch(/^(?:anthocyanins|betalains)$/u);
  }
  expect(plantNamed('paprika')?.of).toBe('carotenoids');
  expect(plantNamed('ultramarine')).toBeUndefined();
});

describe('where it is surely asked what lye does', () => {
  test.each([
    ['lavender buds brown or nah', 'lavender buds', 'tannins'],
    ['and dandelion heads, gone in a week?', 'dandelion flower', 'carotenoids'],
    ['sorrel petals, any good', 'hibiscus', 'anthocyanins'],
    ['el verde de chillca', 'chillca', 'flavonoids'],
  ])('no word has to say it: “%s”', (question, plant, of) => {
    expect(survivalAsked(question)).toBeUndefined();
    expect(survivalAsked(question, true)).toMatchObject({ plant, of });
  });

  test('what no list holds is named by what is done with it', () => {
    expect(survivalAsked('dried jackfruit, brown or not', true)?.name).toBe('dried jackfruit');
  });

  test('what is drunk, and what the catalogue holds, stays another matter', () => {
    expect(survivalAsked('matcha if i drink it', true)).toBeUndefined();
    expect(survivalAsked('ultramarine brown or nah', true)).toBeUndefined();
  });
});
