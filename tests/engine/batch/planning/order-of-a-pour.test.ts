import { describe, expect, test } from 'vitest';
import { planNumbers } from '../../../../src/engine/batch/planning/plan.ts';
import { timelineOf } from '../../../../src/engine/batch/planning/timeline.ts';
import { asked, filled, type Written } from '../asked.ts';

/** The steps of a plan, without the seconds that its heat takes. */
function steps(written: Written, more: Partial<Parameters<typeof timelineOf>[2]> = {}) {
  const request = asked(written);
  const numbers = planNumbers(request);
  const { recipe, filled: batch } = filled(request);
  return timelineOf(request, batch, {
    lye: recipe.lye,
    jug: numbers.jug,
    oilGrams: recipe.oilGrams,
    kohShare: 0,
    saltPercent: 0,
    lyeRise: numbers.lye.mixingRise,
    additives: numbers.additives,
    ovenC: 77,
    peakHours: 3,
    peakCoreC: 70,
    keepCool: false,
    ...more,
  });
}
const minutesOf = (all: ReturnType<typeof steps>, step: string) =>
  all.find(one => one.step === step)?.minutesBeforePour;

// The day before and the minutes before: common practice.
describe('the order of a pour', () => {
  test('what is frozen or boiled is done a day before its lye, boiling first', () => {
    const beer = steps({ liquid: 'frozen beer' });
    const [boiled, frozen, mixed] = ['boil-off', 'freeze-liquid', 'mix-lye-frozen'].map(
      step => minutesOf(beer, step)!,
    );
    expect(boiled! - frozen!).toBe(60);
    expect(frozen! - mixed!).toBe(24 * 60);
  });
  test('ice is bought frozen', () => {
    expect(minutesOf(steps({ liquid: 'ice 50%' }), 'freeze-liquid')).toBeUndefined();
  });
  test('a batter is blended after its lye has cooled, split, coloured, scented and poured in two minutes each', () => {
    const plan = steps({ portions: '1 cup gold mica; 1 cup red oxide; rest', fragrance: '3%' });
    const [split, first] = [minutesOf(plan, 'split')!, minutesOf(plan, 'whisk-portion')!];
    expect(split).toBe(2 * (2 + 1) + 2);
    expect(first).toBe(split - 2);
    expect(minutesOf(plan, 'scent-portion')).toBe(2);
    expect(minutesOf(plan, 'lye-into-oils')).toBe(split + 6);
    expect(minutesOf(plan, 'line-mould')).toBe(split + 16);
    expect(minutesOf(plan, 'mix-lye')!).toBeGreaterThanOrEqual(split + 6 + 30);
    const bare = steps({ portions: '1 cup gold mica; 1 cup red oxide; rest' });
    expect(minutesOf(bare, 'split')).toBe(2 * 3);
    expect(minutesOf(bare, 'scent-portion')).toBeUndefined();
  });
  test('one pot is neither split nor layered', () => {
    const one = steps({ swirl: 'layered' }).map(({ step }) => step);
    expect(one).toContain('pour-single');
    expect(one).not.toContain('split');
    expect(one).not.toContain('pour-layered');
  });
  test('an oven is warmed and used unless the loaf would boil', () => {
    const oven = (peakCoreC: number) => steps({ process: 'oven' }, { peakCoreC }).map(({ step }) => step);
    expect(oven(80)).toEqual(expect.arrayContaining(['warm-oven', 'into-oven']));
    expect(oven(101)).not.toContain('warm-oven');
    expect(oven(101)).toContain('too-hot-to-wrap');
    expect(steps({ process: 'insulated' }, { peakCoreC: 101 }).map(({ step }) => step)).not.toContain('wrap');
  });
  test('a loaf that hardly warms stays cool, another is watched at its hottest hour', () => {
    const at = (peakCoreC: number) => steps({ start: '40 C' }, { peakCoreC, peakHours: 2.8 });
    expect(at(42.9).map(({ step }) => step)).toContain('stays-cool');
    expect(minutesOf(at(43), 'watch-heat')).toBe(-180);
    expect(minutesOf(steps({}, { peakHours: 0.1, peakCoreC: 90 }), 'watch-heat')).toBe(-30);
  });
  test('a bar is cut after a day, one full of salt within the hour, a paste never', () => {
    expect(minutesOf(steps({}), 'unmould')).toBe(-24 * 60);
    expect(minutesOf(steps({}, { saltPercent: 20 }), 'cut-salt-bar')).toBe(-60);
    expect(minutesOf(steps({}, { saltPercent: 19.9 }), 'unmould')).toBe(-24 * 60);
    const paste = steps({}, { kohShare: 1 }).map(({ step }) => step);
    expect(paste).toEqual(expect.arrayContaining(['ready-tub', 'into-tub', 'keep-paste']));
    expect(paste).not.toContain('line-mould');
  });
  test('frozen lye is not warmed where the batter is warm', () => {
    const cold = (start: string) =>
      steps({ liquid: 'frozen goat milk', start }).find(({ step }) => step === 'check-temperatures')!.values;
    expect(cold('41 C')).toMatchObject({ coldLye: true });
    expect(cold('40 C')).toMatchObject({ coldLye: false });
  });
});
