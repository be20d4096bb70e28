import { describe, expect, test } from 'vitest';
import { cureDays, softShare } from '../../../../src/engine/batch/curing/cure-time.ts';
import { DAY, nextHour, stageDates, toldAt, toldDates } from '../../../../src/engine/batch/curing/stages.ts';
import {
  CURED_WEEKLY_LOSS,
  dryingOf,
  parseWeights,
} from '../../../../src/engine/batch/curing/weight-loss.ts';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

const oils = (text: string) => parseOils(text).shares.map(({ oil, share }) => ({ oil, grams: share * 1000 }));
const cure = (text: string, lyeConcentration = 33, kohShare = 0) =>
  cureDays({ oils: oils(text), lyeConcentration, kohShare });

describe('when a bar is cured (common practice)', () => {
  test('a usual bar in four to six weeks', () => {
    const { low, typical, high } = cure('coconut 30%, olive 40%, palm 30%');
    expect(low).toBeGreaterThanOrEqual(4 * 7 - 1);
    expect(high).toBeLessThanOrEqual(6 * 7 + 1);
    expect(low < typical && typical < high).toBe(true);
  });

  test('with more water later, with less never before three weeks', () => {
    const usual = cure('coconut 30%, olive 40%, palm 30%').typical;
    expect(cure('coconut 30%, olive 40%, palm 30%', 27).typical - usual).toBe(9);
    expect(cure('coconut 30%, olive 40%, palm 30%', 50).low).toBe(21);
  });

  test('olive alone wants months', () => {
    expect(softShare(oils('olive 100%'))).toBeGreaterThan(0.8);
    expect(cure('olive 100%').typical).toBeGreaterThan(75);
    expect(cure('olive 100%').high).toBeGreaterThan(120);
  });

  test('an oil whose fatty acids nobody knows counts as hard, and no oils are not soft', () => {
    const [olive] = oils('olive 100%');
    const unknown = { ...olive!.oil, profile: undefined };
    expect(softShare([{ oil: unknown, grams: 500 }])).toBe(0);
    const half = [olive!, { oil: unknown, grams: olive!.grams }];
    expect(softShare(half)).toBeCloseTo(softShare([olive!]) / 2, 12);
    expect(softShare([])).toBe(0);
  });

  test('a paste is not dried but left to clear', () => {
    expect(cure('olive 100%', 25, 1)).toEqual({ low: 7, typical: 14, high: 28 });
  });
});

describe('what the scale says', () => {
  const week = 7 * DAY;
  const loses = (...grams: number[]) => dryingOf(grams.map((one, at) => ({ at: at * week, grams: [one] })));

  test('cured is under one percent a week (common practice)', () => {
    expect(CURED_WEEKLY_LOSS).toBe(0.01);
    expect(loses(100, 98)).toMatchObject({ cured: false, weeksLeft: undefined });
    expect(loses(100, 98)?.weeklyLoss).toBeCloseTo(0.02, 6);
    expect(loses(100, 99.2)).toMatchObject({ cured: true, weeksLeft: 0 });
  });

  test('a loss that halves each week is under the bound when it says', () => {
    const drying = loses(100, 96, 94.08);
    expect(drying?.weeklyLoss).toBeCloseTo(0.02, 6);
    // 4 %, 2 %, 1 %, 0.5 %: two weeks from now it is under the bound, one week on it only stands at it.
    expect(drying?.weeksLeft).toBe(2);
    expect(loses(100, 96, 94.176)?.weeksLeft).toBe(1);
    expect(drying?.lostInAll).toBeCloseTo(0.0592, 6);
  });

  test('two weeks between are two weeks of loss', () => {
    const apart = dryingOf([
      { at: 0, grams: [100] },
      { at: 2 * week, grams: [98.01] },
    ]);
    expect(apart?.weeklyLoss).toBeCloseTo(0.01, 6);
  });

  test('other bars, or a day between, are not compared', () => {
    expect(dryingOf([{ at: 0, grams: [100] }])).toBeUndefined();
    expect(
      dryingOf([
        { at: 0, grams: [100] },
        { at: week, grams: [50, 45] },
      ]),
    ).toBeUndefined();
    expect(
      dryingOf([
        { at: 0, grams: [100] },
        { at: DAY, grams: [99.9] },
      ]),
    ).toBeUndefined();
  });

  test.each([
    ['112 g, 108 g', [112, 108]],
    ['112, 108', [112, 108]],
    ['112,5 g', [112.5]],
    ['4 oz', [113.398]],
  ])('“%s” is read', (text, grams) => {
    expect(parseWeights(text, MEASURES.us).map(one => Number(one.toFixed(3)))).toEqual(grams);
  });

  test.each(['-3', '-3 g', '', 'soap', '2 cups', '0'])('“%s” is no weight', text => {
    expect(() => parseWeights(text, MEASURES.us)).toThrow(Refusal);
  });
});

