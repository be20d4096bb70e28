import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isOilLostBeforeLye } from '../../../../src/engine/questions/lye/recipe-line/doubts/oil-lost.ts';
import { isPlainRecipe } from '../../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';

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
  '500 g olive 200 g coconut 95 g lye, am i gonna burn ma face off?',
  '500 g de oliva 200 g de coco 95 g de sosa, ¿me voy a quemar la cara?',
  // Asked of what its lye would do, and by litres.
  '3 litros de aceite, 3 litros de agua, medio kilo de sosa. ¿está bien de sosa o quema?',
  '3 litres of olive oil and half a kilo of caustic soda, is that ok or does it burn?',
  // A fat that nobody knows is no harm.
  'dripping 500g, marge 250g, coconut 250g what lye',
  'beef dripping 400g from the butcher, rapeseed 300, coconut 300. lye and water please',
])('a recipe whose lye is asked for is one: %s', text => {
  expect(isPlainRecipe(text)).toBe(true);
});

test.each([
  '400 g lard, 300 g coconut, 95 g lye and it splashed in my eye',
  'lye for 500 g olive, my hands burn',
  '500 g olive 200 g coconut 95 g lye, am i gonna burn my face off, its on my hand',
  '500 g de oliva 95 g de sosa, ¿me va a quemar? me arde el ojo',
  '500 g oliva 120 g sosa y me quema la piel',
  'how do I get lye off',
  '3 litros de aceite y medio kilo de sosa, me quema',
  '500 g olive 90 g lye, it burns',
  '500 g olive, 90 g lye, my brother, unconscious, what lye',
  '500 g olive, 90 g lye, my brother comatose there, what lye',
  // A word that nobody knows, away from any weight.
  '3 litres of olive oil, half a kilo of caustic soda, zonked, what lye',
])('words of harm are none: %s', text => {
  expect(isPlainRecipe(text)).toBe(false);
});

test.each([
  [
    '900 g olive and 300 g coconut, then a jug cracked and a third of the olive went down the sink, no lye in yet. How much lye at 5%?',
    true,
  ],
  [
    '900 g de oliva y 300 g de coco, se rajó la jarra y un tercio del oliva se fue por el fregadero, todavía sin sosa. ¿Cuánta sosa al 5%?',
    true,
  ],
  // Nobody says that there was none in it.
  [
    '900 g olive and 300 g coconut, then a jug cracked and a third of it went down the sink. How much lye at 5%?',
    false,
  ],
])('oil that ran out of a broken jug is calm only where no lye was in: %s', (text, isCalm) => {
  expect(isOilLostBeforeLye(text)).toBe(isCalm);
});
