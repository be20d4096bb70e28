import { expect, test } from 'vitest';
import { portionLaid, withFigure } from '../../../../src/engine/questions/leaning/portion.ts';
import { openedTurn } from '../../../../src/engine/questions/leaning/turn/plain.ts';
import { slotsOf } from '../../../../src/engine/questions/leaning/turn/slots.ts';

/* What a turn makes of the portion before; figures are arithmetic, that bare ones are grams from 100 on is common practice. */
test.each<readonly [before: string | undefined, turn: string, portion: string | undefined]>([
  // A weight of which nothing is said is of what the one before was of; a volume is of batter.
  ['1 kilo oils', '800 g', '800 g oils'],
  ['1 kilo of oil', '800 g', '800 g oils'],
  ['1 kilo de aceites', '800 g', '800 g oils'],
  ['2 cups', '800 g', '800 g'],
  ['500 g batter', '800 g', '800 g'],
  [undefined, '800 g', '800 g'],
  ['1 kilo oils', '800 g batter', '800 g batter'],
  ['2 cups', '800 g of oils', '800 g oils'],
  ['1 kilo oils', '3 cups', '3 cups'],
  // A bare figure with a word is grams from 100 on, else so many of the same unit.
  ['2 cups', '100 of oils', '100 g oils'],
  ['2 cups', '99 of batter', '99 cups batter'],
  ['2 cups', '250', '250 cups'],
  ['1 kilo oils', '3', '3 kilo oils'],
  ['1 kilo oils', '0', undefined],
  ['half a cup', '3', undefined],
  [undefined, '3', undefined],
  [undefined, '100 of oils', '100 g oils'],
  [undefined, '99 of oils', undefined],
  // So many times, or one of so many parts.
  ['2 cups', 'half', '1 cups'],
  ['1 kilo oils', 'half', '0.5 kilo oils'],
  ['1,5 kg', 'double', '3 kg'],
  ['900 g batter', 'split three ways', '300 g batter'],
  ['1000 g oils', 'split three ways', '333.3 g oils'],
  ['half a kilo oils', 'double', '1000 g oils'],
  ['half a kilo', 'double', '1000 g'],
  ['1 1/2 kg oils', 'double', '3000 g oils'],
  ['1/2 litre', 'double', '1000 ml'],
  ['a lot', 'double', undefined],
  [undefined, 'double', undefined],
  // Of something else.
  ['1 kilo oils', 'i mean batter', '1 kilo batter'],
  ['2 cups', 'oils', '2 cups oils'],
  ['2 cups', 'double of oils', '4 cups oils'],
  ['1 kilo oils', 'oils', '1 kilo oils'],
  // What is no portion changes none.
  ['2 cups', 'blue', undefined],
  ['2 cups', 'lighter', undefined],
])('%s, then “%s”: %s', (before, turn, portion) => {
  expect(portionLaid(before, slotsOf(openedTurn(turn)!)!)).toBe(portion);
});

test.each<readonly [before: string, figure: number, told: string | undefined]>([
  ['2 cups', 3, '3 cups'],
  ['2,5 kg oils', 3.5, '3.5 kg oils'],
  ['2 cups', 0, undefined],
  ['cups', 3, undefined],
  ['2', 3, undefined],
])('%s with %f', (before, figure, told) => {
  expect(withFigure(before, figure)).toBe(told);
});
