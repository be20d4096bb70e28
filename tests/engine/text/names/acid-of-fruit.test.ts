import { expect, test } from 'vitest';
import { acidIn } from '../../../../src/engine/text/names/acid-words.ts';

// A lemon's juice is citric acid; with ultramarine it frees hydrogen sulfide (safety data sheets of ultramarine, section 10; from memory).
test.each([
  ['el ultramar se puede con limón', 'zumo de limon'],
  ['ultramarine and lemon together ok', 'lemon juice'],
  ['echo limon encima', 'zumo de limon'],
  ['ultramarine with lime', 'lime juice'],
])('“%s” names an acid', (text, acid) => {
  expect(acidIn(text)).toBe(acid);
});

test.each([
  'ultramarine and lemon yellow',
  'with lemon essential oil',
  'con limon verde de color',
  'and lemon peel on top',
  'lime green',
])('“%s” names none', text => {
  expect(acidIn(text)).toBeUndefined();
});
