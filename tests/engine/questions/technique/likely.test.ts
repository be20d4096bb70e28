import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { benchAsked } from '../../../../src/engine/questions/technique/bench-asked.ts';
import { likeliestIn, standsOver } from '../../../../src/engine/questions/technique/likely.ts';

/* Which way of working with batter a question is of, beside what else was read. The chances are our own; the words are makers'. */

const first = async (question: string) => (await likeliestIn(question, readQuestion(question)))[0]?.matter;

describe('the likeliest matter', () => {
  test.each([
    ['best oils for swirling', 'slow-oils'],
    ['gone solid help', 'thick-now'],
    ['se me espesó', 'thick-now'],
    // A colour that is named at the end of it, and nothing else, is mixed.
    ['how do i make navy', undefined],
    ['show me my shelf', undefined],
    ['how much red oxide for 500 g oils', undefined],
    ['can you ring the shop and order me more lye', 'cannot-do'],
    // Who is taken for an errand is told nothing of soap: one that only may be is read in the usual way.
    ['could you buy the mould', undefined],
    ['please order me my bars', undefined],
  ])('%s', async (question, matter) => expect(await first(question)).toBe(matter));

  test('is none where somebody is ill, or lye is for something else', async () => {
    const read = readQuestion('best oils for swirling');
    expect(await likeliestIn('best oils for swirling', { ...read, outside: 'medical' })).toEqual([]);
    expect(await likeliestIn('best oils for swirling', { ...read, outside: 'lye-elsewhere' })).toEqual([]);
  });

  test('is no pot of ours where the question is surely of another field: custard goes thick too', async () => {
    const read = readQuestion('gone solid help');
    expect(await likeliestIn('gone solid help', { ...read, outside: 'food', elsewhere: 0.95 })).toEqual([]);
    expect(
      await likeliestIn('gone solid help', { ...read, outside: undefined, elsewhere: 0.95 }),
    ).not.toEqual([]);
  });
});

test('beside a pattern near lye only what is of batter, or a word that means something else, stands first', () => {
  expect(standsOver({ matter: 'swirl-water', chance: 0.3 }, 'trace-signs')).toBe(true);
  expect(standsOver({ matter: 'yellow-base', chance: 0.75 }, 'old-oil')).toBe(true);
  expect(standsOver({ matter: 'yellow-base', chance: 0.74 }, 'old-oil')).toBe(false);
  expect(standsOver({ matter: 'yellow-base', chance: 0.99 }, 'swallowed')).toBe(false);
});

describe('a thing of the bench', () => {
  test.each([
    ['soap still soft after 3 days', true],
    ['how much lye for 500 g olive in that order', false],
    ['how much red oxide for 500 g oils, can i store it', false],
  ])('%s', (question, is) => expect(benchAsked(question, readQuestion(question)) !== undefined).toBe(is));
});
