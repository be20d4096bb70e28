import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';

/* What stands beside an amount is passed by only where it changes nothing: of each of these another reading is as good. */
describe('is asked back', () => {
  test.each([
    '2 cups of water',
    '1 l less the water',
    '3 litres, i only want half',
    '400 g and another 200 g',
    'twice 300 g',
    '2 cups, not 3',
    'half the jug, the pot is 2 l',
    '900 g of tallow',
  ])('a portion of %s', text => {
    expect(() => parsePortionRange(text)).toThrow(/^amount-/u);
  });

  test.each([
    ['600 g olive 200 coconut 2 castor', 'oil-unknown'],
    ['500 g olive and a bit of murumuru', 'oil-unknown'],
    ['500 g olive not coconut', 'oil-unknown'],
    ['500 g olive or 500 g lard', 'oil-unknown'],
    ['500 g olive 20 % coconut', 'oils-mixed-units'],
    ['olive -300 g coconut 300 g all grams', 'oil-without-amount'],
    // Half a kilo, or five behind a comma on the wrong side.
    ['1,5 kg oliva ,5 kg coco', 'amount-ambiguous'],
    ['1.250 g oliva 300 g coco nada mas', 'amount-ambiguous'],
  ])('a list of %s', (text, id) => {
    expect(() => parseOils(text)).toThrow(expect.objectContaining({ id }));
  });

  test.each(['1 to 3', 'three to one, oil to powder', 'half powder half sand'])('a paste of %s', text => {
    expect(() => parsePremix(text)).toThrow(/^(?:amount|premix)-/u);
  });
});
