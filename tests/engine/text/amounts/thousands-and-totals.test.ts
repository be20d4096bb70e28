import { expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { parseAmount } from '../../../../src/engine/quantities/amount.ts';
import { parsePortion, parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { refused } from '../../quantities/refused.ts';

// A hobby scale shows a gram or a tenth of one: common practice.
test.each([
  ['1,250 g of batter', 1250],
  ['1.250 g de masa', 1250],
  ['9,999 g', 9999],
  ['half of 1,250 g', 625],
  ['1,5 kg', 1500],
])('%s is a portion of %d g: no batter is weighed to the thousandth of a gram', (text, grams) =>
  expect(parsePortion(text)).toMatchObject({ measure: 'mass', grams: expect.closeTo(grams, 6) }),
);

test('thousands at both ends of a range', () =>
  expect(parsePortionRange('1,200-1,400 g batter')).toMatchObject({
    low: { grams: 1200 },
    high: { grams: 1400 },
  }));

test.each(['1,250 oz', '12,500 g', '125.500 g'])('%s may be two portions: it is asked', text =>
  expect(refused(() => parsePortion(text))).toBe('amount-ambiguous'),
);

test('a powder may be weighed to the thousandth: its figure is asked', () =>
  expect(refused(() => parseAmount('1,250 g'))).toBe('amount-ambiguous'));

test.each([
  ['1.2 kg of oils all told', 1200],
  ['2 kg de aceites sumando todo', 2000],
  ['a total of 900 g oils', 900],
  ['600 g oils, everything together', 600],
])('%s are %d g of oils, as a portion and as a size', (text, grams) => {
  expect(parsePortion(text)).toEqual({ measure: 'mass', grams, of: 'oils' });
  expect(parseSize(text)).toEqual({ by: 'oils', grams });
});

const told = (text: string) =>
  parsePortions(text).map(({ share, colours }) => [share, colours.map(one => one.text.toLowerCase())]);
const percent = (of: number) => ({ by: 'percent', percent: of });

test.each([
  'White 50%; grey 30%; black 20%',
  'white: 50%; grey: 30%; black: 20%',
  'White (50%)\ngrey 30 %\nblack 20%',
])('%s: shares behind their colours', text =>
  expect(told(text)).toEqual([
    [percent(50), ['white']],
    [percent(30), ['grey']],
    [percent(20), ['black']],
  ]),
);

test('parts, cups and the rest behind their colours', () => {
  expect(told('teal half; blanco el resto')).toEqual([
    [percent(50), ['teal']],
    [{ by: 'rest' }, ['blanco']],
  ]);
  expect(told('pink 2 parts; white 1 part')).toEqual([
    [{ by: 'parts', parts: 2 }, ['pink']],
    [{ by: 'parts', parts: 1 }, ['white']],
  ]);
});

test('a place before a share is no colour, and a spoon behind a colour is its dose', () => {
  expect(told('top: 50%; bottom: 50%')).toEqual([
    [percent(50), []],
    [percent(50), []],
  ]);
  expect(refused(() => parsePortions('gold mica 1 tsp; white 1 cup'))).toBe('portion-without-amount');
});

test.each([
  ['add 1 tsp red ox 2 500g batter', '500 g batter'],
  ['how much tio2 4 500g batter', '500 g batter'],
  // Behind "for" and apart from its unit the figure is thousands; before pieces it counts them.
  ['how much tio2 for 2 500 g batter', '2 500 g batter'],
  ['i have 2 500g loaves, how much red oxide for both', '2 x 500 g'],
])('%s is for %s', (text, portion) => expect(readQuestion(text).facts.portion).toBe(portion));
