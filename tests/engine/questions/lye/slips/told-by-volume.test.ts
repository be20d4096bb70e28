import { expect, test } from 'vitest';
import { lyeAmissIn } from '../../../../../src/engine/questions/lye/slips/amiss.ts';
import {
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
} from '../../../../../src/engine/questions/lye/slips/told-amounts.ts';
import { countedOils } from '../../../../../src/engine/questions/options/counted-oils.ts';

const gramsOf = (question: string) => toldAmounts(wordsOfBatch(question)).map(({ grams }) => grams);

/* A millilitre of water weighs a gram (NIST SP 1038); how makers tell it is from memory. */
test.each([
  ['800 g olive and half a litre of water', [800, 500]],
  ['800 g de oliva y medio litro de agua', [800, 500]],
  ['800 g olive, 1.5 l water', [800, 1500]],
  ['800 g olive, 250 ml water', [800, 250]],
])('water by its volume is as many grams: %s', (question, grams) => {
  expect(gramsOf(question)).toEqual(grams);
});

test.each([
  'a cup of lye for 500 g oils',
  'una taza de sosa para 500 g de aceites',
  'un vaso de sosa para 500 g de aceites',
])('a cup of lye is no gram of it: %s', question => {
  expect(lyeAndOilsAlone(question)).toBeUndefined();
  expect(gramsOf(question)).toEqual([500]);
});

test.each(["didn't double the lye, 64 g for 500 g olive", 'I never doubled the lye, 64 g for 500 g olive'])(
  'lye that was not doubled is none too much: %s',
  question => {
    expect(lyeAmissIn(question)).toBeUndefined();
  },
);

test.each(['doubled the lye, 128 g for 500 g olive', 'I doubled up on the lye, 128 g for 500 g olive'])(
  'and lye that was doubled is: %s',
  question => {
    expect(lyeAmissIn(question)?.percentOver).toBe(100);
  },
);

test.each([
  ['1200 g, 3 oils', '1200 g, de oils'],
  ['765 oils', '765 oils'],
  ['32 oils, charcoal', '32 oils, charcoal'],
])('oils are counted by a whole figure: %s', (text, plain) => {
  expect(countedOils(text)).toBe(plain);
});
