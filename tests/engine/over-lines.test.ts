import { expect, test } from 'vitest';
import { groupedBy } from '../../src/engine/grouped.ts';
import { byLanguage, LANGUAGES, quotedIn } from '../../src/engine/language.ts';
import { spaced, unbroken } from '../../src/engine/over-lines.ts';

test('a list over several lines is one of single spaces, a pattern one without any', () => {
  expect(spaced`
    lye, soda,
      potash
  `).toBe('lye, soda, potash');
  expect(spaced`lye`).toBe('lye');
  expect(spaced`a ${'b\n c'} d
    e`).toBe('a b\n c d e');
  expect(spaced`${'a'} b`).toBe('a b');
  expect(unbroken`
    (?:lye|
    soda)\b
  `).toBe('(?:lye|soda)\\b');
  expect(unbroken`a${1}
    b${'c'}`).toBe('a1bc');
});

test('each language quotes in its own marks, and has its own of everything', () => {
  expect(quotedIn('en', 'Sky')).toBe('“Sky”');
  expect(quotedIn('es', 'Sky')).toBe('«Sky»');
  expect(byLanguage(language => `in ${language}`)).toEqual({ en: 'in en', es: 'in es' });
  expect(Object.keys(byLanguage(() => 1))).toEqual([...LANGUAGES]);
});

test('items are grouped in the order in which they came', () => {
  const groups = groupedBy(['moss', 'rust', 'mud', 'rose'], word => word[0]);
  expect([...groups]).toEqual([
    ['m', ['moss', 'mud']],
    ['r', ['rust', 'rose']],
  ]);
  expect(groupedBy([], () => 1).size).toBe(0);
});
