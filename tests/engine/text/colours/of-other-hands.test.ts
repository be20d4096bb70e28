import { expect, test } from 'vitest';
import { heldOf, wrongOf } from '../../../sets/by-engine.ts';

/* Lines of the sets by other hands, who labelled what each tells: those that come by most of what reads them (`tests/sets/write-by-engine.ts`). */

test.each(heldOf('colours'))('a colour: $text', ({ lines }) => {
  expect(wrongOf(lines)).toEqual([]);
});
