import { describe, expect, test } from 'vitest';
import { otherBars } from '../../../src/engine/batch/curing/weight-loss.ts';
import { parseLiquids } from '../../../src/engine/batch/liquids/liquid-list.ts';
import { parsePortions } from '../../../src/engine/batch/portions/portion-list.ts';
import { splitBatter } from '../../../src/engine/batch/portions/split.ts';
import { sizeAmongWords, twoMoulds } from '../../../src/engine/batch/size-among-words.ts';
import { refused } from '../quantities/refused.ts';

test.each([
  ['a mould of 800 g and one of 400', '1200 g batter'],
  ['un molde de 800 g y otro de 400 g', '1200 g batter'],
  ['a mould of 1,5 kg and another of 0,5 kg', '2 kg batter'],
  ['a mould of 800 g and one of 400 ml', undefined],
  ['one mould of 0 g and one of 0 g', undefined],
  ['a mould of 800 g', undefined],
])('two moulds are both poured: %s', (text, size) => {
  expect(twoMoulds(text)).toBe(size);
});

test.each([
  ['I want to make 12 bars of 100 g each', '12 bars of 100 g'],
  ['6 cavities of 100 ml please', '6 cavities x 100 ml'],
  ['about 1 kg of oils please', '1 kg oils'],
  ['I have enough for 800 g of batter', '800 g batter'],
  ['12 bars of 4 oz oils', undefined],
  ['something', undefined],
])('a size among other words: %s', (text, size) => {
  expect(sizeAmongWords(text)).toBe(size);
});

describe('a cup in which colours are wetted', () => {
  const wetted = (text: string) =>
    parsePortions(text)[0]!.colours.map(({ carrier }) =>
      carrier ? `${carrier.choice} ${carrier.millilitres?.toFixed(2) ?? 'some'}` : 'none',
    );
  // A tablespoon of 14.79 ml, a teaspoon of a third of it: NIST Handbook 44, appendix C.
  test.each([
    ['1 cup gold mica + red oxide in 1 Tbsp olive', ['oil 7.39', 'oil 7.39']],
    ['1 cup gold mica + red oxide in water', ['water some', 'water some']],
    ['1 cup gold mica in water + red oxide in 1 Tbsp olive', ['water some', 'oil 14.79']],
    ['1 cup gold mica in water + blue mica + red oxide in 1 Tbsp olive', ['water some', 'none', 'oil 14.79']],
    ['1 cup gold mica in 2 tsp olive', ['oil 9.86']],
    ['1 cup gold mica in 2 tsp olive + red oxide', ['oil 9.86', 'none']],
    ['1 cup gold mica', ['none']],
    ['1 cup plain', []],
  ])('serves those before it that name none: %s', (text, carriers) => {
    expect(wetted(text)).toEqual(carriers);
  });

  test.each([
    ['1 cup gold mica; rest; rest', 'portions-two-rests'],
    ['1 cup a + b + c + d + e + f', 'portion-colours-many'],
    [Array.from({ length: 13 }, () => '1 cup gold mica').join(';'), 'portions-many'],
    ['0 parts gold mica', 'portion-without-amount'],
    ['gold mica', 'portion-without-amount'],
    ['1 cup gold mica in 10 g olive', 'carrier-by-mass'],
  ])('%s is refused', (text, id) => {
    expect(refused(() => parsePortions(text))).toBe(id);
  });
  test('twelve portions of five colours are the most', () => {
    const five = '1 cup gold mica + red oxide + blue mica + green oxide + black oxide';
    expect(parsePortions(Array.from({ length: 12 }, () => five).join(';'))).toHaveLength(12);
  });
});

describe('a pot is divided', () => {
  const pot = { millilitres: 1000, grams: 1100 };
  test('by weight, by share, by volume, and the rest', () => {
    const { portions, unclaimed, reserve } = splitBatter(
      pot,
      [
        { by: 'mass', grams: 110 },
        { by: 'percent', percent: 10 },
        { by: 'volume', millilitres: 200 },
        { by: 'rest' },
      ],
      5,
    );
    // 5 % stay in pot and cups: 950 ml are poured.
    expect(portions.map(one => Math.round(one * 1e6) / 1e6)).toEqual([100, 95, 200, 555]);
    expect(unclaimed).toBe(0);
    expect(reserve).toBeCloseTo(50, 9);
  });
  test('and what nobody claims is told', () => {
    const { unclaimed, reserve } = splitBatter(pot, [{ by: 'percent', percent: 60 }], 0);
    expect(unclaimed).toBeCloseTo(400, 9);
    expect(reserve).toBeCloseTo(0, 9);
    expect(splitBatter(pot, [{ by: 'percent', percent: 100 }], 10).unclaimed).toBe(0);
  });
  test('percents that make more than all are refused', () => {
    const shares = [60, 60].map(percent => ({ by: 'percent', percent }) as const);
    expect(refused(() => splitBatter(pot, shares, 0))).toBe('portions-exceed-batter');
  });
  test.each([0, 25])('%s percent may stay in the pot', percent => {
    expect(splitBatter(pot, [], percent).unclaimed).toBeCloseTo(1000 - 10 * percent, 9);
  });
  test.each([-0.1, 25.1, Number.NaN])('%s percent may not', percent => {
    expect(refused(() => splitBatter(pot, [], percent))).toBe('reserve-out-of-range');
  });
  test('parts beside a rest have no meaning, and no parts are none', () => {
    expect(refused(() => splitBatter(pot, [{ by: 'rest' }, { by: 'parts', parts: 2 }], 0))).toBe(
      'portions-parts-and-rest',
    );
    const parts = [
      { by: 'volume', millilitres: 400 } as const,
      { by: 'parts', parts: 3 } as const,
      { by: 'parts', parts: 1 } as const,
    ];
    expect(splitBatter(pot, parts, 0).portions).toEqual([400, 450, 150]);
  });
});

