import { expect, test } from 'vitest';
import { inOrder } from '../../../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { readLyeInChat } from '../../../../../src/engine/questions/lye/told-in-chat.ts';

const told = (question: string) => readLyeInChat(question, inOrder(question));
/** Grams of water that `/plan` reckons with, of 900 g of oils. */
const waterOf = (question: string) => 9 * Number.parseFloat(told(question).given.water ?? '');

// Water of milk, g a 100 g, from the USDA's FoodData Central: goat 87.0, coconut 72.9; arithmetic beside it.
test.each([
  ['600g olive, 300g coconut, 100 g coconut milk at trace, 200 g water. lye at 5%?', 200 + 72.9],
  ['600g olive, 300g coconut, 100 g goat milk, 200 g water. sodium hydroxide at 5%?', 200 + 87],
  ['600 g oliva, 300 g coco, 100 g de leche de coco en la traza, 200 g agua, sosa al 5%', 200 + 72.9],
  ['600g olive, 300g coconut, 20 g salt, 200 g water. sodium hydroxide at 5%?', 200],
])('water that is told stays in the jug, whatever milk brings: %s', (question, grams) => {
  expect(waterOf(question)).toBeCloseTo(grams, 0);
});

test.each([
  '600g olive, 300g coconut, 100 g coconut milk at trace, 200 g water. lye at 5%?',
  '600g olive, 300g coconut, 100 g coconut milk added at light trace, 200 g water. lye at 5%?',
  '600 g oliva, 300 g coco, 100 g de leche de coco en la traza, 200 g agua, sosa al 5%',
])('a liquid told for trace goes into the oils, and nothing of it is passed by: %s', question => {
  const { given, left } = told(question);
  expect(given.liquid).toBe('100 g coconut milk into the oils');
  expect(given.additives).toBeUndefined();
  expect(left).toEqual([]);
});

test('milk that is told for nothing is left to the plan', () => {
  expect(told('600g olive, 300g coconut, 100 g goat milk, lye at 5%?').given).toMatchObject({
    additives: 'goat milk 100 g',
  });
});
