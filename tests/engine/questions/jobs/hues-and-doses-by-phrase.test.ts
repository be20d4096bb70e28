import { describe, expect, test } from 'vitest';
import { isSurelyOurs } from '../../../../src/engine/questions/fields/surely-ours.ts';
import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { mixOf } from '../../../../src/engine/questions/found/mix-told.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { plantsBeside, unlistedIn } from '../../../../src/engine/questions/found/names/unlisted.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { asksForDose } from '../../../../src/engine/questions/jobs/dose-by-phrase.ts';
import { asksHowAHueIsMade } from '../../../../src/engine/questions/jobs/hue-made.ts';

/* What makers ask in so many words (from memory of how they write; the words are our own). */

const heard =
  <Told>(
    reader: (
      ...read: [words: ReturnType<typeof foundIn>['words'], found: ReturnType<typeof foundIn>['found']]
    ) => Told,
  ) =>
  (question: string): Told => {
    const { words, found } = foundIn(question);
    return reader(words, found);
  };

describe('how a hue is made', () => {
  const isHueMade = heard(asksHowAHueIsMade);
  test.each([
    'como consigo el dorado de la piedra al atardecer',
    'how do i get a green like moss',
    'how to get the red of a brick',
    'what do i mix for a coral',
    'con que polvos hago el morado',
    'what makes a nice teal?',
    'que me da un buen gris',
    'como se hace el color mostaza',
  ])('%s', question => {
    expect(isHueMade(question)).toBe(true);
  });

  test.each([
    // A powder and how much of it are told: that is another question.
    'how do i get a green like moss with 1 tsp green mica',
    'what do i mix for coral with red oxide',
    'what makes 2 tsp grey',
    // Of paint, wool and hair.
    'how do i get a green like the paint on my wall',
    'como se hace el color de la lana mostaza',
    'how to get the red of a brick in my hair',
    // No hue is named, or it is in lye already.
    'what makes a nice loaf?',
    'what do i mix for a coral in the lye',
    'how do i get green mica like yours',
  ])('is not asked in “%s”', question => {
    expect(isHueMade(question)).toBe(false);
  });
});

describe('a dose is asked for, or whether one was right', () => {
  const isDose = heard(asksForDose);
  test.each([
    'my white looks like butter. how much titanium dioxide per pound of oil',
    'is 2 tsp red oxide too much for 500 g oils',
    'i put 2 tsp of red oxide in 500 g oils and its too pale',
    'indigo powder dose for denim blue',
    'the usual rate for spirulina',
    'arcilla rosa, que porcentaje se usa',
  ])('%s', question => {
    expect(isDose(question)).toBe(true);
  });

  test.each([
    'how much lye per pound of oil. red oxide',
    'is 2 tsp red oxide and 1 tsp mica too much for 500 g oils',
    'i put 2 tsp of red oxide in 500 g oils and it came out too dark',
    'it is pink. how much red oxide',
    'it is pink. how much red oxide and mica per kilo',
    // What is told behind the question may be what is asked.
    'how much titanium dioxide per pound of oil. my white looks like butter',
  ])('not surely in “%s”', question => {
    expect(isDose(question)).toBe(false);
  });
});

describe('words of our matter', () => {
  const isOurs = heard(isSurelyOurs);
  test.each([
    ['how much blue for 3 cups', true],
    ['how much blue for my nails', false],
    ['how much pink for the candle', false],
    ['batter at trace', true],
    ['cake batter at trace', false],
    ['my entry, which button do i press to vote', true],
    ['red oxide the painters one', true],
    ['does red oxide fade in soap', true],
    ['lye for olive oil and red oxide', true],
    ['lye for my drain', false],
    ['surfactant bar without lye and red oxide', false],
  ])('%s: surely ours? %s', (question, is) => {
    expect(isOurs(question)).toBe(is);
  });
});

describe('plants and powders of no list', () => {
  const besides = (text: string) => {
    const words = wordsOf(text);
    return plantsBeside(words, thingsIn(words));
  };
  test.each([
    ['spirulina and weld', ['weld']],
    ['weld or spirulina', ['weld']],
    ['cuanta espirulina y cuanta gualda', ['gualda']],
    // Each is named once, however often it is said.
    ['spirulina, weld, weld and madder', ['weld']],
    // The oil of a nut is no plant that colours, and what is not joined is of another list.
    ['spirulina and walnut oil', []],
    ['weld spirulina', []],
    ['spirulina plus a lot of other weld', []],
  ])('%s: %j', (text, plants) => {
    expect(besides(text)).toEqual(plants);
  });

  test.each([
    ['zobo leaf powder in soap', 'zobo leaf powder'],
    ['polvo de zobo', 'zobo'],
    ['zobo en polvo', 'zobo'],
    ['ground zobo', 'zobo'],
    ['how much zobo powder for 500 g', 'zobo powder'],
    ['is it powder', undefined],
    ['powder', undefined],
  ])('%s: %s', (text, name) => {
    expect(unlistedIn(wordsOf(text))?.text).toBe(name);
  });
});

describe('what is put together', () => {
  const mixIn = (text: string) => {
    const words = wordsOf(text);
    const things = thingsIn(words);
    return mixOf(words, things, amountsIn(words, things));
  };
  test.each([
    ['1 tsp red oxide and 2 g titanium dioxide', '1 tsp red oxide + 2 g titanium dioxide'],
    ['titanium dioxide 1 tsp', '1 tsp titanium dioxide'],
    // A little of one beside another is a tint; a little of the only one, or of both, is no share.
    ['red oxide with a touch of black oxide', 'red oxide + black oxide tint'],
    ['un poquito de oxido negro y oxido rojo', 'oxido negro tint + oxido rojo'],
    ['a touch of red oxide', 'red oxide'],
    ['a pinch of red oxide and a hint of black oxide', 'red oxide + black oxide'],
    // The hue that is asked about does not go in, nor is a rate an amount.
    ['1 tsp red oxide or pink', '1 tsp red oxide'],
    ['1 tsp per pound red oxide', 'red oxide'],
    ['hello', undefined],
  ])('%s: %s', (text, mix) => {
    expect(mixIn(text)).toBe(mix);
  });
});
