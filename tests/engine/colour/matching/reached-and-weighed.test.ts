import { describe, expect, test } from 'vitest';
import { matchColour } from '../../../../src/engine/colour/matching/match.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { candidates, ONE_CUP } from '../shelves.ts';

const askFor = (css: string, ...ids: readonly string[]) => {
  const shelf = candidates(...ids);
  return {
    shelf,
    answer: matchColour({
      target: labOfHex(css),
      candidates: shelf,
      base: plainBase('white', false),
      portion: ONE_CUP,
      most: 2,
    }),
  };
};

// Two bars of one batch may differ by 3 (CIEDE2000; common practice).
describe('whether a colour is reached', () => {
  test('is as near as two bars of one batch, and then nothing is missed', () => {
    const { answer } = askFor('#f0dc9a', 'yellow-iron-oxide', 'tan-iron-oxide', 'titanium-dioxide');
    expect(answer.recipes[0]!.deltaE).toBeLessThanOrEqual(3);
    expect(answer).toMatchObject({ reached: true, miss: undefined });
  });

  test('is not told of a pink that oxides do not have, but what it misses', () => {
    const { answer } = askFor('#ff5ad2', 'red-iron-oxide', 'yellow-iron-oxide');
    expect(answer.recipes[0]!.deltaE).toBeGreaterThan(3);
    expect(answer.reached).toBe(false);
    expect(answer.miss).toBeDefined();
  });
});

test('each dose is weighed by its own spoon, and its share of the most is of the whole portion (arithmetic)', () => {
  const { answer, shelf } = askFor('#f0dc9a', 'yellow-iron-oxide', 'tan-iron-oxide', 'titanium-dioxide');
  const doses = answer.recipes.flatMap(recipe => recipe.doses);
  expect(doses.length).toBeGreaterThan(0);
  for (const { id, teaspoons, grams, ofCeiling, short } of doses) {
    const jar = shelf.find(one => one.id === id)!;
    expect(grams).toBeCloseTo(teaspoons * jar.gramsPerTeaspoon, 9);
    expect(ofCeiling).toBeCloseTo(teaspoons / (jar.ceilingTspPerCup * ONE_CUP.cups), 9);
    expect((teaspoons * 32) % 1).toBe(0);
    // Of a jar whose stock nobody told nothing is short.
    expect(short).toBe(0);
  }
});
