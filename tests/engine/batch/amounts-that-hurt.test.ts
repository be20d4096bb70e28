import { describe, expect, test } from 'vitest';
import { ADDITIVES, additiveById, parseAdditives } from '../../../src/engine/batch/additives/additives.ts';
import { parseFragrance } from '../../../src/engine/batch/additives/fragrance.ts';
import { parseLye } from '../../../src/engine/batch/lye/lye-choice.ts';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { asked } from './asked.ts';

describe('vanillin is never the dose', () => {
  test.for([
    ['3% vanillin 8%', 3, 8],
    ['3% vanilla 8%', 3, 8],
    ['3% vainillina 8%', 3, 8],
    ['3 % vainilla 8 %', 3, 8],
    ['3%, vanillin 8%', 3, 8],
    ['3% of oils, vanillin 8%', 3, 8],
    ['vanillin 8%, 3% of oils', 3, 8],
    ['vanillin content 8 % at 3 %', 3, 8],
    ['8% vanillin at 3%', 3, 8],
    ['8% vanillin content, 3% of oils', 3, 8],
    ['at 3% with 8% vanillin', 3, 8],
    ['3% fragrance (vanillin content: 8%)', 3, 8],
    ['vanillin 8% 3%', 3, 8],
    ['3% 8% vanillin', 3, 8],
    ['vainillina 8%, dosis 3%', 3, 8],
    ['3% de los aceites, contenido de vainillina 8%', 3, 8],
    ['8 percent vanillin, 3 percent of oils', 3, 8],
    ['3 por ciento, vainillina 8 por ciento', 3, 8],
    ['ethyl vanillin 2%, 4% of oils', 4, 2],
    ['2,5 % vanillin 12,5 %', 2.5, 12.5],
    ['3%', 3, 0],
    ['3% of oils', 3, 0],
    ['vanilla fragrance 3% of oils', 3, 0],
  ] as const)('%s: %d %% of the oils, %d %% vanillin', ([text, percentOfOils, vanillinPercent]) => {
    expect(parseFragrance(text)).toEqual({ percentOfOils, vanillinPercent });
  });

  test.for([
    ['vanillin 8%', 'fragrance-dose-unclear'],
    ['vanilla 3%', 'fragrance-dose-unclear'],
    ['3% vanilla, 5%', 'fragrance-dose-unclear'],
    ['3% + 2%', 'fragrance-dose-unclear'],
    ['8% vanillin 3%', 'fragrance-dose-high'],
    ['7%', 'fragrance-dose-high'],
    ['15%', 'fragrance-dose-high'],
    ['3% 2% 1%', 'percent-unreadable'],
    ['-3%', 'percent-unreadable'],
    ['a lot', 'percent-unreadable'],
    ['', 'percent-unreadable'],
  ] as const)('%s is asked back: %s', ([text, id]) => {
    expect(() => parseFragrance(text)).toThrow(expect.objectContaining({ id }));
  });

  test('3% vanillin 8% weighs 29 g for 970 g of oils, not 78 g', () => {
    const { fragrance } = planBatch(asked({ size: '970 g oils', fragrance: '3% vanillin 8%', reserve: 0 }));
    expect(fragrance!.grams).toBeCloseTo(29.1, 1);
  });
});

describe('a spoon of an additive weighs what a spoon of it does', () => {
  /** g/ml poured loosely; US household measures of USDA FoodData Central and tables of bulk densities, from memory. */
  test.for([
    ['clay', 0.43],
    ['fine salt', 1.2],
    ['sugar', 0.85],
    ['oatmeal', 0.4],
    ['honey', 1.42],
  ] as const)('%s: %d g/ml', ([name, density]) => {
    const [additive] = parseAdditives(`1 tsp ${name}`);
    const { amount } = additive!;
    expect('grams' in amount && amount.grams).toBeCloseTo(density * US_TEASPOON_ML, 6);
  });

  test('citric acid would weigh 0.9 g/ml, within a range and never by crystal', () => {
    expect(additiveById('citric-acid').bulk.typical).toBeCloseTo(0.9, 9);
    const outOfOrder = ADDITIVES.filter(
      ({ bulk }) => bulk.low > bulk.typical || bulk.typical > bulk.high || bulk.origin.source === '',
    );
    expect(outOfOrder).toEqual([]);
    // Air between the grains: a powder is never nearly as heavy as its crystals.
    const powders = ADDITIVES.filter(({ liquid, water }) => liquid === undefined && water === 0);
    expect(powders.filter(({ bulk, density }) => bulk.high >= density * 0.65)).toEqual([]);
  });

  test.for(['1 tsp citric acid', '1 Tbsp vinegar', '2 cdas de zumo de limón', '1 cup wine'])(
    '%s uses up lye: asked for in grams',
    text => {
      expect(() => parseAdditives(text)).toThrow(
        expect.objectContaining({ id: 'additive-eats-lye-by-spoon' }),
      );
    },
  );
});

describe('shares of two lyes are never guessed', () => {
  test.for([
    ['dual lye 60/40', 'lye-shares-unclear'],
    ['both 95:5', 'lye-shares-unclear'],
    ['both, KOH 90%', 'lye-shares-unclear'],
    ['NaOH 60/KOH 30', 'lye-shares-sum'],
  ] as const)('%s: %s', ([text, id]) => {
    expect(() => parseLye(text)).toThrow(expect.objectContaining({ id }));
  });

  test.for([
    ['NaOH/KOH 60/40', 0.4],
    ['KOH 40 NaOH 60', 0.4],
    ['dual lye 50/50', 0.5],
    ['dual lye NaOH 60% KOH 40%', 0.4],
  ] as const)('%s', ([text, kohShare]) => {
    expect(parseLye(text).kohShare).toBeCloseTo(kohShare, 9);
  });
});
