import { describe, expect, test } from 'vitest';
import { parseFragrance } from '../../../src/engine/batch/additives/fragrance.ts';
import { heatShapeOf } from '../../../src/engine/batch/batch-heat.ts';
import { parseSize } from '../../../src/engine/batch/batch-size.ts';
import { DAY, isInTime, nextWeek, STAGES, STALE } from '../../../src/engine/batch/curing/stages.ts';
import { parseChanges } from '../../../src/engine/batch/made/changes.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { planClass } from '../../../src/engine/batch/planning/class-kits.ts';
import { planNumbers } from '../../../src/engine/batch/planning/plan.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { refused } from '../quantities/refused.ts';
import { asked, refusalOf, type Written } from './asked.ts';

describe('a fragrance', () => {
  test.each([
    ['3%, vanillin 100%', 100],
    ['3%, vanillin 0%', 0],
    ['3% lavender', 0],
    ['vanillin content 8% at 3%', 8],
    ['3% of oils, 8% vanillin', 8],
  ])('%s holds %d %% of vanillin', (text, vanillin) => {
    expect(parseFragrance(text)).toMatchObject({ percentOfOils: 3, vanillinPercent: vanillin });
  });
  test.each([
    ['3%, vanillin 101%', 'percent-unreadable'],
    ['6%', 'answered'],
    ['6.1%', 'fragrance-dose-high'],
    ['vanillin 8%', 'fragrance-dose-unclear'],
    ['3% lavender, 2% mint', 'fragrance-dose-unclear'],
    ['3% vanilla, 5%', 'fragrance-dose-unclear'],
    ['-3%', 'percent-unreadable'],
    ['lavender', 'percent-unreadable'],
    ['1%, 2%, 3%', 'percent-unreadable'],
    ['3% lavender, IFRA max 3%', 'answered'],
    ['3% lavender, IFRA max 2.9%', 'scent-over-certificate'],
    ['0% clove', 'answered'],
    ['1% clove', 'scent-needs-certificate'],
    ['1% clove, certificate 2%', 'answered'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseFragrance(text))).toBe(id);
  });
});

describe('the section whose heat is followed', () => {
  test.each([
    ['1 kg oils', { shape: 'loaf', widthCm: 9, heightCm: 7 }],
    ['mould 25x8x6 cm', { shape: 'loaf', widthCm: 8, heightCm: 6 }],
    ['cylinder 8x25 cm', { shape: 'round', diameterCm: 8, heightCm: 25 }],
  ])('of %s', (size, shape) => {
    expect(heatShapeOf(parseSize(size))).toEqual(shape);
  });
  test('a cavity counts as round, as wide as high', () => {
    const shape = heatShapeOf(parseSize('12 cavities x 100 ml'));
    expect(shape).toMatchObject({ shape: 'round' });
    const { diameterCm, heightCm } = shape as { diameterCm: number; heightCm: number };
    expect(diameterCm).toBe(heightCm);
    expect((Math.PI * diameterCm ** 2 * heightCm) / 4).toBeCloseTo(100, 9);
  });
});

describe('a size in other words', () => {
  test.each([
    ['a 2 lb loaf', { by: 'batter-mass', grams: 907.18474 }],
    ['a loaf of 2 lb of oils', { by: 'oils', grams: 907.18474 }],
    ['10 bars of 4 oz', { by: 'batter-mass', grams: 1133.980925 }],
    ['10 inch loaf mold holds 3 lb', { by: 'batter-mass', grams: 1360.77711 }],
    ['un molde de 2 litros', { by: 'mould', mould: { shape: 'cavities', count: 1, eachMillilitres: 2000 } }],
    [
      '25 x 8 x 6 cm, so 1200 ml',
      { by: 'mould', mould: { shape: 'cavities', count: 1, eachMillilitres: 1200 } },
    ],
    [
      '30 cm square x 5 cm',
      { by: 'mould', mould: { shape: 'loaf', lengthCm: 30, widthCm: 30, heightCm: 5 } },
    ],
    ['20 g', { by: 'oils', grams: 20 }],
    ['200 kg', { by: 'oils', grams: 200_000 }],
  ])('%s', (text, size) => {
    const rounded = (one: object) =>
      JSON.parse(
        JSON.stringify(one, (_, value) =>
          typeof value === 'number' ? Math.round(value * 1000) / 1000 : value,
        ),
      );
    expect(rounded(parseSize(text))).toMatchObject(rounded(size));
  });
  test.each([
    ['19.9 g', 'size-out-of-range'],
    ['201 kg', 'amount-out-of-range'],
    ['2-3 kg', 'amount-range'],
    ['500 ml of oils', 'size-oils-by-volume'],
    ['1 kg of water', 'size-unreadable'],
  ])('%s is refused', (text, id) => {
    expect(['size-out-of-range', id]).toContain(refused(() => parseSize(text)));
  });
});

