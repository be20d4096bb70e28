import { expect, test } from 'vitest';
import { readQuestion } from '../../../src/engine/questions/read.ts';

const portionOf = (question: string) => readQuestion(question).facts.portion;

test.each([
  ['if i put red oxide 4 grams to 450 g oils how dark is that gonna be', '450 g oils'],
  ['10 g to 300 g batter of ultramarine, is that too much', '300 g batter'],
])('so much powder to so much is no range: “%s”', (question, portion) => {
  expect(portionOf(question)).toBe(portion);
});

test('what lies near is one', () => {
  expect(portionOf('300 g to 400 g batter, ultramarine how much')).toBe('300 g to 400 g batter');
});

test.each([
  ['how much indigo for 16 oz oils, half of them dont say if its oils or total', '16 oz oils'],
  ['half the charts differ, how much ultramarine for 2 cups', '2 cups'],
  ['la mitad de las recetas dice otra cosa, cuánto óxido verde para 1 kg de aceites', '1 kg oils'],
])('a part of something that is no batter is no share: “%s”', (question, portion) => {
  expect(portionOf(question)).toBe(portion);
});

test('a part of the batter is one', () => {
  expect(portionOf('2 cups, half of them get green oxide, how much')).toBe('1/2 of 2 cups');
});
