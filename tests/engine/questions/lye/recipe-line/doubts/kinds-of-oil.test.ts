import { expect, test } from 'vitest';
import {
  isOfKind,
  KINDS,
} from '../../../../../../src/engine/questions/lye/recipe-line/doubts/kinds-of-oil.ts';

/*
 * Which oils are of a kind that makers speak of: solid are those of more than half saturated fat and all waxes, runny the rest, neither what
 * melts near the warmth of a room (coconut at 24 °C, 75 °F; common practice); of an animal its fat, and wax and wool grease to some; nuts
 * as grocers sell them, and peanut, argan and apricot stones to some (general knowledge, from memory).
 */

const kindCalled = (noun: string) => KINDS.find(kind => kind.noun.exec(noun)?.[0] === noun)!;

test.each([
  ['butters', 'shea cocoa-butter', 'olive coconut beeswax tallow', 'lard ghee'],
  ['mantecas', 'karité mango', 'oliva', 'manteca'],
  ['waxes', 'beeswax', 'olive shea lard', 'jojoba'],
  ['animal fats', 'lard tallow ghee', 'olive shea', 'beeswax lanolin'],
  ['vegan oils', 'olive coconut shea', 'lard tallow', 'beeswax lanolin'],
  ['hard oils', 'cocoa-butter beeswax tallow', 'olive castor sunflower', 'coconut palm lard shea'],
  ['los liquidos', 'olive castor sunflower', 'cocoa-butter beeswax tallow', 'coconut palm lard babassu'],
  [
    'nuts',
    'sweet-almond hazelnut walnut macadamia brazil-nut',
    'olive coconut shea',
    'peanut argan apricot-kernel',
  ],
  ['cheaper oils', '', '', 'olive lard coconut'],
])('%s are surely %s and surely not %s; nobody can say it of %s', (noun, are, areNot, maybe) => {
  const kind = kindCalled(noun);
  const told = (names: string) =>
    names
      .split(' ')
      .filter(Boolean)
      .map(name => [name, isOfKind(kind, name.replaceAll('-', ' '))]);
  const all = (names: string, is: string) =>
    names
      .split(' ')
      .filter(Boolean)
      .map(name => [name, is]);
  expect(told(are)).toEqual(all(are, 'yes'));
  expect(told(areNot)).toEqual(all(areNot, 'no'));
  expect(told(maybe)).toEqual(all(maybe, 'maybe'));
});

test('what no oil is called is of no kind that is sure', () => {
  for (const kind of KINDS) expect(isOfKind(kind, 'moonbeam')).toBe('maybe');
});
