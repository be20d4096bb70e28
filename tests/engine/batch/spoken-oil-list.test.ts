import { describe, expect, test } from 'vitest';
import { spokenOilList } from '../../../src/engine/batch/oils/lists/spoken-list.ts';

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
});
