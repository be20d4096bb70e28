import { expect, test } from 'vitest';
import { respeltOils } from '../../../../src/engine/questions/lye/respelt-oils.ts';

const corrections = [
  { from: 'olvie', to: 'Olive', at: 1 },
  { from: 'micca', to: 'mica', at: 4 },
];

test('of the slips that were put right, those in the names of oils are told', () => {
  expect(respeltOils('500 g olive, 200 g coconut', corrections)).toEqual([{ typed: 'olvie', read: 'Olive' }]);
  expect(respeltOils('500 g coconut', corrections)).toEqual([]);
  expect(respeltOils(undefined, corrections)).toEqual([]);
});
