import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { rescale } from '../../../../src/engine/batch/planning/rescale.ts';
import { splitBatter } from '../../../../src/engine/batch/portions/split.ts';
import type { PortionShare } from '../../../../src/engine/batch/request.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { asked, filled, gramsOf, ONE_LINE, type Written } from '../asked.ts';

const POT = { millilitres: 1400, grams: 1405 };

const share: fc.Arbitrary<PortionShare> = fc.oneof(
  fc.record({
    by: fc.constant('volume' as const),
    millilitres: fc.double({ min: 1, max: 150, noNaN: true }),
  }),
  fc.record({ by: fc.constant('mass' as const), grams: fc.double({ min: 1, max: 150, noNaN: true }) }),
  fc.record({ by: fc.constant('percent' as const), percent: fc.double({ min: 1, max: 12, noNaN: true }) }),
);
const divided: fc.Arbitrary<PortionShare> = fc.record({
  by: fc.constant('parts' as const),
  parts: fc.double({ min: 0.5, max: 5, noNaN: true }),
});

describe('a split', () => {
  property.prop([
    fc.array(share, { maxLength: 6 }),
    fc.oneof(fc.array(divided, { maxLength: 4 }), fc.constant([{ by: 'rest' } as const])),
    fc.double({ min: 0, max: 10, noNaN: true }),
  ])('adds up to the batter: portions, what nobody claimed, and the reserve', (fixed, open, reserve) => {
    const split = splitBatter(POT, [...fixed, ...open], reserve);
    const sum = split.portions.reduce((total, one) => total + one, split.unclaimed + split.reserve);
    expect(sum).toBeCloseTo(POT.millilitres, 6);
    for (const one of split.portions) expect(one).toBeGreaterThanOrEqual(0);
  });

  test('larger than the batter is refused with both figures', () => {
    expect(() => splitBatter(POT, [{ by: 'volume', millilitres: 1500 }], 2)).toThrow(
      expect.objectContaining({
        id: 'portions-exceed-batter',
        values: { askedMillilitres: 1500, batterMillilitres: 1400 },
      }),
    );
  });

  test('lets the reserve give way to a volume that just fits', () => {
    const split = splitBatter(POT, [{ by: 'volume', millilitres: 1390 }], 2);
    expect(split.reserve).toBeCloseTo(10, 9);
    expect(split.unclaimed).toBe(0);
  });

  test('shares what is left by parts', () => {
    const parts = [2, 1].map(parts => ({ by: 'parts', parts }) as const);
    const [two, one] = splitBatter(POT, parts, 0).portions;
    expect(two! / one!).toBeCloseTo(2, 12);
  });

  test('parts and a rest together have no meaning', () => {
    expect(() => splitBatter(POT, [{ by: 'parts', parts: 1 }, { by: 'rest' }], 2)).toThrow(
      expect.objectContaining({ id: 'portions-parts-and-rest' }),
    );
  });
});

const superfats = (portions: string, more: Written = {}) =>
  filled(asked({ portions, ...more })).filled.portions.map(({ superfat }) => superfat);

describe('carrier oil', () => {
  test('a tablespoon in one cup takes a 5 % superfat to about 12 % there (common practice)', () => {
    const [cup, rest] = superfats('1 cup ultramarine blue in 1 Tbsp olive; rest');
    expect(cup).toBeGreaterThan(11);
    expect(cup).toBeLessThan(13);
    expect(rest).toBeCloseTo(5, 0);
  });

  test('counts exactly: lye over what recipe and carrier could take', () => {
    const { recipe, filled: batch } = filled(
      asked({ portions: '1 cup ultramarine blue in 2 Tbsp olive; rest' }),
    );
    const share = US_CUP_ML / batch.pot.millilitres;
    const olive = batch.addedOils[0]!;
    expect(olive.grams).toBeCloseTo(6 * US_TEASPOON_ML * olive.oil.density.typical, 9);
    const demand = share * batch.pot.demand + (olive.grams * olive.oil.saponification.typical) / 56105.3;
    expect(batch.portions[0]!.superfat).toBeCloseTo(100 * (1 - (share * recipe.hydroxide) / demand), 9);
  });

  property.prop([fc.double({ min: 1, max: 60, noNaN: true }), fc.double({ min: 0.5, max: 40, noNaN: true })])(
    'raises the superfat of its portion with every drop',
    (millilitres, more) => {
      const [less] = superfats(`1 cup ultramarine blue in ${millilitres.toFixed(2)} ml olive; rest`);
      const [fatter] = superfats(
        `1 cup ultramarine blue in ${(millilitres + more).toFixed(2)} ml olive; rest`,
      );
      expect(fatter).toBeGreaterThan(less!);
    },
  );

  test('dipped from the batch shifts its portion up and the pot down, and leaves the batch as it was', () => {
    const plain = filled(asked({ scale: 0.001 }));
    const { recipe, filled: batch } = filled(
      asked({ portions: '1 cup ultramarine blue in 1 Tbsp dipped oil; rest', scale: 0.001 }),
    );
    const [blue, rest] = batch.portions;
    expect(blue!.superfat).toBeGreaterThan(10);
    expect(rest!.superfat).toBeLessThan(5);
    expect(recipe.lyeGrams).toBe(plain.recipe.lyeGrams);
    expect(batch.addedOils).toEqual([]);
    // The lye-weighted mean over everything that was poured and the reserve is the batch's own 5 %.
    const demandOf = ({ superfat, millilitres }: { superfat: number; millilitres: number }) =>
      (recipe.hydroxide * millilitres) / batch.pot.millilitres / (1 - superfat / 100);
    const reserve = { superfat: rest!.superfat, millilitres: batch.reserveMillilitres };
    const demand = [blue!, rest!, reserve].reduce((sum, one) => sum + demandOf(one), 0);
    expect(100 * (1 - recipe.hydroxide / demand)).toBeCloseTo(5, 2);
  });

  test('so much dipped oil that the pot holds too much lye is refused', () => {
    expect(() => superfats('3 cups ultramarine blue in 6 Tbsp dipped oil; rest')).toThrow(
      expect.objectContaining({ id: 'dip-too-deep' }),
    );
  });

  test('an oil that the recipe does not hold cannot be dipped', () => {
    expect(() => superfats('1 cup ultramarine blue in 1 Tbsp dipped jojoba; rest')).toThrow(
      expect.objectContaining({ id: 'dipped-oil-missing' }),
    );
  });
});

