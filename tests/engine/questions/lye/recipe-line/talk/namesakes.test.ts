import { describe, expect, test } from 'vitest';
import { inOrder } from '../../../../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { plainWords } from '../../../../../../src/engine/questions/lye/amounts/words.ts';
import { withoutNamesakes } from '../../../../../../src/engine/questions/lye/recipe-line/talk/namesakes.ts';
import { readLyeInChat } from '../../../../../../src/engine/questions/lye/told-in-chat.ts';

const oilsOf = (text: string) => readLyeInChat(text, inOrder(text)).given.oils;
const plain = (text: string) => plainWords(text, { clauses: true });

describe('who is called as an oil is, is none', () => {
  test.each([
    [
      'Making bars for Olive, our neighbour’s spaniel: 600g lard and 200g coconut, lye at 5%?',
      '600 g lard, 200 g coconut',
    ],
    ['our goat is called Olive and the coconut is 500 g, 200 g lard, lye 5%', '500 g coconut, 200 g lard'],
    [
      'Mi perra Karité necesita jabón: 500 g de oliva, 100 g de coco. ¿Cuánta sosa? 5%',
      '500 g oliva, 100 g coco',
    ],
  ])('%s', (text, oils) => expect(oilsOf(text)).toBe(oils));
  test.each([
    'mi perra se llama Palma, 500 g de oliva',
    'para Palma, mi perra: 500 g de oliva',
    'my daughter is called Olive, 500 g lard',
  ])('only the naming goes: %s', text => expect(withoutNamesakes(plain(text))).not.toMatch(/palma|olive/u));
  test.each([
    'my cat olive knocked the jug over, 450 g coconut',
    'mi perra palma tiro la oliva, 500 g de oliva',
    'my dog is called rex, 500 g lard',
    'for olive, our best oil: 500 g',
    'our goat is called olive 200 g, 300 g lard',
  ])('what was done, and what is told with a weight, stays: %s', text => {
    expect(withoutNamesakes(text)).toBe(text);
  });
});

describe('all of one oil, with its weight behind it', () => {
  test.each([
    ['lye for 100% coconut 800 grams 20% superfat', '800 g coconut'],
    ['sosa para 100% oliva, 500 g', '500 g oliva'],
  ])('%s', (text, oils) => expect(oilsOf(text)).toBe(oils));
});

test('a strength that is cut short is none of the oils', () => {
  const text = 'olive 600 g, coconut 200 g. SF 3, lye conc. 40%';
  expect(readLyeInChat(text, inOrder(text)).given.water).toContain('40%');
});
