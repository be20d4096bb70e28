import { expect, test } from 'vitest';
import { barredInSentence, isRisingInMould } from '../../../../src/engine/hazards/index.ts';

/* What is only heat in a mould; common practice (no source). */

test.each([
  'volcano!! its rising out the mould',
  'soap is climbing out of the mold',
  'the loaf is swelling',
  'my soap is coming up over the mould',
  'se me está saliendo del molde',
  'el jabón sube y rebosa el molde',
  'se infla en el molde',
])('%s', text => {
  expect(isRisingInMould(text)).toBe(true);
});

test.each([
  'the lye is rising out of the jug',
  'its coming out the mould all over the counter',
  'its rising out the mould and spitting',
  'it rose out of the mould yesterday',
  'la soda sube y se sale de la jarra',
  'se sale del molde y hay humo',
  'rising out of the mould onto my hands',
  'it won’t come out of the mould',
  'how do i get it out the mould',
  // Longer than a cry.
  `its rising out the mould ${'and i do not know '.repeat(7)}`,
])('not: %s', text => {
  expect(isRisingInMould(text)).toBe(false);
});

test.each([
  ['green chrome, yellow oxide', undefined],
  ['verde cromo; amarillo óxido', undefined],
  ['chrome (yellow oxide)', undefined],
  ['chrome yellow, white', 'chrome yellow'],
  ['amarillo de cromo, blanco', 'amarillo de cromo'],
])('a barred name is never joined across a comma: %s', (text, barred) => {
  expect(barredInSentence(text)).toBe(barred);
});
