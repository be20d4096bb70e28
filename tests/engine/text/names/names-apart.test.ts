import { expect, test } from 'vitest';
import { namesApart } from '../../../../src/engine/text/names/names-apart.ts';

test('names stand apart by commas, semicolons or lines', () => {
  expect(namesApart(' Evening sky, titanium dioxide;gold + blue\n,rose clay,')).toEqual([
    'Evening sky',
    'titanium dioxide',
    'gold + blue',
    'rose clay',
  ]);
});

test('by a plus as well, where jars are listed', () => {
  expect(namesApart('gold + blue, rose clay', { plus: true })).toEqual(['gold', 'blue', 'rose clay']);
  expect(namesApart(' , ')).toEqual([]);
});
