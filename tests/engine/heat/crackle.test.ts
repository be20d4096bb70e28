import { describe, expect, test } from 'vitest';
import { crackleRisk } from '../../../src/engine/heat/crackle.ts';
import { type HotBatter, quickHeat } from '../../../src/engine/heat/estimate.ts';
import { USUAL_HEAT } from '../../../src/engine/heat/setting.ts';

describe('white that may crackle', () => {
  const batter: HotBatter = {
    density: 1,
    heatCapacity: 2.42,
    hydroxidePerGram: 0.0025,
    waterPercent: 23,
    speed: 1,
  };
  const shape = { shape: 'loaf', widthCm: 9, heightCm: 7 } as const;
  const gel = { none: 0.5, partial: 0.25, full: 0.25 };
  const drier = () => batter;
  const risk = (ceilingShare: number, lyeStrength: number, setting = {}, odds = gel) =>
    crackleRisk({ ceilingShare, lyeStrength }, odds, {
      shape,
      batter,
      setting: { ...USUAL_HEAT, ...setting },
      drier,
    });

  // Chance of gel, times how wet, times how white (an estimate of ours: no numbers are published).
  test.each([
    [1, 27.9, 0.5],
    [1, 28, 0.4],
    [1, 32.9, 0.4],
    [1, 33, 0.3],
    [0.5, 27, 0.375],
  ])('%d of the ceiling in lye of %d %%: %d', (share, strength, score) => {
    expect(risk(share, strength).score).toBeCloseTo(score, 12);
  });

  test('a score of 0.4 is high, one of 0.1 is some', () => {
    expect(risk(1, 28).risk).toBe('high');
    expect(risk(1, 33).risk).toBe('some');
    expect(risk(1, 27, {}, { none: 0.9, partial: 0.1, full: 0 }).risk).toBe('some');
    expect(risk(1, 27, {}, { none: 0.91, partial: 0.09, full: 0 }).risk).toBe('low');
  });

  test('ten degrees cooler is tried, but never under 27 C, and no lever that is pulled already', () => {
    const ids = (strength: number, setting = {}) =>
      risk(1, strength, setting)
        .levers.map(({ id }) => id)
        .sort();
    const cooler = (startC: number) =>
      risk(1, 27, { startC }).levers.find(({ id }) => id === 'start-cooler')?.to;
    expect(cooler(45)).toBe(35);
    expect(cooler(30)).toBe(27);
    expect(cooler(27)).toBeUndefined();
    expect(ids(27, { startC: 27, process: 'fridge' })).toEqual(['less-water']);
    expect(ids(34.9, { startC: 27, process: 'fridge' })).toEqual(['less-water']);
    expect(ids(35, { startC: 27, process: 'fridge' })).toEqual([]);
    expect(ids(35, { startC: 27, process: 'oven' })).toEqual(['fridge', 'no-insulation']);
    expect(ids(35, { startC: 27, process: 'ambient' })).toEqual(['fridge']);
    expect(risk(1, 27).levers.find(({ id }) => id === 'less-water')?.to).toBe(36);
  });

  test('a lever tells the heat and the risk it leaves', () => {
    const wrapped = { process: 'insulated', startC: 45 } as const;
    const levers = risk(1, 27, wrapped).levers;
    const fridge = levers.find(({ id }) => id === 'fridge')!;
    const { gel: left, peakCoreC } = quickHeat(shape, batter, {
      ...USUAL_HEAT,
      ...wrapped,
      process: 'fridge',
    });
    expect(fridge.peakCoreC).toBe(peakCoreC);
    expect(fridge.gelChance).toBe(left.partial + left.full);
    // Much white in wet lye: the score is the chance of gel.
    expect(fridge.gelChance).toBeGreaterThan(0.1);
    expect(fridge.gelChance).toBeLessThan(0.4);
    expect(fridge.risk).toBe('some');
    expect(fridge).not.toHaveProperty('to');
    const least = levers.map(({ gelChance }) => gelChance);
    expect(least).toEqual(least.toSorted((a, b) => a - b));
  });

  test('the lever of less water is told by the drier batter at 36 % lye, the others by the batter as it is', () => {
    const asked: number[] = [];
    const { levers } = crackleRisk({ ceilingShare: 1, lyeStrength: 27 }, gel, {
      shape,
      batter: { ...batter, waterPercent: 31 },
      setting: { ...USUAL_HEAT, process: 'insulated' },
      drier: strength => {
        asked.push(strength);
        return batter;
      },
    });
    expect(asked).toEqual([36]);
    const of = (id: string) => levers.find(lever => lever.id === id)!;
    // Three in five gel in either, which is 0.6 in lye of 27 %, and 0.6 times that in lye of 36 %.
    for (const id of ['less-water', 'no-insulation']) {
      expect(of(id).gelChance).toBeGreaterThan(0.45);
      expect(of(id).gelChance).toBeLessThan(0.65);
    }
    expect([of('less-water').risk, of('no-insulation').risk]).toEqual(['some', 'high']);
  });
});
