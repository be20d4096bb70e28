import { expect, test } from 'vitest';
import { timesRecipe } from '../../../../src/engine/questions/leaning/recipes/recipe.ts';

const recipe = (oils: string) =>
  ({ job: 'lye', command: 'lye', given: { oils } }) as unknown as Parameters<typeof timesRecipe>[0];

// Arithmetic: every oil so many times.
test.each([
  ['500 g olive, 100 g coconut', 2, '1000 g olive, 200 g coconut'],
  ['100 g olive, 50 g coconut', 1 / 3, '33.3 g olive, 16.7 g coconut'],
  ['1,5 kg olive; 0.5 kg coconut', 0.5, '0.75 kg olive, 0.25 kg coconut'],
])('%s, %f times', (oils, times, scaled) => {
  expect(timesRecipe(recipe(oils), times)?.given).toEqual({ oils: scaled });
});

test('nothing is said of a recipe of which a weight would stay as it was', () => {
  // No comma between them: the second weight is read as one, and would not be doubled.
  expect(timesRecipe(recipe('500 g olive 100 g coconut'), 2)).toBeUndefined();
});
