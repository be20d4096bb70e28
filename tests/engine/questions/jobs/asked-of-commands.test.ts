import { describe, expect, test } from 'vitest';
import { withItsAcid } from '../../../../src/engine/questions/jobs/acid-beside.ts';
import { asksOfContest } from '../../../../src/engine/questions/jobs/contest-asked.ts';
import { isOfShelf } from '../../../../src/engine/questions/jobs/shelf-asked.ts';
import { type Reading, readQuestion } from '../../../../src/engine/questions/read.ts';

/* The words are our own; ultramarine and acid give off hydrogen sulphide (safety data sheets, section 10). */

describe('the group’s contest', () => {
  test.each([
    ['when does the contest close', true],
    ['hasta cuando se puede mandar foto pal concurso', true],
    ['do the judges dock points for ash', true],
    ['colours for the contest', false],
    ['when does it close', false],
  ])('%s', (question, is) => expect(asksOfContest(question)).toBe(is));
});

const reading = (job: Reading['job'], given: Reading['given'], score = 0.9): Reading => ({
  job,
  score,
  command: 'colourant check',
  given,
  missing: [],
});

test('an acid that is named beside an ultramarine is checked with it', () => {
  const checked = (question: string, one: Reading) => withItsAcid(one, question).given;
  expect(
    checked('is ultramarine ok with citric acid', reading('survives-lye', { item: 'ultramarine' })),
  ).toEqual({
    ingredients: 'ultramarine, citric acid',
  });
  expect(checked('is red oxide ok with citric acid', reading('survives-lye', { item: 'red oxide' }))).toEqual(
    {
      item: 'red oxide',
    },
  );
  expect(checked('ultramarine went grey, citric acid in it', reading('diagnose', { words: 'x' }))).toEqual({
    words: 'x',
  });
});

test('a shelf that nobody spoke of is shown only for a jar that was surely meant', () => {
  const bare = {
    ...readQuestion('hibiscus'),
    facts: { ...readQuestion('hibiscus').facts, named: ['hibiscus'] },
  };
  expect(isOfShelf(reading('shelf-show', {}, 0.5), 'what is on my shelf', bare)).toBe(true);
  expect(isOfShelf(reading('shelf-show', {}, 0.97), 'hibiscus', bare)).toBe(true);
  expect(isOfShelf(reading('shelf-show', {}, 0.96), 'hibiscus', bare)).toBe(false);
});
