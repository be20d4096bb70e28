import { describe, expect, test } from 'vitest';
import { parseAdditives } from '../../../../src/engine/batch/additives/additives.ts';
import { findColourant } from '../../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../../src/engine/colourants/catalogue.ts';
import {
  BARRED,
  barredIn,
  isPoison,
  refuseBarred,
  refuseBarredJar,
  refusePoisonIn,
} from '../../../../src/engine/hazards/index.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { euListings, usListings } from '../../../../src/engine/stability/listings.ts';
import { meantByText } from '../../../../src/records/shelf/meant.ts';
import { wordsIn } from '../../../../src/words/index.ts';

const reasonOf = (text: string) => barredIn(text)?.reason;
const refusalOf = (act: () => unknown) => {
  try {
    act();
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal;
    throw refusal;
  }
  return undefined;
};

const rows = BARRED.flatMap(({ reason, names, hues = '', ci = [] }) =>
  [...names.split('; '), ...hues.split('; ').filter(Boolean), ...ci].map(name => ({ reason, name })),
);

test.each([
  ['cadmium red', true],
  ['lead', true],
  // The hue of a poison too, and nothing that is only sold for something else.
  ['cobalt blue', true],
  ['acrylic paint', false],
  ['gold mica', false],
])('%s is a poison: %s', (name, isOne) => {
  expect(isPoison(name)).toBe(isOne);
});

test('a poison stands before a mere hue, whichever is named first, and a longer hue before the metal in it', () => {
  expect(barredIn('cobalt blue, lead')).toMatchObject({ reason: 'lead', hue: false });
  expect(barredIn('lead, cobalt blue')).toMatchObject({ reason: 'lead', hue: false });
  expect(barredIn('my cobalt blue')).toMatchObject({ reason: 'cobalt', hue: true });
  expect(barredIn('cobalt powder')).toMatchObject({ reason: 'cobalt', hue: false });
  expect(refusalOf(() => refusePoisonIn('Mica, lead'))?.values).toEqual({
    text: 'Mica, lead',
    reason: 'lead',
    hue: false,
  });
});

describe('colours that stay out of soap', () => {
  test.each(rows)('$name ($reason) finds itself and is refused as a colourant', ({ reason, name }) => {
    expect(reasonOf(name)).toBe(reason);
    const refusal = refusalOf(() => findColourant(name));
    expect(refusal?.id === 'colour-barred' || refusal?.id === 'metal-or-mica').toBe(true);
  });

  test('every reason is said in both languages, in one sentence or two', () => {
    for (const { reason } of BARRED)
      for (const language of ['en', 'es'] as const)
        for (const hue of [true, false]) {
          const said = wordsIn(language).refusal(new Refusal('colour-barred', { text: 'x', reason, hue }));
          expect(said.length).toBeGreaterThan(60);
          expect(said).not.toMatch(/undefined/);
        }
  });

  // 21 CFR 73, 74 and Annex IV: what the law lists is refused by no other reason than its name's own.
  test('nothing the catalogue or the lists hold is barred', () => {
    const names = colourants.flatMap(({ names, synonyms, ci }) => [names.en, names.es, ...synonyms, ...ci]);
    expect(names.filter(name => barredIn(name))).toEqual([]);
    const numbers = [...usListings, ...euListings].flatMap(({ ci }) => ci);
    // Listed by the EU alone and struck off, or never listed, in the US: barred for both.
    const euAlone = ['16185', '45430', '77346'];
    expect(numbers.filter(number => barredIn(number)).toSorted()).toEqual(euAlone);
    expect(usListings.filter(({ ci }) => ci.some(number => euAlone.includes(number)))).toEqual([]);
    expect(usListings.filter(({ name }) => barredIn(name))).toEqual([]);
  });

  test.each([
    'cadmium-free yellow',
    'lead-free white',
    'sin plomo blanco',
    'cobalt blue mica',
    'mica azul cobalto',
    'emerald green mica',
    'mica verde esmeralda',
    'vermilion tone',
    'chromium oxide green',
    'óxido de cromo verde',
    'ultramarine blue',
    'poison green',
    'pastel pink',
    'amaranth pink mica',
    'magnesium stearate',
    'dutch cocoa',
    'leading lady pink',
    'crimson lake',
    'candy apple red',
    'Mica, Titanium Dioxide, Carmine',
    '',
  ])('%s passes', name => {
    expect(barredIn(name)).toBeUndefined();
    expect(() => refuseBarred(name)).not.toThrow();
  });

  test('of a list only poisons are refused: a dye inside a resin is for the law', () => {
    expect(refusalOf(() => refusePoisonIn('Mica (CI 77019), Lead Chromate'))?.id).toBe('colour-barred');
    expect(refusalOf(() => refusePoisonIn('mica, CI 77199'))?.id).toBe('colour-barred');
    expect(refusalOf(() => refusePoisonIn('Polyester-3, Basic Violet 10'))).toBeUndefined();
  });

  test.each([
    ['CADMIUM RED', 'cadmium'],
    ['amarillo de cadmio', 'cadmium'],
    ['Rojo cadmio', 'cadmium'],
    ["Scheele's green", 'arsenic'],
    ['blanco de plomo', 'lead'],
    ['bermellón', 'mercury'],
    ['Rhodamine B', 'delisted-dye'],
    ['Colorante alimentario rojo', 'food-colouring'],
    ["artist's pigment blue", 'paint'],
    ['ceras de colores', 'crayon'],
    ['candle dye chips', 'candle-dye'],
  ])('%s is %s', (name, reason) => {
    expect(reasonOf(name)).toBe(reason);
  });
});

