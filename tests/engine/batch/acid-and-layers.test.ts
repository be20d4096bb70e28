import { describe, expect, test } from 'vitest';
import { parseChanges } from '../../../src/engine/batch/made/changes.ts';
import { spokenOilList } from '../../../src/engine/batch/oils/lists/spoken-list.ts';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { sizeAmongWords } from '../../../src/engine/batch/size-among-words.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { asked, type Written } from './asked.ts';

const stepsOf = (written: Written) => planBatch(asked(written)).timeline;
const namesOf = (written: Written) => stepsOf(written).map(({ step }) => step);

// Common practice: acid is dissolved in the water before any lye is in it; honey and the like go in at trace.
describe('an acid', () => {
  test('is dissolved while the water is still only water, and is not stirred in once more at trace', () => {
    const steps = namesOf({ additives: 'citric acid 10 g, honey 5 g' });
    expect(steps.indexOf('dissolve-acid')).toBeGreaterThanOrEqual(0);
    expect(steps.indexOf('dissolve-acid')).toBeLessThan(steps.indexOf('mix-lye'));
    expect(steps.filter(step => step === 'add-additive')).toHaveLength(1);
  });

  test('goes into the oils where the lye was bought dissolved', () => {
    const steps = namesOf({ additives: 'citric acid 10 g', lye: '50% solution' });
    expect(steps).toContain('acid-into-oils');
    expect(steps).not.toContain('dissolve-acid');
    expect(steps).not.toContain('add-additive');
  });
});

test('layers are poured in the order in which they were written', () => {
  const [poured] = stepsOf({ swirl: 'layered', portions: '2 cups ultramarine blue; rest' }).filter(
    ({ step }) => step === 'pour-layered',
  );
  expect(poured?.values).toEqual({ order: [{ told: 'ultramarine blue' }, { is: 'rest' }] });
});

test('one pot is poured as it is', () => {
  expect(namesOf({})).toContain('pour-single');
});

// Honey is some 17 % water (USDA FoodData Central, 169640); aloe gel nearly all.
test('water that honey or aloe brings comes off what is added to lye that was bought dissolved', () => {
  const added = (additives?: string) =>
    stepsOf({ lye: '50% solution', ...(additives === undefined ? {} : { additives }) }).find(
      ({ step }) => step === 'pour-solution',
    )!.values as { waterGrams: number };
  expect(added().waterGrams - added('honey 50 g').waterGrams).toBeCloseTo(8.55, 2);
  expect(added().waterGrams - added('aloe vera gel 50 g').waterGrams).toBeCloseTo(49.25, 2);
});

test.each([
  ['about 500 g of oils please', '500 g oils'],
  ['un kilo de aceites por favor', '1 kilo oils'],
  ['800 g of batter I think', '800 g batter'],
])('a size among words: %s', (said, size) => {
  expect(sizeAmongWords(said)).toBe(size);
});

test('figures of oils that are neither percents nor parts of one keep no unit: whoever reads them asks', () => {
  expect(spokenOilList('olive 4.2 palm 3.3 coconut 2.5')).toBe('4.2 olive; 3.3 palm; 2.5 coconut');
  expect(spokenOilList('olive 0.5 coconut 0.25')).toBe('0.5 olive; 0.25 coconut');
  // Percents that come to one are no parts of one.
  expect(spokenOilList('olive 0.42% palm 0.33% coconut 0.25%')).toBeUndefined();
  expect(spokenOilList('0.6 olive 0.4 coconut')).toBe('60% olive; 40% coconut');
});

test('what took the place of something else without an amount on both sides is a note', () => {
  for (const text of [
    'violet instead of 1 tsp',
    '2 tsp violet instead of the blue',
    'gold instead of violet',
  ])
    expect(parseChanges(text, MEASURES.us)).toEqual([{ kind: 'note', text }]);
});
