import { describe, expect, test } from 'vitest';
import { parseLiquids } from '../../../../src/engine/batch/liquids/liquid-list.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

/* A share of the water, of the oils, a weight, or what the others leave: as recipes write them (common practice, no source). */
describe('what stands in the place of water', () => {
  test.each([
    ['goat milk', [{ id: 'goat-milk', amount: { percentOfWater: 100 } }]],
    ['30% milk', [{ id: 'milk', amount: { percentOfWater: 30 } }]],
    ['goat milk half', [{ id: 'goat-milk', amount: { percentOfWater: 50 } }]],
    ['milk 10% of the oils', [{ id: 'milk', amount: { percentOfOils: 10 } }]],
    ['milk 20% of the water frozen', [{ id: 'milk', frozen: true, amount: { percentOfWater: 20 } }]],
    ['200 g of aloe juice', [{ id: 'aloe-juice', amount: { grams: 200 } }]],
    ['200 g aloe juice in the oils', [{ id: 'aloe-juice', into: 'oils', amount: { grams: 200 } }]],
    ['tea 30% in the lye', [{ id: 'tea', into: 'jug', amount: { percentOfWater: 30 } }]],
    ['half water, half beer', [{ id: 'beer', amount: { percentOfWater: 50 } }]],
  ])('%s', (text, liquids) => {
    expect(parseLiquids(text)).toEqual(liquids);
  });

  test.each([
    ['goat milk 50%, beer 50%', [50, 50]],
    ['milk 30%, tea, beer', [30, 35, 35]],
    // Plain water takes its even part, and is no liquid in its place.
    ['goat milk 50%, tea, water', [50, 25]],
    ['half goat milk half tea', [50, 50]],
    ['milk\nbeer', [50, 50]],
    ['frozen goat milk 30% in the oils, tea', [30, 70]],
  ])('%s: percents %j', (text, percents) => {
    expect(parseLiquids(text).map(({ amount }) => amount)).toEqual(
      percents.map(percentOfWater => ({ percentOfWater })),
    );
  });

  test.each([
    ['goat milk 60%, beer 41%', 'liquids-over-all'],
    ['water 200 g', 'liquid-water-weight'],
    ['-5 g milk', 'additive-without-amount'],
    ['milk 0%', 'additive-without-amount'],
    ['milk 10 g 5', 'liquid-unknown'],
  ])('%s is refused: %s', (text, id) => {
    expect(() => parseLiquids(text)).toThrow(expect.objectContaining({ id }));
    expect(() => parseLiquids(text)).toThrow(Refusal);
  });
});