describe('barred under every name and number it has', () => {
  // 21 CFR 81.10 and 81.30: FD&C Red No. 3 in cosmetics, FD&C Red No. 2 (amaranth); E numbers of Regulation 1333/2008.
  test.each([
    'Red 3',
    'FD&C Red No. 3',
    'erythrosine',
    'eritrosina',
    'E127',
    'E 127',
    'CI 45430',
    '45430:1',
    'E123',
    'CI 16185',
    'acid red 27',
  ])('%s is struck off in the US', name => {
    expect(reasonOf(name)).toBe('us-delisted');
    expect(refusalOf(() => findColourant(name))?.id).toBe('colour-barred');
  });

  test.each([
    'CI 45430',
    'Mica, CI 45430',
    'Mica (CI 77019), E127',
    'mica, erythrosine',
    'Mica, CI 77346',
    'Mica, Cobalt Aluminum Oxide',
  ])('of the list “%s” it is refused as of a name', list => {
    expect(refusalOf(() => refusePoisonIn(list))?.id).toBe('colour-barred');
  });

  test.each([
    ['cobalt blue', true],
    ['azul cobalto', true],
    ['CI 77346', false],
    ['cobalt aluminum oxide', false],
    ["Thenard's blue", false],
    ['pigment blue 28', false],
  ])('%s has one answer: cobalt', (name, hue) => {
    expect(barredIn(name)).toMatchObject({ reason: 'cobalt', hue });
    expect(refusalOf(() => findColourant(name))?.id).toBe('colour-barred');
    expect(refusalOf(() => meantByText(name))?.id).toBe('colour-barred');
  });

  test.each([
    ['sindoor', 'lead'],
    ['kumkum', 'lead'],
    ['surma', 'lead'],
    ['kohl', 'lead'],
    ['galena', 'lead'],
    ['stibnite', 'antimony'],
    ['azarcón', 'lead'],
    ['greta', 'lead'],
    ['lead', 'lead'],
    ['silver white', 'lead'],
    ['patent yellow', 'lead'],
    ['mitis green', 'arsenic'],
    ['amarillo rey', 'arsenic'],
    ['zinc green', 'chromate'],
    ['Brunswick green', 'chromate'],
    ['bicromato', 'chromate'],
    ['potassium permanganate', 'oxidiser'],
    ['permanganato', 'oxidiser'],
    ['malachite', 'copper-poison'],
    ['methylene blue', 'delisted-dye'],
    ['mercurochrome', 'mercury'],
    ['bloodroot', 'burning-plant'],
    ['pokeberry', 'burning-plant'],
    ['dutch metal', 'metal'],
    ['magnesium powder', 'metal'],
    ['textile dye', 'cloth-dye'],
    ['gises', 'paint'],
    ['tiza de colores', 'paint'],
    ['colour for cement', 'paint'],
    ['pastels', 'paint'],
    ['oil pastel', 'paint'],
    ['chalk pastel', 'paint'],
    ['resin mica', 'paint'],
    ['powder coat', 'paint'],
  ])('%s is %s', (name, reason) => {
    expect(reasonOf(name)).toBe(reason);
  });

  test('a hue is never told to write what is then refused: its label is asked for', () => {
    for (const [language, list] of [
      ['en', 'ingredient list'],
      ['es', 'lista de ingredientes'],
    ] as const) {
      const said = wordsIn(language).refusal(
        new Refusal('colour-barred', { text: 'vermilion', reason: 'mercury', hue: true }),
      );
      expect(said).toContain(list);
      expect(said).not.toMatch(/vermilion mica|mica vermilion/);
    }
  });

  test('a jar’s own name is looked at before what it was described as', () => {
    for (const name of ['CI 45430', 'Cadmium red', 'malachite', 'Red 3'])
      expect(refusalOf(() => refuseBarredJar(name))?.id).toBe('colour-barred');
    // Poetic names, hues, and what a description or a label may clear.
    for (const name of ['Ink of night', 'Cobalt blue', 'Crayon box', 'Evening sky'])
      expect(refusalOf(() => refuseBarredJar(name))).toBeUndefined();
  });

  test.each([
    ['aluminium powder 5 g', 'metal-never-in-lye'],
    ['bronze powder 2 g', 'metal-never-in-lye'],
    ['vermilion 1 g', 'colour-barred'],
    ['white lead 1%', 'colour-barred'],
    ['albayalde 1%', 'colour-barred'],
  ])('as an additive, %s is refused for what it is', (text, id) => {
    expect(refusalOf(() => parseAdditives(text))?.id).toBe(id);
  });
});

test('the gem is no pigment by the spoon, and its synthetic namesake is', () => {
  for (const name of ['lapis lazuli', 'genuine lapis lazuli', 'lapislázuli', 'natural ultramarine']) {
    const refusal = refusalOf(() => findColourant(name));
    expect(refusal?.id).toBe('no-colour');
    for (const language of ['en', 'es'] as const)
      expect(wordsIn(language).refusal(refusal!)).toMatch(/CI 77007/);
  }
  expect(findColourant('synthetic lapis lazuli').id).toBe(findColourant('ultramarine blue').id);
});
