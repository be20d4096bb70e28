import { expect, test } from 'vitest';
import { commandFor } from '../../../../src/engine/questions/jobs/command-for.ts';

const asked = (named: readonly string[], plants?: readonly string[]) =>
  commandFor('law', 'are they allowed', { named, ...(plants && { plants }) } as Parameters<
    typeof commandFor
  >[2]);

test('several things are checked as a list, one by itself', () => {
  expect(asked(['gold mica', 'ultramarine'])).toMatchObject({
    command: 'colourant check',
    given: { ingredients: 'gold mica, ultramarine' },
  });
  expect(asked(['gold mica']).given).toEqual({ item: 'gold mica' });
});

test('a plant that no catalogue holds is not in the list', () => {
  expect(asked(['gold mica', 'beet', 'ultramarine'], ['beet']).given).toEqual({
    ingredients: 'gold mica, ultramarine',
  });
  expect(asked(['gold mica', 'beet'], ['beet']).given).toEqual({ item: 'gold mica' });
});