describe('carrier water', () => {
  const watery = '2 cups titanium dioxide full in 100 ml water; rest';

  test('is held back from the lye water, so the batch keeps its water', () => {
    const { recipe, filled: batch } = filled(
      asked({ portions: '2 cups titanium dioxide in 30 ml water; rest' }),
    );
    expect(batch.taken.holdBackGrams).toBeCloseTo(30 * 0.998, 6);
    expect(batch.pot.waterGrams + batch.taken.holdBackGrams).toBeCloseTo(recipe.waterGrams, 9);
  });

  test('thins the lye in its own portion and not in the others', () => {
    const [white, rest] = filled(asked({ portions: watery })).filled.portions;
    expect(white!.lyeConcentration).toBeLessThan(rest!.lyeConcentration - 5);
  });

  test('is never held back beyond as much water as lye', () => {
    const { recipe, filled: batch } = filled(asked({ portions: watery, water: '45% lye' }));
    expect(batch.taken.holdBackGrams).toBeLessThan(batch.carrierWaterGrams);
    expect(batch.pot.waterGrams).toBeCloseTo(recipe.lyeGrams, 6);
  });
});

describe('sizes agree with one another', () => {
  test.for(['1000 g oils', '1.2 l batter', '1300 g batter', 'mould 25x9x7 cm', '12 cavities x 100 ml'])(
    '%s: portions and reserve add up to the batter',
    size => {
      const { filled: batch } = filled(asked({ ...ONE_LINE, size }));
      const sum = batch.portions.reduce((total, one) => total + one.millilitres, batch.reserveMillilitres);
      expect(sum).toBeCloseTo(batch.pot.millilitres, 6);
    },
  );

  test('what was asked is what comes out', () => {
    const of = (size: string) => filled(asked({ ...ONE_LINE, size })).filled;
    expect(of('1.2 l batter').pot.millilitres).toBeCloseTo(1200, 0);
    expect(of('1300 g batter').pot.grams).toBeCloseTo(1300, 0);
    const poured = of('mould 25x9x7 cm').portions.reduce((sum, one) => sum + one.pouredMillilitres, 0);
    expect(poured).toBeCloseTo(1575, 0);
  });

  test('a batch found from its mould has the oils that make that batter again', () => {
    const { recipe, filled: batch } = filled(asked({ size: 'mould 25x9x7 cm' }));
    const again = filled(asked({ size: `${recipe.oilGrams.toFixed(6)} g oils` })).filled;
    expect(again.pot.millilitres).toBeCloseTo(batch.pot.millilitres, 3);
  });

  test('a pound of oils makes about three cups of batter, whichever way it is asked', () => {
    const { filled: batch } = filled(asked({ size: '1 lb oils' }));
    expect(batch.pot.millilitres / US_CUP_ML).toBeGreaterThan(2.5);
    expect(batch.pot.millilitres / US_CUP_ML).toBeLessThan(3.2);
  });
});

describe('rescaling', () => {
  property.prop([fc.double({ min: 0.3, max: 20, noNaN: true })])('by k scales every mass by k', factor => {
    const request = asked({
      portions: '1 cup ultramarine blue in 10 ml olive; 200 ml gold mica in 15 ml water; rest',
      additives: 'honey 10 g, salt 2%',
      fragrance: '3%',
      scale: 1e-6,
    });
    const [one, many] = [filled(request), filled(rescale(request, factor))];
    const masses = ({ recipe, filled: batch }: ReturnType<typeof filled>) => [
      recipe.lyeGrams,
      recipe.waterGrams,
      batch.pot.grams,
      batch.taken.holdBackGrams,
      gramsOf(batch.addedOils),
      ...recipe.oils.map(({ grams }) => grams),
      ...recipe.additives.map(({ grams }) => grams),
      ...batch.portions.flatMap(({ grams, fragranceGrams, pouredGrams }) => [
        grams,
        fragranceGrams,
        pouredGrams,
      ]),
    ];
    const [before, after] = [masses(one), masses(many)];
    before.forEach((grams, at) => {
      expect(after[at]! / factor).toBeCloseTo(grams, 3);
    });
  });

  test('a loaf grows in length, so it warms the same; cavities grow in number', () => {
    const grown = (size: string, factor: number) => rescale(asked({ size }), factor).size;
    expect(grown('mould 25x9x7 cm', 2)).toMatchObject({ mould: { lengthCm: 50, widthCm: 9, heightCm: 7 } });
    expect(grown('12 cavities x 100 ml', 2)).toMatchObject({ mould: { count: 24, eachMillilitres: 100 } });
    expect(() => grown('1 kg oils', 0)).toThrow(expect.objectContaining({ id: 'rescale-out-of-range' }));
  });
});

test('fragrance goes into the scented portions only, by the oils in each', () => {
  const { filled: batch } = filled(
    asked({ portions: '25% plain; rest plain unscented', fragrance: '4%', reserve: 0 }),
  );
  expect(batch.portions[0]!.fragranceGrams).toBeCloseTo(10, 6);
  expect(batch.portions[1]!.fragranceGrams).toBe(0);
});
