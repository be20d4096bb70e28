import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAskedBack } from '../../../../read-in-chat.ts';

/** A part and the oil it is told of, each with its twin. */
const PARTS = [
  ['a third of that', 'un tercio de eso'],
  ['a quarter of it', 'la cuarta parte de eso'],
  ['20% of that', 'el 20% de eso'],
] as const;
const WEIGHTS = [
  ['900 g', '900 g'],
  ['three quarters of a kilo', 'tres cuartos de kilo'],
  ['half a kilo', 'medio kilo'],
  ['2 lb', '2 libras'],
] as const;
const BETWEEN = [
  ['in coconut oil', 'en coco'],
  ['of coconut', 'de coco'],
  ['coconut oil', 'de aceite de coco'],
] as const;

describe('an oil that is told as a part of another', () => {
  test('is asked in grams, whatever unit the first is told in', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(...PARTS),
        fc.constantFrom(...WEIGHTS),
        fc.constantFrom(...BETWEEN),
        (part, weight, between) => {
          for (const told of [
            `${weight[0]} of olive oil and ${part[0]} ${between[0]}, how much lye?`,
            `${weight[1]} de oliva y ${part[1]} ${between[1]}, ¿cuánta sosa?`,
          ])
            expect({ told, isAsked: isAskedBack(told) }).toEqual({ told, isAsked: true });
        },
      ),
    ));
});

test.each([
  '450 g olive oil and 450 g coconut oil. I want a 30% superfat on the coconut only. NaOH?',
  '450 g olive oil, 450 g coconut oil, superfat 30% only on the coconut, lye?',
  '450 g de oliva y 450 g de coco, sobreengrasado del 20% solo en el coco, ¿cuánta sosa?',
])('a superfat of one oil is no superfat of the pot: %s', told => {
  expect(isAskedBack(told)).toBe(true);
});

test.each([
  '450 g olive oil and 450 g coconut oil, 5% superfat on this batch only. NaOH?',
  '700 g olive oil, 300 g coconut oil, superfat 8% for the babies only, lye?',
  '450 g de oliva y 450 g de coco, sobreengrasado del 8% solo en el jabón, ¿cuánta sosa?',
  'Total oils 1000 g, 70% olive 30% coconut, lye with water twice the lye?',
])('what speaks of the batch is read: %s', told => {
  expect(isAskedBack(told)).toBe(false);
});

test.each([
  'Total batch 1400 g with water and lye and everything, 70% olive 30% coconut. How much lye is in it?',
  'Whole lot 1400 g with the lye and water, 70% olive 30% coconut. How much lye?',
  'Peso total 1400 g con el agua y la sosa y todo, 70% oliva 30% coco, ¿cuánta sosa?',
])('a weight with water and lye in it is no weight of oils: %s', told => {
  expect(isAskedBack(told)).toBe(true);
});

test.each([
  'My sister makes hers with 700 g coconut and 300 g olive. I want to do the same but with the two amounts swapped. 5% superfat, lye?',
  'lye for 700 g coconut and 300 g olive with the weights switched, 5%',
  'sosa para 700 g de coco y 300 g de oliva pero con las cantidades cambiadas',
  'The book says 183 g lye for 1000 g coconut oil but I am using 1000 g olive oil. How much do I use at 5%?',
  'El libro dice 183 g de sosa para 1000 g de coco pero yo uso 1000 g de oliva. ¿Cuánta pongo al 5%?',
])('weights that are swapped, or stand for another’s pot, are asked: %s', told => {
  expect(isAskedBack(told)).toBe(true);
});

test.each([
  'I have 600 g olive oil, 200 g coconut oil and 300 g cocoa butter. How much NaOH at 5% without the last?',
  '500 g de oliva, 200 g de coco, 300 g de palma; ¿cuánta sosa quitando lo tercero? sobreengrasado 5%',
  '600 g de oliva, 200 g de coco, 300 g de palma, 5%. ¿Cuánta sosa sin el tercero?',
  '600 g olive oil, 200 g coconut oil, 300 g shea butter, 5% superfat. How much NaOH for just the first two?',
  '600 g olive oil, 200 g coconut oil, 300 g lard. How much NaOH at 5% for the first two only?',
  '600 g olive oil, 200 g coconut oil, 300 g lard. How much NaOH at 5% if I skip the last?',
  '600 g olive oil, 200 g coconut oil, 300 g lard. How much NaOH at 5% for the vegan version?',
  '600 g olive oil, 200 g coconut oil, 300 g lard. How much NaOH at 5% for the liquid ones?',
  'Llevo 600 g de oliva, 200 g de coco y 300 g de manteca de cacao. ¿Cuánta sosa al 5% sin lo último?',
  '600 g de oliva, 200 g de coco, 300 g de sebo. ¿Cuánta sosa al 5% solo para los vegetales?',
  '600 g de oliva, 200 g de coco, 300 g de palma. ¿Cuánta sosa al 5% exceptuando lo sólido?',
  'Echo 600 g de oliva, 200 g de coco y al final, en la traza, 60 g de ricino. Sobreengrasado 5%. ¿Cuánta sosa sin contar lo último?',
])('an oil left out by its place or its kind is asked: %s', told => {
  expect(isAskedBack(told)).toBe(true);
});

test.each([
  'my first batch: 600 g olive oil, 200 g coconut oil, 5%. How much lye?',
  'only my second soap, 600 g olive oil and 200 g coconut oil at 5% superfat, lye please',
])('and whose first batch it is changes nothing: %s', told => {
  expect(isAskedBack(told)).toBe(false);
});
