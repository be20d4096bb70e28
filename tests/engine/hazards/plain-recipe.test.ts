import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isPlainRecipe } from '../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';

const sets = readdirSync(import.meta.dirname).filter(file => /^emergencies-.*\.json$/u.test(file));

test('no emergency that another hand wrote is taken for a plain recipe', () => {
  const told = sets.flatMap(
    file =>
      (
        JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8')) as {
          emergencies?: readonly { text: string }[];
        }
      ).emergencies ?? [],
  );
  expect(told.length).toBeGreaterThan(300);
  expect(told.filter(({ text }) => isPlainRecipe(text))).toEqual([]);
});

test.each([
  '4 lb lard & 1 lb coconut & 1 lb olive. I only want to know the lye, I do water by eye',
  'beef dripping 400g from the butcher, rapeseed 300, coconut 300. lye and water please',
])('a recipe whose lye is asked for is one: %s', text => {
  expect(isPlainRecipe(text)).toBe(true);
});

test.each([
  '400 g lard, 300 g coconut, 95 g lye and it splashed in my eye',
  'lye for 500 g olive, my hands burn',
  '500 g oliva 120 g sosa y me quema la piel',
  'how do I get lye off',
])('words of harm are none: %s', text => {
  expect(isPlainRecipe(text)).toBe(false);
});
