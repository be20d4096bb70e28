import { expect, test } from 'vitest';
import { asOneText } from '../../../../src/engine/questions/leaning/before.ts';
import { plainWords } from '../../../../src/engine/questions/lye/amounts/words.ts';

test('a turn stands behind the question before as a sentence of its own', () => {
  expect(asOneText('bars feel scratchy, why', 'paprika')).toBe('bars feel scratchy, why. paprika');
});

test('no figure at the end of one becomes part of one at the head of the other', () => {
  const both = plainWords(asOneText('superfat 5', '20 g coconut'), { clauses: true });
  expect(both).toContain('superfat 5 ;');
});
