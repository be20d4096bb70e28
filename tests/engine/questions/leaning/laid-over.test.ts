import { expect, test } from 'vitest';
import type { Ran } from '../../../../src/engine/questions/leaning/before.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';

/*
 * What a short turn changes of what was asked before, and nothing else of it; what has no place there stands alone (common practice of chat).
 * Near lye only the whole of a recipe is made larger or smaller, and an oil that is only taken away leaves none.
 */

const ran = (command: string, given: Ran['given'], job?: Ran['job']): Ran => ({
  kind: 'command',
  job,
  command,
  given,
});

function laid(before: Ran, turn: string): string | undefined {
  const lean = leanOf(turn, { last: before, ran: before });
  if (lean?.kind === 'part') return `part ${lean.of}`;
  if (lean?.kind === 'asks') return `asks ${lean.lacks}`;
  if (lean?.kind !== 'runs') return lean?.kind;
  return lean.readings
    .map(
      ({ command, given }) =>
        `${command}: ${Object.entries(given)
          .map(([name, one]) => `${name} ${one}`)
          .join('; ')}`,
    )
    .join(' | ');
}

test.each<readonly [turn: string, told: string | undefined]>([
  [
    'and for half that',
    'dose: colourant mica; portion 0.5 kilo oils | dose: colourant mica; portion 1 kilo oils; strength 25% of full',
  ],
  ['for 3 cups', 'dose: colourant mica; portion 3 cups'],
  ['500 g of batter', 'dose: colourant mica; portion 500 g batter'],
  ['and 2 kilos', 'dose: colourant mica; portion 2 kilos oils'],
  ['in batter', 'dose: colourant mica; portion 1 kilo batter'],
  ['rose clay', 'dose: colourant rose clay; portion 1 kilo oils'],
  ['the blue one', 'dose: colourant blue mica; portion 1 kilo oils'],
  ['blue', 'dose: colourant blue mica; portion 1 kilo oils'],
  ['pastel', 'dose: colourant mica; portion 1 kilo oils; strength pastel'],
  ['lighter and for 2 cups', 'dose: colourant mica; portion 2 cups; strength pastel'],
  ['with glycerin', 'dose: colourant mica; portion 1 kilo oils; carrier glycerin'],
  ['more teal', undefined],
  ['will it fade', 'colourant check: item mica'],
  ['how much for 12 bars', undefined],
  ['same but darker', 'dose: colourant mica; portion 1 kilo oils; strength full'],
  ['thanks', undefined],
  ['no', undefined],
  ['why', 'part why'],
  ['and if it is 10%', undefined],
])('after mica for a kilo of oils: %s', (turn, told) => {
  expect(laid(ran('dose', { colourant: 'mica', portion: '1 kilo oils' }, 'dose'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['lighter', 'dose: colourant ultramarine blue; portion 2 cups; strength tint; carrier glycerin'],
  ['darker', 'dose: colourant ultramarine blue; portion 2 cups; strength medium; carrier glycerin'],
  ['in water', 'dose: colourant ultramarine blue; portion 2 cups; strength pastel; carrier water'],
  ['full', 'dose: colourant ultramarine blue; portion 2 cups; strength full; carrier glycerin'],
  ['500 g oils', 'dose: colourant ultramarine blue; portion 500 g oils; strength pastel; carrier glycerin'],
  ['for half', 'dose: colourant ultramarine blue; portion 1 cups; strength pastel; carrier glycerin'],
  ['the pink one', 'dose: colourant pink ultramarine; portion 2 cups; strength pastel; carrier glycerin'],
  ['y para 1 kilo', 'dose: colourant ultramarine blue; portion 1 kilo; strength pastel; carrier glycerin'],
  ['tres tazas', 'dose: colourant ultramarine blue; portion 3 tazas; strength pastel; carrier glycerin'],
  ['doble', 'dose: colourant ultramarine blue; portion 4 cups; strength pastel; carrier glycerin'],
  ['la mitad', 'dose: colourant ultramarine blue; portion 1 cups; strength pastel; carrier glycerin'],
])('after a pastel blue in glycerin for two cups: %s', (turn, told) => {
  expect(
    laid(
      ran(
        'dose',
        { colourant: 'ultramarine blue', portion: '2 cups', strength: 'pastel', carrier: 'glycerin' },
        'dose',
      ),
      turn,
    ),
  ).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['for 2 cups', 'dose: colourant mica; portion 2 cups'],
  ['500 g', 'dose: colourant mica; portion 500 g'],
  ['pastel', 'dose: colourant mica; strength pastel'],
  ['half', undefined],
])('after mica for no portion yet: %s', (turn, told) => {
  expect(laid(ran('dose', { colourant: 'mica' }, 'dose'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['madder', 'colourant check: item madder'],
  ['and madder?', 'colourant check: item madder'],
  ['for 500 g', 'dose: colourant spirulina; portion 500 g'],
  ['in glycerin', 'dose: colourant spirulina; carrier glycerin'],
  ['the blue one', undefined],
  ['twice', undefined],
  ['darker', undefined],
  ['10%', undefined],
  ['y la cúrcuma', 'colourant check: item curcuma'],
])('after whether spirulina survives: %s', (turn, told) => {
  expect(laid(ran('colourant check', { item: 'spirulina' }, 'survives-lye'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['lighter', 'match: target light teal'],
  ['darker', 'match: target dark teal'],
  ['more green', 'match: target teal but more green'],
  ['navy', 'match: target navy'],
  ['for 2 cups', 'match: target teal; portion 2 cups'],
  ['mica', undefined],
  ['in oil', undefined],
  ['10%', undefined],
  ['half', 'match: target teal; portion 0.5 cup'],
  ['más claro', 'match: target light teal'],
])('after a teal: %s', (turn, told) => {
  expect(laid(ran('match', { target: 'teal' }, 'mix'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['lighter', 'match: target very light teal; portion 2 cups'],
  ['darker', 'match: target teal; portion 2 cups'],
  ['for 500 g', 'match: target light teal; portion 500 g'],
  ['half', 'match: target light teal; portion 1 cups'],
])('after a light teal for two cups: %s', (turn, told) => {
  expect(laid(ran('match', { target: 'light teal', portion: '2 cups' }, 'mix'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['más claro', 'match: target verde'],
  ['más oscuro', 'match: target verde muy oscuro'],
  ['more blue', 'match: target verde oscuro but more blue'],
])('after un verde oscuro: %s', (turn, told) => {
  expect(laid(ran('match', { target: 'verde oscuro' }, 'mix'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['for 500 g', 'preview: mix 1 tsp gold mica; portion 500 g'],
  ['rose clay', 'preview: mix 1 tsp rose clay; portion 2 cups'],
  ['lighter', undefined],
  ['pastel', undefined],
  ['in the EU', undefined],
  ['half', 'preview: mix 1 tsp gold mica; portion 1 cups'],
  ['blue', 'preview: mix 1 tsp blue mica; portion 2 cups'],
])('after a look at gold mica: %s', (turn, told) => {
  expect(laid(ran('preview', { mix: '1 tsp gold mica', portion: '2 cups' }, 'preview'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['for 500 g', 'preview: mix 1 tsp gold mica + 2 g clay; portion 500 g'],
  ['rose clay', undefined],
])('after a look at two colours: %s', (turn, told) => {
  expect(
    laid(ran('preview', { mix: '1 tsp gold mica + 2 g clay', portion: '2 cups' }, 'preview'), turn),
  ).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['gold mica', 'shelf add: item gold mica; amount 80 g'],
  ['30 g', 'shelf add: item rose clay; amount 30 g'],
  ['30', 'shelf add: item rose clay; amount 30 g'],
  ['and 50 g of gold mica', undefined],
  ['the blue one', undefined],
  ['half', undefined],
])('after rose clay that was bought: %s', (turn, told) => {
  expect(laid(ran('shelf add', { item: 'rose clay', amount: '80 g' }, 'shelf-add'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['gold mica', 'shelf use: item gold mica; amount 8 g'],
  ['5 g', 'shelf use: item rose clay; amount 5 g'],
  ['5', 'shelf use: item rose clay; amount 5 g'],
  ['half', undefined],
])('after rose clay that was used: %s', (turn, told) => {
  expect(laid(ran('shelf use', { item: 'rose clay', amount: '8 g' }, 'shelf-use'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['gold mica', 'shelf show: item gold mica'],
  ['and the blue', 'shelf show: item blue'],
  ['blue and green', undefined],
  ['5 g', undefined],
])('after rose clay on the shelf: %s', (turn, told) => {
  expect(laid(ran('shelf show', { item: 'rose clay' }, 'shelf-show'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['double it', 'plan: oils 1600 g olive, 400 g coconut; superfat 5'],
  ['half', 'plan: oils 400 g olive, 100 g coconut; superfat 5'],
  ['for 2 kg', 'plan: oils 1600 g olive, 400 g coconut; superfat 5'],
  ['with 8%', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['superfat 8', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['8', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['with lard instead of coconut', 'plan: oils 800 g olive, 200 g lard; superfat 5'],
  ['swap the coconut for palm', 'plan: oils 800 g olive, 200 g palm; superfat 5'],
  ['no coconut', 'asks whole-recipe'],
  ['plus 100 g castor', 'plan: oils 800 g olive, 200 g coconut, 100 g castor; superfat 5'],
  ['with KOH', 'plan: oils 800 g olive, 200 g coconut; superfat 5; lye KOH'],
  ['33% lye', undefined],
  ['and at 2:1', undefined],
  ['al doble', 'plan: oils 1600 g olive, 400 g coconut; superfat 5'],
  ['con manteca en vez de coco', 'plan: oils 800 g olive, 200 g manteca; superfat 5'],
  ['sin coco', 'asks whole-recipe'],
  ['is it too much', 'part too-much'],
  ['and 5 kg', 'plan: oils 4000 g olive, 1000 g coconut; superfat 5'],
  ['lye is 97%', 'plan: oils 800 g olive, 200 g coconut; superfat 5; purity 97'],
])('after lye for weighed oils: %s', (turn, told) => {
  expect(laid(ran('plan', { oils: '800 g olive, 200 g coconut', superfat: '5' }, 'lye'), turn)).toBe(told);
});

test.each<readonly [turn: string, told: string | undefined]>([
  ['double it', 'plan: oils 80% olive, 20% coconut; size 2000 g oils; superfat 5'],
  ['for 2 kg', 'plan: oils 80% olive, 20% coconut; size 2000 g oils; superfat 5'],
  ['500 g oils', 'plan: oils 80% olive, 20% coconut; size 500 g oils; superfat 5'],
  ['2 kg', 'plan: oils 80% olive, 20% coconut; size 2000 g oils; superfat 5'],
  ['with 8%', 'plan: oils 80% olive, 20% coconut; size 1 kg oils; superfat 8'],
  ['swap the coconut for palm', 'asks whole-recipe'],
])('after lye for shares of oils: %s', (turn, told) => {
  expect(
    laid(ran('plan', { oils: '80% olive, 20% coconut', size: '1 kg oils', superfat: '5' }, 'lye'), turn),
  ).toBe(told);
});