describe('what stands in the place of water', () => {
  test.each([
    ['goat milk', [{ id: 'goat-milk', amount: { percentOfWater: 100 } }]],
    ['half beer', [{ id: 'beer', amount: { percentOfWater: 50 } }]],
    [
      'half milk half tea',
      [
        { id: 'milk', amount: { percentOfWater: 50 } },
        { id: 'tea', amount: { percentOfWater: 50 } },
      ],
    ],
    [
      'coconut milk 50% frozen, tea',
      [
        { id: 'coconut-milk', frozen: true, amount: { percentOfWater: 50 } },
        { id: 'tea', amount: { percentOfWater: 50 } },
      ],
    ],
    ['200 g aloe juice', [{ id: 'aloe-juice', amount: { grams: 200 } }]],
    ['200 g of aloe juice', [{ id: 'aloe-juice', amount: { grams: 200 } }]],
    ['cream 100 g in the oils', [{ id: 'cream', into: 'oils', amount: { grams: 100 } }]],
    ['milk in the lye', [{ id: 'milk', into: 'jug', amount: { percentOfWater: 100 } }]],
    ['milk 30% of the oils', [{ id: 'milk', amount: { percentOfOils: 30 } }]],
    ['tea 20% of the water', [{ id: 'tea', amount: { percentOfWater: 20 } }]],
    ['instead of water tea', [{ id: 'tea', amount: { percentOfWater: 100 } }]],
    ['water 60%, tea', [{ id: 'tea', amount: { percentOfWater: 40 } }]],
    ['water, tea', [{ id: 'tea', amount: { percentOfWater: 50 } }]],
    [
      'tea, aloe juice, water 40%',
      [
        { id: 'tea', amount: { percentOfWater: 30 } },
        { id: 'aloe-juice', amount: { percentOfWater: 30 } },
      ],
    ],
    ['water', []],
    ['', []],
  ])('%s', (text, liquids) => {
    expect(parseLiquids(text)).toEqual(liquids);
  });
  test.each([
    ['milk 60%, tea 50%', 'liquids-over-all'],
    ['milk -5%', 'additive-without-amount'],
    ['milk 0%', 'additive-without-amount'],
    ['200 g water, tea', 'liquid-water-weight'],
    ['vodka', 'liquid-is-spirit'],
    ['bleach', 'liquid-is-bleach'],
    ['gravel', 'liquid-unknown'],
    ['honey', 'liquid-unknown'],
  ])('%s is refused', (text, id) => {
    expect(refused(() => parseLiquids(text))).toBe(id);
  });
  test('liquids that make all of the water are let be', () => {
    expect(parseLiquids('milk 50%, tea 50%')).toHaveLength(2);
  });
});

describe('bars on the scale', () => {
  const at = (day: number, ...grams: number[]) => ({ at: day, grams });
  // Drying soap only loses; a scale of whole grams may be a gram off each time.
  test.each([
    [[100, 100], undefined],
    [[102, 102], undefined],
    [[102, 103], 'gained'],
    [[90, 90], undefined],
    [[100], 'count'],
  ] as const)('100 g twice, then %o', (grams, why) => {
    expect(otherBars([at(1, 100, 100)], at(2, ...grams))?.why).toBe(why);
  });
  test('are held against the last time before them', () => {
    const book = [at(9, 80, 80), at(1, 100, 100), at(5, 90, 90)];
    expect(otherBars(book, at(6, 99, 99))).toMatchObject({ why: 'gained', before: { at: 5 } });
    expect(otherBars(book, at(9, 81, 81))).toBeUndefined();
    expect(otherBars(book, at(9, 86, 86))).toMatchObject({ why: 'gained', before: { at: 9 } });
    expect(otherBars(book, at(0, 500, 500))).toBeUndefined();
    expect(otherBars([], at(0, 500))).toBeUndefined();
  });
});
