import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

describe('a colour that is wished of what is at hand is mixed of that alone', () => {
  test.each([
    [
      'I have red, white and yellow: how do I get salmon',
      'salmon',
      'red iron oxide, titanium dioxide, yellow iron oxide',
    ],
    ['con rojo y azul que tengo, cómo saco morado', 'morado', 'red iron oxide, ultramarine blue'],
    ['how do I make olive from yellow oxide and black oxide', 'olive', 'yellow oxide, black oxide'],
    [
      'How would I make orange. On hand is red iron oxide, yellow oxide and titanium dioxide',
      'orange',
      'red iron oxide, yellow oxide, titanium dioxide',
    ],
    [
      'salmón clarito, qué mezclo? tengo arcilla rosa, óxido amarillo, TiO2. nada de micas',
      'salmon clarito',
      'arcilla rosa, oxido amarillo, titanium dioxide',
    ],
  ])('%s', (question, target, told) => {
    expect(readQuestion(question).readings[0]).toMatchObject({ job: 'mix', given: { target, with: told } });
  });

  test.each([
    'how do I get purple in 500 g oils',
    'how do I get olive green, I have no red oxide and no blue',
    'how do I get pink with red oxide',
  ])('nothing but one, or what is not there, is no list: %s', question => {
    expect(readQuestion(question).readings[0]?.given).not.toHaveProperty('with');
  });
});

test.each([
  ['how do I get light grey in 500 g oils', 'light grey'],
  ['how do I get mid grey in 500 g oils', 'grey'],
  ['cómo saco morado con lo que hay', 'morado'],
])('a hue that is got is mixed, and not dosed: %s', (question, target) => {
  expect(readQuestion(question).readings[0]).toMatchObject({ job: 'mix', given: { target } });
});
