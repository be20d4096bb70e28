import { describe, expect, test } from 'vitest';
import { amountJudged } from '../../../../src/engine/questions/found/amount-judged.ts';
import { askedOfNamed } from '../../../../src/engine/questions/found/asked/asked-of-named.ts';
import { asksItsColour } from '../../../../src/engine/questions/found/asked/asks-its-colour.ts';
import { isBarredScent, scentsAsked } from '../../../../src/engine/questions/found/asked/scent-asked.ts';
import { staysOut } from '../../../../src/engine/questions/found/asked/stays-out.ts';
import { jarsMeantIn } from '../../../../src/engine/questions/found/jars/jars-meant.ts';
import { jarsTold } from '../../../../src/engine/questions/found/jars/jars-told.ts';
import { withSlipsRight } from '../../../../src/engine/questions/found/slips-right.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

/* What is asked of a thing that is named, in makers' words; the words are our own. */

describe('the colour of a thing is asked', () => {
  test.each([
    ['alkanet what colour do you get', true],
    ['madder pink or red', true],
    ['de que color queda la cúrcuma', true],
    ['how much madder for pink or red', true],
    ['2 tsp madder pink or red', false],
    ['is madder good', false],
  ])('%s', (question, is) => expect(asksItsColour(question, readQuestion(question))).toBe(is));
});

describe('light or bleeding of one colourant', () => {
  test.each([
    ['do red oxides stain a bath', 'bleeds'],
    ['does indigo fade', 'fades'],
    ['will turmeric and indigo fade', undefined],
    ['does red oxide stain come off a bath', undefined],
    ['how do i stop turmeric fading', undefined],
  ])('%s', (question, asked) =>
    expect(askedOfNamed(question, readQuestion(question).facts)?.asked).toBe(asked),
  );
});

describe('an amount that is to be judged', () => {
  test.each([
    ['is 2 tsp red oxide too much for 500 g oils', '2 tsp'],
    ['2 tsp red oxide in 500 g oils ok', '2 tsp'],
    ['how much red oxide for 500 g oils', undefined],
    ['is 2 tsp red oxide and green clay too much for 500 g oils', undefined],
  ])('%s', (question, told) => expect(amountJudged(question, readQuestion(question).facts)).toBe(told));
});

describe('jars', () => {
  const jars = [
    { name: 'Ola', colourant: 'ultramarine-blue' },
    { name: 'deep blue', colourant: 'ultramarine-blue' },
    { name: 'brick', colourant: 'red-iron-oxide' },
  ];
  const names = (question: string, told: readonly string[] = []) =>
    jarsMeantIn(question, jars, told).map(({ name }) => name);

  test('are meant by their names before their hue', () => {
    expect(names('which of Ola and brick is stronger')).toEqual(['Ola', 'brick']);
    expect(names('which of my two blues is stronger')).toEqual(['Ola', 'deep blue']);
    expect(names('cual de los azules', ['mica', 'red oxide'])).toEqual([]);
  });

  test('have the amount that stands by them, where that is no guess', () => {
    expect(
      jarsTold('add pink mica 10 g and titanium dioxide 50 g', ['pink mica', 'titanium dioxide']),
    ).toEqual([
      { item: 'pink mica', amount: '10 g' },
      { item: 'titanium dioxide', amount: '50 g' },
    ]);
    expect(jarsTold('add pink mica and titanium dioxide 50 g 20 g', ['pink mica'])).toEqual([
      { item: 'pink mica' },
    ]);
  });
});

describe('a scent by its name', () => {
  const asked = (question: string) => scentsAsked(question, readQuestion(question)).map(({ name }) => name);
  test('is told of what it does, where no colour is asked of', () => {
    expect(asked('how much peru balsam')).not.toEqual([]);
    expect(asked('how much clove for brown in 500 g oils')).toEqual([]);
    expect(asked('mint green for 2 cups')).toEqual([]);
  });
  test('that stays out of soap is refused', () => {
    expect(isBarredScent('eau de cologne in soap?', readQuestion('eau de cologne in soap?'))).toBe(true);
    expect(isBarredScent('vodka en vez de agua', readQuestion('vodka en vez de agua'))).toBe(true);
    expect(isBarredScent('how much peru balsam', readQuestion('how much peru balsam'))).toBe(false);
  });
});

describe('what stays out of soap', () => {
  const out = (question: string) => staysOut(question, readQuestion(question))?.given.item;
  test.each([
    ['how much vermilion for 12 bars', 'vermilion'],
    ['vodka instead of the water', 'vodka'],
    ['can I use crayons to colour soap', 'crayon'],
    ['how much ultramarine for 2 cups', undefined],
    ['1 lb oils pastel red oxide', undefined],
    ['smells like old crayons', undefined],
  ])('%s', (question, item) => expect(out(question)).toBe(item));
});

test('slips that were put right stand in the words that are shown, whatever their accents', () =>
  expect(withSlipsRight('cuánta óxdio rojo', [{ from: 'oxdio', to: 'óxido', at: 1 }])).toBe(
    'cuánta óxido rojo',
  ));