describe('the dates of a batch', () => {
  const facts = {
    peakHours: 2.5,
    cure: { low: 28, typical: 35, high: 42 },
    kohShare: 0,
    saltPercent: 0,
    gelled: true,
    lyeConcentration: 33,
    isLoaf: true,
  };
  const poured = Date.UTC(2026, 10, 28, 14, 30);
  const hoursOf = (more: Partial<typeof facts>) =>
    stageDates(poured, { ...facts, ...more }).map(({ stage, at }) => [stage, (at - poured) / 3_600_000]);

  test('follow one another', () => {
    expect(hoursOf({})).toEqual([
      ['heat', 2.5],
      ['unmould', 24],
      ['cut', 36],
      ['turn', 36 + 168],
      ['cured', 35 * 24],
    ]);
  });

  test('wait for a soft loaf, and hurry for one full of salt (common practice)', () => {
    expect(hoursOf({ gelled: false, lyeConcentration: 25 })).toContainEqual(['unmould', 60]);
    expect(hoursOf({ saltPercent: 50 })).toContainEqual(['cut', 1]);
    expect(hoursOf({ saltPercent: 50, isLoaf: false })).toContainEqual(['unmould', 4]);
  });

  test('of a paste hold no knife, of single moulds neither', () => {
    expect(hoursOf({ kohShare: 1 }).map(([stage]) => stage)).toEqual(['heat', 'cured']);
    expect(hoursOf({ isLoaf: false }).map(([stage]) => stage)).toEqual(['heat', 'unmould', 'turn', 'cured']);
  });

  test('come at the maker’s hour, across a change of clocks', () => {
    const madrid = { zone: 'Europe/Madrid', hour: 9 };
    expect(new Date(nextHour(poured, madrid)).toISOString()).toBe('2026-11-29T08:00:00.000Z');
    // Clocks go forward on 28 March 2027 in Madrid (Directive 2000/84/EC: last Sunday of March, 01:00 UTC).
    const spring = Date.UTC(2027, 2, 27, 12);
    expect(new Date(nextHour(spring, madrid)).toISOString()).toBe('2027-03-28T07:00:00.000Z');
    expect(nextHour(Date.UTC(2026, 10, 29, 8), madrid)).toBe(Date.UTC(2026, 10, 29, 8));
    expect(toldAt({ stage: 'heat', at: poured, exact: true }, madrid)).toBe(poured);
  });

  test('leave a loaf half a day out of its mould before it is cut, whenever its maker is told', () => {
    const clock = { zone: 'UTC', hour: 9 };
    // Poured in the evening: out after 24 h, told the next morning; a cut after 36 h would be told the same minute.
    const evening = Date.UTC(2026, 10, 28, 18);
    const told = toldDates(stageDates(evening, facts), clock);
    const at = (stage: string) => new Date(told.find(one => one.stage === stage)!.at).toISOString();
    expect(at('unmould')).toBe('2026-11-30T09:00:00.000Z');
    expect(at('cut')).toBe('2026-12-01T09:00:00.000Z');
    expect(at('heat')).toBe('2026-11-28T20:30:00.000Z');
    // A bar full of salt waits for nobody's hour.
    const salt = toldDates(stageDates(evening, { ...facts, saltPercent: 50 }), clock);
    expect(salt.find(({ stage }) => stage === 'cut')!.at).toBe(evening + 3_600_000);
  });
});
