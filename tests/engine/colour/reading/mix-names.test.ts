import { expect, test } from 'vitest';
import { namesOfMix } from '../../../../src/engine/colour/reading/mix-text.ts';
import { saysPlain } from '../../../../src/engine/colour/reading/plain-soap.ts';

test('a mix without figures is its names', () => {
  expect(namesOfMix('gold mica + rose clay, charcoal')).toEqual(['gold mica', 'rose clay', 'charcoal']);
});

test('a mix with a spoonful in it is no list of names', () => {
  expect(namesOfMix('gold mica 1/2 tsp + rose clay')).toEqual([]);
});

test.each(['plain', ' Natural ', 'no color', 'uncoloured', 'none', 'sin color', 'sin colorear', 'solo'])(
  '“%s” says that there is no colour',
  text => {
    expect(saysPlain(text)).toBe(true);
  },
);

test.each(['plain blue', 'natural clay', 'sin colorante azul', ''])('“%s” does not', text => {
  expect(saysPlain(text)).toBe(false);
});
