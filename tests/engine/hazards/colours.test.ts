import { describe, expect, test } from 'vitest';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import { findColourant } from '../../../src/engine/colourants/find.ts';
import { BARRED, barredIn, refuseBarred, refusePoisonIn } from '../../../src/engine/hazards/index.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { euListings, usListings } from '../../../src/engine/stability/listings.ts';
import { wordsIn } from '../../../src/words/index.ts';

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
    expect(numbers.filter(number => barredIn(number))).toEqual([]);
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
