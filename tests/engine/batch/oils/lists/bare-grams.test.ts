import { describe, expect, test } from 'vitest';
import { oilsOfBatch } from '../../../../../src/engine/batch/oils/lists/bare-grams.ts';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { readPlan } from '../../../../../src/engine/batch/planning/written-plan.ts';
import { Refusal } from '../../../../../src/engine/refusal.ts';

const gramsOf = (text: string) => {
  const { shares, totalGrams } = oilsOfBatch(text);
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams!)]));
};

describe('a batch’s own list in bare figures is in grams', () => {
  test.each([
    ['olive 500, coconut 250, castor 50', { olive: 500, coconut: 250, castor: 50 }],
    ['400 girasol 200 coco 20 ricino', { sunflower: 400, coconut: 200, castor: 20 }],
    ['medio kilo de oliva y 200 de girasol', { olive: 500, sunflower: 200 }],
    ['olive 200, coconut 100', { olive: 200, coconut: 100 }],
  ])('%s', (text, grams) => expect(gramsOf(text)).toEqual(grams));

  test.each([
    // Ounces as likely, percents that miss their hundred, a unit of another kind, a trade name that may be a weight.
    ['olive 16, coconut 8, lard 8', 'oils-percent-sum'],
    ['olive 150, coconut 100', 'oils-without-unit'],
    ['olive 500, coconut 19', 'oils-without-unit'],
    ['olive 50%, palm 400 g', 'oils-mixed-units'],
    ['coconut 76 200, olive 300', 'oils-without-unit'],
    ['olive 500.5, coconut 300', 'oils-without-unit'],
  ])('where nothing else fits: %s is asked', (text, id) =>
    expect(() => oilsOfBatch(text)).toThrow(expect.objectContaining({ id }) as Error),
  );

  test('the plan takes it, and the reader of recipes does not', () => {
    const oils = 'olive 500, coconut 250, castor 50';
    expect(readPlan({ oils }).size).toEqual({ by: 'oils', grams: 800 });
    expect(() => parseOils(oils)).toThrow(Refusal);
  });
});
