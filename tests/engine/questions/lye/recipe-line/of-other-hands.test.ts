import { expect, test } from 'vitest';
import { heldOf, wrongOf } from '../../../../sets/by-engine.ts';

/* Lines of the sets by other hands, who labelled what each tells: those that come by most of what reads them (`tests/sets/write-by-engine.ts`). */

test.each(heldOf('recipes'))('a recipe and its superfat: $text', ({ lines }) => {
  expect(wrongOf(lines)).toEqual([]);
});

test.each(heldOf('standing'))('a recipe that stands: $text', ({ lines }) => {
  expect(wrongOf(lines)).toEqual([]);
});

test.each(heldOf('altered'))(
  'a recipe of which something is lent, spilt or still to come is asked about: $text',
  ({ lines }) => {
    expect(wrongOf(lines)).toEqual([]);
  },
);
