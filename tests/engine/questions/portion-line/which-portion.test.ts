import { expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { portionsIn } from '../portions-in.ts';

/*
 * Which amount of a question is the portion, and what of it: sums are arithmetic, a cup is 236.588 ml and a pound 453.592 g (NIST Handbook
 * 44, appendix C); what was so another time, was spilt or was put right counts as makers mean it (from memory of how they write).
 */

/** Grams or millilitres, what they are of, the portions that may be meant, and the powder. */
function portionOf(question: string): string {
  const { part, unclear, amounts } = portionsIn(question);
  const { low } = parsePortionRange(part!);
  const size = Math.round(low.measure === 'mass' ? low.grams : low.millilitres);
  const powder = amounts.filter(({ of }) => of === 'powder').map(({ text }) => text);
  return [
    `${size} ${low.measure === 'mass' ? 'g' : 'ml'} ${low.of}`,
    ...unclear.map(one => `or ${one}`),
    ...powder,
  ].join(', ');
}

test.each([
  ['last time 500 g of batter. now 750 g of batter, rose clay', '750 g batter'],
  ['last time it went grey, 500 g of batter, rose clay', '500 g batter'],
  ['I spilt some last time; for 500 g of batter, rose clay', '500 g batter'],
  ['rose clay for 500 g batter (last time 400 g batter)', '500 g batter'],
  ['last time 400 g batter! for 500 g batter now, rose clay', '500 g batter'],
  ['la última vez 400 g de masa. ahora 500 g de masa, arcilla rosa', '500 g batter'],
  ['normally 400 g of batter, this time 500 g, rose clay', '500 g batter'],
  ['5 g rose clay, sorry 6 g, for 500 g batter', '500 g batter, 6 g'],
  ['6 tsp of rose clay, no sorry, 500 g batter', '500 g batter, 6 tsp'],
  ['500 g batter, sorry, 1 tsp of rose clay', '500 g batter, 1 tsp'],
  ['10 g of rose clay, oops, 500 g of batter', '500 g batter, 10 g'],
  ['900 g of batter in 3 jugs, one gets rose clay', '300 g batter'],
  ['3 cups of batter, two of them get rose clay', '473 ml batter'],
  [
    '12 bars of 100 g, 4 with pink mica 8 with blue mica',
    '400 g batter, or 4 x 100 g batter, or 8 x 100 g batter',
  ],
  ['12 bars of 100 g, 6 with pink mica 6 with blue mica', '600 g batter'],
  ['two thirds of the batter gets rose clay, 900 g batter', '600 g batter'],
  ['batter is 900 g, a third gets rose clay, the rest is plain', '300 g batter'],
  ['1 kg of batter, half stays white, a quarter gets rose clay', '250 g batter'],
  ['1 kg of batter, a quarter with rose clay, half plain', '250 g batter'],
  ['500 g of batter but I spilt 50 ml, rose clay', '500 g batter'],
  ['500 g of batter, I spilt 600 g, rose clay', '500 g batter'],
  ['500 g batter but I spilt 50 g, rose clay', '450 g batter'],
  ['1.2 kg batter but I spilt 200 g, rose clay', '1000 g batter'],
  ['pull 300 g out of the 1 kg batter for rose clay', '300 g batter'],
  ['6 cups of batter, gonna pull 1.5 cups for charcoal', '355 ml batter'],
  ['uso 300 g para arcilla rosa de 1 kg de masa', '300 g batter'],
  ['half my batter, about 400 ml, gets rose clay', '200 ml batter, or 1/2 of 400 ml, or 400 ml'],
  ['half of the batter is 400 ml, rose clay', '400 ml batter'],
  ['la mitad de la masa son 400 ml, arcilla rosa', '400 ml batter'],
  ['a 600 ml jug two thirds full, rose clay', '400 ml batter'],
  ['half as strong, rose clay in 600 g batter', '600 g batter'],
  ['half the dose of rose clay in 600 g batter', '600 g batter'],
  ['1 kg of oils, 1.4 kg of batter, rose clay', '1000 g oils'],
  ['1 kg of oils, 2.4 kg of batter, rose clay', '1000 g oils, or 1 kg oils, or 2.4 kg batter'],
  ['500 g of batter, that is 505 g, rose clay', '500 g batter'],
  ['380 g batter, not 400 g batter, rose clay', '380 g batter'],
  ['500 g batter and 50 g of rose clay', '500 g batter, 50 g'],
  ['100 g of batter, 12 of them, rose clay', '100 g batter'],
  ['100 g soaps, 12 of them, rose clay', '1200 g batter'],
  ['12 bars of 100 g, no, 10, rose clay', '1000 g batter'],
  ['1 kg batter, sorry 750, rose clay', '750 g batter'],
  ['1 litre of batter, sorry 750, rose clay', '750 ml batter'],
  ['500 g batter, sorry 1 and thanks, rose clay', '500 g batter'],
  ['4 layers of 200 g, rose clay in one', '200 g batter'],
  ['4 x 200 g, 3 of them rose clay', '600 g batter'],
  ['1 lb of batter, sorry 2 lb, rose clay', '907 g batter'],
  ['12 bars, no, 10 bars of 100 g, rose clay', '1000 g batter'],
  ['4 g to 450 g oils, rose clay', '450 g oils'],
  ['4 g to 6 g rose clay in 450 g oils', '450 g oils, 4 g to 6 g'],
  ['2 lb 8 oz of oils, rose clay', '1134 g oils'],
  ['1 kg 500 g of batter, rose clay', '1500 g batter'],
  ['1 tbsp and 1 tsp of rose clay, 1 kg batter', '1000 g batter, 1 tbsp and 1 tsp'],
  ['900 oils, rose clay', '900 g oils'],
  ['300 de masa, arcilla rosa', '300 g batter'],
  ['oils: 650, rose clay', '650 g oils'],
  ['aceites 650, arcilla rosa', '650 g oils'],
  ['oils 90, rose clay', '90 g oils, or 90 g oils, or 90 oz oils'],
  ['900 o, rose clay', '900 g oils'],
  ['1/2 tsp of spirulina and 1 of turmeric, 500 g batter', '500 g batter, 1/2 tsp, 1 tsp'],
  ['3 g de espirulina y 2 de cúrcuma, 500 g de masa', '500 g batter, 3 g, 2 g'],
  ['1/2 lb of batter, sorry 1 lb, rose clay', '454 g batter'],
])('%s: %s', (question, portion) => {
  expect(portionOf(question)).toBe(portion);
});

test.each(['avocado oil 150, rose clay', '900 o rose clay'])(
  'one oil of several, and an “o” that joins, tell none: %s',
  question => expect(portionsIn(question).part).toBeUndefined(),
);
