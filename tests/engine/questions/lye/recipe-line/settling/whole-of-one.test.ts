import { expect, test } from 'vitest';
import { withWhole } from '../../../../../../src/engine/questions/lye/recipe-line/settling/whole-of-one.ts';

/* How makers tell all oils and their shares in few words; common practice (no source). */

test.each([
  ['how much lye for 900g of oils, all olive', 'how much lye for 900g of oils, 100% olive'],
  ['lye for 2 kg oils all of it olive oil', 'lye for 2 kg oils, 100% olive'],
  ['lye for 1kg 70 olive 30 coconut', 'lye for 1kg oils, 70% olive, 30% coconut '],
  ['sosa para 1 kg 70 oliva y 30 coco', 'sosa para 1 kg oils, 70% oliva, 30% coco '],
  ['lye for 1kg 70 olive 30 coconut 5% sf pls', 'lye for 1kg oils, 70% olive, 30% coconut  5% sf pls'],
])('“%s”', (typed, read) => {
  expect(withWhole(typed)).toBe(read);
});

test.each([
  // It makes no hundred: grams may be meant.
  'lye for 1kg 70 olive 40 coconut',
  'lye for 1kg 70 olive 30 coconut 20 shea',
  'sosa para 1 kg 70 oliva 40 coco',
  // No fat that is known.
  'lye for 1kg 70 blorp 30 coconut',
  'how much lye for 900g of oils, all good',
  // The weight is not of all oils.
  'lye for 900g all olive',
])('“%s” stays as it is', typed => {
  expect(withWhole(typed)).toBe(typed);
});
