import { describe, expect, test } from 'vitest';
import { spokenOilList } from '../../../../../src/engine/batch/oils/lists/spoken-list.ts';

/* From memory of how makers say their oils. */
describe('a list of oils as it is spoken', () => {
  test.each([
    ['olive 50 coconut 30 palm 20', '50% olive; 30% coconut; 20% palm'],
    ['75% tallow rest coconut', '75% tallow; rest coconut'],
    ['2 partes de soja por 1 de coco', '66.6667% soja; 33.3333% coco'],
    ['equal parts olive coconut palm', '33.3333% olive; 33.3333% coconut; 33.3333% palm'],
    ['olive 80 %, the 20 that is left coconut', '80% olive; 20% coconut'],
    ['olive oil 500 g and 200 g coconut from my butcher', '500 g olive oil; 200 g coconut'],
  ])('%s', (said, list) => {
    expect(spokenOilList(said)).toBe(list);
  });

  test.each([
    ['all olive, 1 kg', '1 kg olive'],
    ['olive 100 g', '100 g olive'],
    ['100% coconut', '100% coconut'],
    ['100 de oliva', '100% oliva'],
    ['90 de oliva', undefined],
    ['all olive', undefined],
    ['all olive 1 kg 2 kg', undefined],
  ])('of one oil alone: %s', (said, list) => {
    expect(spokenOilList(said)).toBe(list);
  });

  const two = '60% olive; 40% coconut';
  test.each([
    ['which is how I have always made it', two],
    ['as usual', two],
    ['never mind your fancy butters', two],
    // A name that is on no list, and a word that puts right what was told before.
    ['because emu', undefined],
    ['no sorry, half', undefined],
  ])('a clause behind it: %s', (aside, list) => {
    expect(spokenOilList(`olive 60 coconut 40, ${aside}`)).toBe(list);
  });

  test('brackets hold what is usual, and no name that is on no list', () => {
    expect(spokenOilList('olive 60 coconut 40 (my usual)')).toBe(two);
    expect(spokenOilList('olive 60 coconut 40 (my emu)')).toBeUndefined();
  });

  test.each([
    // Two names of one oil are one; two oils joined so are no list.
    ['olive 95 castor aka ricino 5', '95% olive; 5% castor'],
    ['olive aka coconut 50 palm 50', undefined],
    // The sign told once, behind the last figure.
    ['olive 50 coconut 50 percent', '50% olive; 50% coconut'],
    ['olive 50 coconut 30 palm 20 por ciento', '50% olive; 30% coconut; 20% palm'],
    ['three parts olive to one of coconut', '75% olive; 25% coconut'],
    ['olive 2 parts coconut 30 %', undefined],
    // What is left of a hundred, where something is left.
    ['60 olive, rest coconut', '60% olive; rest coconut'],
    ['60% olive, rest coconut', '60% olive; rest coconut'],
    ['100% olive, rest coconut', undefined],
    ['60% olive, rest coconut, rest palm', undefined],
    ['500 g olive, rest palm', undefined],
    ['2 parts olive, rest palm', undefined],
    // Percents that miss a hundred by their rounding, and figures that are none.
    ['olive 50 coconut 51', '50% olive; 51% coconut'],
    ['olive 50 coconut 49', '50% olive; 49% coconut'],
    ['olive 50 coconut 52', '50 olive; 52 coconut'],
    ['olive 0.5 coconut 0.5', '50% olive; 50% coconut'],
    ['olive 0.5 coconut 0.4', '0.5 olive; 0.4 coconut'],
    // A unit told once, with the first figure or the last.
    ['olive 500 grams coconut 200 palm 100', '500 g olive; 200 g coconut; 100 g palm'],
    ['olive 500 coconut 200 palm 100 grams', '500 g olive; 200 g coconut; 100 g palm'],
    ['olive 500 coconut 200 grams palm 100', undefined],
    ['olive 16 oz coconut 8', '16 oz olive; 8 oz coconut'],
    ['olive 1 kg coconut 2', undefined],
    // No scale of a kitchen weighs oils of two and five grams.
    ['olive 5 coconut 2 palm 1 g', undefined],
    ['olive 1 lb coconut 8 oz', '1 lb olive; 8 oz coconut'],
    ['olive 1 lb coconut 50 %', undefined],
    // Which amount is whose, where one stands before its oil and one behind.
    ['500 g olive coconut 200 g', undefined],
    ['500 g olive, coconut 200 g', '500 g olive; 200 g coconut'],
    ['equal olive', undefined],
    ['avocado and olive 300 g apiece', '300 g avocado; 300 g olive'],
    ['1/2 lb olive, 1 lb coconut', '0.5 lb olive; 1 lb coconut'],
    ['half olive half coconut', '50% olive; 50% coconut'],
    ['olive .5 lb coconut 1 lb', '0.5 lb olive; 1 lb coconut'],
    // A figure with a sign or a mark before it may be a slip.
    ['-5 olive 95 coconut', undefined],
    ['olive 5..5 coconut', undefined],
    ['olive 70% coconut 30%, nobody knows the emu', undefined],
  ])('only what can be read one way: %s', (said, list) => {
    expect(spokenOilList(said)).toBe(list);
  });
});
