import { describe, expect, test } from 'vitest';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { topicsIn } from '../../../../src/engine/questions/learned/topics.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { chatSpelt } from '../../../../src/engine/text/spelling/chat-spelling.ts';

test.each([
  ['canta sosa para 700 g de oliva', 'cuánta sosa para 700 g de oliva'],
  ['kuanta soza pa un kilo de manteca', 'cuánta sosa para un kilo de manteca'],
  ['canto oxido rojo le pongo', 'cuánto oxido rojo le pongo'],
  ['hwo mcuh lye', 'how much lye'],
  ['howmuch ley', 'how much lye'],
  // Words of their own: she sings in a choir, an edge, the law.
  ['mi hija canta en el coro', 'mi hija canta en el coro'],
  ['el canto del jabon', 'el canto del jabon'],
  ['que dice la ley', 'que dice la ley'],
])('%s is %s', (typed, meant) => expect(chatSpelt(typed)).toBe(meant));

test.each([
  [
    ['the', 'frost', 'on', 'my', 'windows'],
    ['weather', 'house'],
  ],
  [['tiño', 'la', 'barba'], ['hair']],
  [['rust', 'on', 'the', 'bumper'], ['vehicle']],
  // Parts of longer words and what soap making has of its own.
  [['carbon', 'pan', 'pastilla', 'oil', 'scare'], []],
])('%j speaks of %j', (words, topics) => expect(topicsIn(words)).toEqual(topics));

describe('somebody else’s matter with a verb of the trade is outside', () => {
  test.each([
    'con qué le quito el tinte del bigote a un cliente',
    'how do i get rust marks off the bonnet of my car',
    'qué le pongo al casco de la lancha para que no se oxide',
    'will it snow on tuesday',
    'the clutch slips when i go uphill',
    'mi gallina no quiere comer',
  ])('%s', text => expect(readQuestion(text).outside).toBeDefined());

  test.each([
    'my soap has frost like spots on top',
    'how do i get a rust colour like an old car in my soap',
    'puedo usar un molde de una caja de leche para el jabon',
    'beard soap with activated charcoal, how much for 2 cups of batter',
    'my dog ran off with the loaf, can i still cut the rest of the soap tomorrow',
    'how much rose clay for 1 kg of batter, soap for a church fair',
  ])('%s stays inside', text => expect(readQuestion(text).outside).toBeUndefined());
});

test.each([
  'are you sure, you told me double last time',
  'eso no cuadra con lo que me dijiste el lunes',
  'explain how you got to that amount',
])('%s calls an answer into question', text => expect(readQuestion(text).readings[0]?.job).toBe('doubt'));

test.each(['ponme un reto de color', 'set me a colour challenge'])('%s wants the contest', text =>
  expect(readQuestion(text).readings[0]?.job).toBe('challenge'),
);

describe('whether a colour withstands lye is no alarm', () => {
  test.each([
    'la cúrcuma aguanta la soda caustica',
    'aguanta la sosa la remolacha?',
    'does turmeric survive lye',
  ])('%s', text => expect(readEmergencies(text)).toEqual([]));
  test.each([
    'la perra aguanta la soda caustica',
    'aguanta la soda caustica mi mano',
    'la curcuma aguanta la soda caustica pero me quema',
    'does my kid survive lye',
  ])('%s may be', text => expect(readEmergencies(text)).not.toEqual([]));
});
