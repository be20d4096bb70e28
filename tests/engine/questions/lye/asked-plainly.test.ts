import { describe, expect, test } from 'vitest';
import {
  isOfAWord,
  isOnlyOfLye,
  opensWithPlan,
  tellsOfMade,
} from '../../../../src/engine/questions/lye/asked-plainly.ts';
import { planReading } from '../../../../src/engine/questions/lye/plan-reading.ts';
import { givesWay } from '../../../../src/engine/questions/lye/topics/gives-way.ts';
import { isWeighedRecipe } from '../../../../src/engine/questions/lye/weighed-recipe.ts';
import { type Reading, readQuestion } from '../../../../src/engine/questions/read.ts';

/* The words are our own. */

test('a plan, a recipe and a word of lye are told apart', () => {
  expect([opensWithPlan('please plan 1 kg of olive'), opensWithPlan('my plan is 1 kg')]).toEqual([
    true,
    false,
  ]);
  expect([isOnlyOfLye('the lye is grey'), isOnlyOfLye('lye for olive'), isOnlyOfLye('lye 100')]).toEqual([
    true,
    false,
    false,
  ]);
  expect([tellsOfMade('i poured it'), tellsOfMade('i will pour it')]).toEqual([true, false]);
  const lye: Reading = { job: 'lye', score: 0.9, command: 'plan', given: {}, missing: ['oils'] };
  expect([
    isOfAWord(lye, 'lye?'),
    isOfAWord(lye, 'lye for 500'),
    isOfAWord({ ...lye, job: 'dose' }, 'lye?'),
  ]).toEqual([true, false, false]);
});

test('only lye and oils that are both weighed can be checked', () => {
  expect(isWeighedRecipe('I weighed 142 g NaOH for 700 g olive, 300 g coconut')).toBe(true);
  expect(isWeighedRecipe('how much NaOH for 700 g olive, 300 g coconut')).toBe(false);
});

test('every part of a plan is taken into it or named as left out', () => {
  const question = 'plan a batch with 700 g olive, 300 g coconut, 20 g honey, gold mica';
  const read = readQuestion(question);
  expect(planReading(question, read)?.left).toEqual(['gold mica']);
  expect(planReading(question, { ...read, readings: [] })).toBeUndefined();
});

describe('a matter near lye gives way to a colour that is surely asked of', () => {
  const read = (job: Reading['job'], score: number, named: readonly string[]) => {
    const empty = readQuestion('');
    return {
      ...empty,
      readings: [{ job, score, command: 'dose', given: {}, missing: [] }],
      facts: { ...empty.facts, named },
    };
  };
  test.each([
    ['scale', 'dose', 0.8, ['red oxide'], 'behind'],
    ['scale', 'dose', 0.79, ['red oxide'], undefined],
    ['scale', 'dose', 0.8, [], undefined],
    ['swallowed', 'dose', 0.99, ['red oxide'], undefined],
    // A spice irritates skin, whatever it colours.
    ['kitchen-spice', 'dose', 0.99, ['cinnamon'], undefined],
    ['old-oil', 'dose', 0.96, ['red oxide'], undefined],
    ['old-oil', 'dose', 0.97, ['red oxide'], 'behind'],
  ] as const)('%s beside %s at %d of %j', (matter, job, score, named, way) =>
    expect(givesWay('my scale and red oxide', { read: read(job, score, named), matter })).toBe(way),
  );
  test('and never where somebody is hurt, or acid stands beside', () => {
    const sure = read('dose', 0.99, ['ultramarine']);
    expect(givesWay('my skin burns', { read: sure, matter: 'scale' })).toBeUndefined();
    expect(givesWay('citric acid and old oil', { read: sure, matter: 'old-oil' })).toBeUndefined();
  });
});
