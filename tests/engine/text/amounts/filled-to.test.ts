import { describe, expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readOff } from '../../../../src/engine/text/amounts/filled-to.ts';

describe('an amount is read off a vessel or a scale', () => {
  test.each([
    ['one 600 ml beaker, filled to the 400', 400],
    ['my 500 ml cup up to the 350 mark', 350],
    ['1 litre jug filled to 750', 750],
    ['vaso de 250 ml lleno hasta 200', 200],
    ['jarra de un litro, hasta la raya de 600', 600],
  ])('“%s” is %d ml', (text, millilitres) => {
    expect(parsePortionRange(text).low).toEqual({ measure: 'volume', millilitres, of: 'batter' });
  });

  test.each([
    ['weighed it, 380', 380],
    ['just weighed: 412', 412],
    ['scale says 640', 640],
    ['lo pesé, 350', 350],
  ])('“%s” is %d g, as kitchen scales tell', (text, grams) => {
    expect(parsePortionRange(text).low).toEqual({ measure: 'mass', grams, of: 'batter' });
  });

  test.each([
    // More than it holds, too little to be millilitres, ounces as likely as grams, oils on an unknown scale, the jug's own weight.
    '500 ml jug filled to 600',
    'a litre jug filled to 15',
    'weighed it, 38',
    'the oils weigh 640',
    'weighed the jug, 640',
    'weighed it twice, 380 and 410',
  ])('“%s” is left as it is', text => {
    expect(readOff(text)).toBe(text);
  });
});
