import { describe, expect, test } from 'vitest';
import { isTalk, speaksOfTrade } from '../../../../src/engine/questions/asking/of-trade.ts';
import { tellsOfMakingSoap } from '../../../../src/engine/questions/fields/other-field.ts';
import { isHotProcess, outsideField } from '../../../../src/engine/questions/fields/scope.ts';
import { pastAside, smallTalkIn } from '../../../../src/engine/questions/fields/small-talk.ts';
import { heldWhateverIsMeant } from '../../../../src/engine/questions/fields/unsure.ts';
import { termAsked } from '../../../../src/engine/questions/found/trade-terms.ts';

/* What is talk, what is of the trade, and what is asked of somebody with hands; the sentences are our own. */

describe('a sentence', () => {
  test.each([
    'UK obviously here we are again',
    'in the EU as it happens, says my sister',
    'the batter went thick',
    "it'd gone stiff when my sister rang",
    'se me puso duro cuando llamó mi hermana',
    'my sister has a blue car',
    'my nephew went green with envy',
    'my husband burned his hand',
    'the candle wax was hot',
    'my daughter likes purple',
    'medium',
    'medium I guess, not barbie',
    '500 g',
    'what do you do',
    'the oil ran out',
    'hello, how much mica',
    'someone knocked over the pots again',
  ])('of the trade, or that an answer hangs on: %s', sentence => {
    expect(speaksOfTrade(sentence)).toBe(true);
  });

  test.each([
    'hello everyone',
    'good morning all, lovely day here',
    'my sister came for tea yesterday',
    'the kids are at school today',
    'it has been raining all week',
    'my mum knocked over the soil',
    'my mum knocked over the salt on the floor',
    'I paid the bus fare with money',
    'thanks',
    'hace mucho calor en mi casa',
    'la semana pasada estuve en la playa',
    'I am knackered after work today',
    'the game was on last night',
  ])('of family, weather and the day: %s', sentence => {
    expect(speaksOfTrade(sentence)).toBe(false);
    expect(isTalk(sentence)).toBe(true);
  });

  test.each(['los pelados de la esquina cantan', 'like the sea in winter', 'we moved house last month'])(
    'of neither, and kept: %s',
    sentence => {
      expect([speaksOfTrade(sentence), isTalk(sentence)]).toEqual([false, false]);
    },
  );
});

describe('said to pass the time', () => {
  test.each([
    ['tell me a joke', 'joke'],
    ['do you know any jokes about soap', 'joke'],
    ['cuéntame un chiste', 'joke'],
    ['you are the best', 'praise'],
    ['gracias, eres un crack', 'praise'],
    ['thanks for the bars, they are lovely', 'praise'],
    ['the bars were lovely, thanks', 'praise'],
    ['sorry wrong chat', 'wrongChat'],
    ['perdón, chat equivocado', 'wrongChat'],
    ['good night all', 'night'],
    ['buenas noches a todos', 'greets'],
    ['hello everyone', 'greets'],
    ['good morning all, lovely day here', 'greets'],
    ['are you a robot', 'program'],
    ['are you a real person or a program', 'program'],
    ['eres un bot', 'program'],
    ['can you remind me to unmould tomorrow', 'remind'],
    ['can you draw me a swirl', 'draw'],
    ['dibújame un dragón', 'draw'],
  ] as const)('%s: %s', (text, kind) => {
    expect(smallTalkIn(text)).toBe(kind);
  });

  test.each([
    ['a weight is told', 'tell me a joke about 500 g of lye'],
    ['somebody is hurt', 'joke about my burnt hand, doctor'],
    ['help is called for', 'tell me a joke and help'],
    ['something is asked', 'hello, how much mica'],
    [
      'it is a long story',
      'would you be so kind and remind me at some point later on today that I have to look at it',
    ],
    ['it is of the trade', 'what does soap taste like to the cat of my aunt who lives next door'],
  ])('not where %s: %s', (_, text) => {
    expect(smallTalkIn(text)).toBeUndefined();
  });

  test.each([
    ["himself says it's cheaper in the shop. Anyway, how do I wet mica", 'how do I wet mica'],
    ['my mum has a cat, anyway, how much mica for 2 cups', 'how much mica for 2 cups'],
    // What keeps from harm, and what hangs on a figure, is never passed by.
    [
      'he burned his hand. Anyway, how much mica for 2 cups',
      'he burned his hand. Anyway, how much mica for 2 cups',
    ],
    ['500 g olive. Anyway, how much lye', '500 g olive. Anyway, how much lye'],
    ['how much mica', 'how much mica'],
    [
      'we had a tin of turmeric on the ship that nobody ordered. Anyways I have some yet, what goes into a loaf',
      'turmeric: I have some yet, what goes into a loaf',
    ],
    ['we had a tin of turmeric on the ship. Anyway, how much mica for 2 cups', 'how much mica for 2 cups'],
  ])('what is asked behind an aside: %s', (text, asked) => {
    expect(pastAside(text)).toBe(asked);
  });
});

describe('where nothing was understood', () => {
  test.each([
    ['lye is hot and the child came in', 'unsure'],
    ['is raw soap sharp', 'unsure'],
    ['something with lye', 'unsure'],
    ['tell me about batter', 'unsure'],
    ['my dog was near', 'unsure'],
    ['my cat is ill', 'unsure'],
    ['can I sell my soap', 'unsure'],
    ['what is soap', 'soap-at-large'],
    ['how long does soap keep', 'soap-at-large'],
    ['qué es la traza', 'soap-at-large'],
    ['do people like lavender', undefined],
    ['is it good', undefined],
    ['paint the wall', undefined],
  ] as const)('%s: %s', (text, held) => {
    expect(heldWhateverIsMeant(text)).toBe(held);
  });
});

test.each([
  ['what is a superfat', 'superfat'],
  ['what does trace mean', 'trace'],
  ['qué es la traza', 'trace'],
  ['what is ppo', 'ppo'],
  ['ppo', 'ppo'],
  ['my trace was thick', undefined],
  ['what is a cake', undefined],
])('a word of the trade: %s', (text, term) => {
  expect(termAsked(text)).toBe(term);
});

test.each([
  ['make soap with me', true],
  ['will you help me make soap', true],
  ['I made soap', false],
  ['help me with the cake', false],
])('told to make soap: %s: %s', (text, is) => {
  expect(tellsOfMakingSoap(text)).toBe(is);
});

test.each([
  ['hot process soap', true],
  ['slow cooker', true],
  ['cold process soap', false],
])('made on heat: %s: %s', (text, is) => {
  expect(isHotProcess(text)).toBe(is);
});

test.each([
  ['hair dye', 'body-care'],
  ['how do I bake a cake', 'food'],
  ['my candles are sooting', 'candles'],
  ['what is the price of gold', 'business'],
  ['paint the wall', undefined],
  ['how much mica for 2 cups', undefined],
])('another field by name: %s: %s', (text, field) => {
  expect(outsideField(text)).toBe(field);
});
