import { expect, test } from 'vitest';
import { colourantById } from '../../../../../src/engine/colourants/catalogue.ts';
import { bleeds, holderOf } from '../../../../../src/engine/colourants/holding-hues.ts';
import { hueAsked } from '../../../../../src/engine/questions/found/asked/hue-asked.ts';

/* Which colourant makers reach for of each hue, since neither lye nor light moves it: common practice (no source). */

test.each([
  ['a good green pls', 'chromium-oxide-green'],
  ['what green won’t go brown', 'chromium-oxide-green'],
  ['which purple stays', 'ultramarine-violet'],
  ['mejor morado q aguante la soda porfa', 'ultramarine-violet'],
  ['que azul no cambia con la sosa?', 'ultramarine-blue'],
  ['red that stays red', 'red-30-lake'],
  ['q oxido me da un rojo teja', 'red-iron-oxide'],
  ['what do you use for orange', 'orange-iron-oxide'],
  ['con que hago amarillo fuerte', 'yellow-iron-oxide'],
  ['how much blue for one loaf', 'ultramarine-blue'],
])('whoever asks “%s” is told of %s', (question, id) => {
  expect(hueAsked(question)?.colourant.id).toBe(id);
});

test.each([
  'que color natural da verde que no se vaya',
  'what red do you have on the shelf',
  'which blue is stronger than the other',
  'my green that stays green went brown',
  'how much blue for 2 cups',
  'what good is soap',
  'good morning everyone',
])('“%s” asks for no hue that holds', question => {
  expect(hueAsked(question)).toBeUndefined();
});

// Regulation (EC) 1223/2009 Annex IV and the trade’s own warnings: lakes and dyes dissolve in part, mineral grains do not (common practice).
test('what dissolves in part wanders, what is a grain stays', () => {
  const wander = (id: string) => bleeds(colourantById(id)!);
  expect(
    ['activated-charcoal', 'ultramarine-blue', 'red-iron-oxide', 'gold-mica', 'rose-clay'].filter(wander),
  ).toEqual([]);
  expect(['red-40-lake-mica', 'blue-1-lake-mica'].filter(one => !wander(one))).toEqual([]);
});

test('a word that is no hue has no colourant', () => {
  expect(['soap', 'mould', 'constructor', ''].map(holderOf)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
