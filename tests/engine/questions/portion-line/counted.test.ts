import { expect, test } from 'vitest';
import { countAt } from '../../../../src/engine/questions/portion-line/counted.ts';

// Grammar: the last noun of a run is the thing, those before it say of which kind.
test.each([
  ['6 soap bars', 'bars', 3],
  ['6 soap please', 'soap', 2],
  ['6 wee soap', 'soap', 3],
  ['4 guest soaps', 'soaps', 3],
])('“%s” counts %s', (text, noun, to) => {
  expect(countAt(text.split(' '), 0)).toMatchObject({ of: 'pieces', noun, to });
});

test('what nobody counts is no count', () => {
  expect(countAt('6 wee lovely big bars'.split(' '), 0)).toBeUndefined();
});