describe('a list of oils', () => {
  test.each([
    ['olive 33.4%, coconut 33.4%, palm 33.4%', 'answered'],
    ['olive 51%, coconut 50%', 'answered'],
    ['olive 51.1%, coconut 50%', 'oils-percent-sum'],
    ['olive 99.4%', 'oils-percent-sum'],
    ['olive 99.5%', 'answered'],
    ['olive 50%, coconut 500 g', 'oils-mixed-units'],
    ['olive 60, coconut 60', 'oils-without-unit'],
    ['olive 55, coconut 55', 'oils-percent-sum'],
    ['olive 500 ml', 'oil-by-volume'],
    ['olive -5%, coconut 105%', 'oil-without-amount'],
    ['olive 0%, coconut 100%', 'oil-without-amount'],
    ['castor 5 100 g, olive 500 g', 'oil-number-spaced'],
    ['olive ,5 kg', 'amount-ambiguous'],
    ['', 'oils-empty'],
    ['olive', 'oil-without-amount'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseOils(text))).toBe(id);
  });
  test('the grade of coconut oil is no amount, and an oil named twice is one', () => {
    const { shares, totalGrams } = parseOils('coconut oil 76 300 g, olive 500 g, olive 200 g');
    expect(totalGrams).toBe(1000);
    expect(shares.map(({ oil, share }) => [oil.id, Math.round(share * 1e9) / 1e9])).toEqual([
      ['coconut', 0.3],
      ['olive', 0.7],
    ]);
    expect(refusalOf(() => parseOils('castor 5 100 g')).values).toMatchObject({
      joined: '5100 g',
      last: '100 g',
    });
  });
});

describe('what was made otherwise', () => {
  const one = (text: string) => parseChanges(text, MEASURES.us)[0];
  test.each([
    ['in the fridge', { kind: 'process', process: 'fridge' }],
    ['put it in the fridge', { kind: 'note' }],
    ['on the bench', { kind: 'process', process: 'ambient' }],
    ['no violet', { kind: 'without', name: 'violet' }],
    ['sin el violeta', { kind: 'without', name: 'violeta' }],
    ['it gelled', { kind: 'gel', gelled: true }],
    ['sin gel', { kind: 'gel', gelled: false }],
    ['my sister stirred', { kind: 'note' }],
    ['blue instead of green', { kind: 'note' }],
    ['violet: 2 tsp', { kind: 'amount', name: 'violet', before: undefined }],
    ['2 tsp violet instead of 1', { kind: 'amount', name: 'violet' }],
    ['2 tsp instead of 1 tsp violet', { kind: 'amount', name: 'violet' }],
  ])('%s', (text, change) => {
    expect(one(text)).toMatchObject({ ...change, text });
  });
  test('an amount that stands instead of another has both, in one unit where the second has none', () => {
    const change = one('2 tsp instead of 1');
    const { now, before } = change as { now: { millilitres: number }; before: { millilitres: number } };
    expect(now.millilitres / before.millilitres).toBeCloseTo(2, 9);
  });
  test.each([
    [Array.from({ length: 20 }, () => 'no violet').join(';'), 'answered'],
    [Array.from({ length: 21 }, () => 'no violet').join(';'), 'batch-changes-many'],
    ['-2 tsp', 'batch-change-unclear'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseChanges(text, MEASURES.us))).toBe(id);
  });
});

describe('what is still worth telling', () => {
  test.each(STAGES)('%s, up to its time and no later', stage => {
    expect(isInTime(stage, 0, STALE[stage])).toBe(true);
    expect(isInTime(stage, 0, STALE[stage] + 1)).toBe(false);
  });
  test('what comes each week comes a week after it was told, at the maker’s hour', () => {
    const clock = { zone: 'UTC', hour: 9 };
    const due = Date.UTC(2026, 10, 2, 9);
    expect(nextWeek({ stage: 'turn', due, now: due + 3_600_000 }, clock)).toBe(due + 7 * DAY);
    // Too late to be told at all: their next hour.
    expect(nextWeek({ stage: 'turn', due, now: due + 20 * DAY }, clock)).toBe(due + 20 * DAY);
  });
});

test.each([
  [1, 1, [1]],
  [60, 1, [60]],
  [60, 60, Array.from({ length: 60 }, () => 1)],
])('%d people at %d stations are a class', (people, stations, peopleAt) => {
  const kits = planClass(asked({}), { people, stations, planIsFor: 'station' });
  expect(kits.peopleAt).toEqual(peopleAt);
});

test('a jug holds no stronger lye than half and half, and water that all goes elsewhere is asked for', () => {
  const plan = (written: Written) => refused(() => planNumbers(asked(written)));
  expect(plan({ water: '50% lye', scale: 0.001 })).toBe('answered');
  expect(plan({ water: '50.2% lye' })).toBe('lye-too-strong');
  expect(plan({ liquid: 'coconut milk 400 g in the oils' })).toBe('milk-more-than-water');
  expect(plan({ liquid: 'coconut milk 250 g in the oils' })).toBe('jug-too-little-water');
  expect(plan({ liquid: 'coconut milk 60 g in the oils' })).toBe('answered');
  const { values } = refusalOf(() => planNumbers(asked({ liquid: 'coconut milk 250 g in the oils' })));
  const { mostGrams } = values as { mostGrams: number };
  // What is named as the most that will do does, and a gram more does not.
  expect(plan({ liquid: `coconut milk ${mostGrams} g in the oils` })).toBe('answered');
  expect(plan({ liquid: `coconut milk ${mostGrams + 2} g in the oils` })).toBe('jug-too-little-water');
});
