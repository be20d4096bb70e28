import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { calibrate } from '../../../src/engine/colour/calibration/calibrate.ts';
import { poolCalibrations } from '../../../src/engine/colour/calibration/pool.ts';
import type { ScaleBelief, TestBar } from '../../../src/engine/colour/calibration/scale-estimation.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import type { Optics } from '../../../src/engine/colour/mixing/optics.ts';
import { colourDifference, type Lab } from '../../../src/engine/colour/spectra/cielab.ts';
import { candidates } from './shelves.ts';

const base = plainBase('white', false);
const violet = candidates('ultramarine-violet')[0]!.optics;
const doses = [0.05, 0.1, 0.2, 0.3];

/** Bars of a jar that is stronger or weaker than its kind. */
function barsOf(
  k: number,
  s: number,
  noise: (dose: number) => Lab = () => ({ l: 0, a: 0, b: 0 }),
): TestBar[] {
  const jar: Optics = { ...violet, k: violet.k.map(v => v * k), s: violet.s.map(v => v * s) };
  return doses.map(grams => {
    const lab = barLab([{ optics: jar, grams }], base);
    const off = noise(grams);
    return { grams, lab: { l: lab.l + off.l, a: lab.a + off.a, b: lab.b + off.b }, plusMinus: 2 };
  });
}

describe('test bars', () => {
  const strength = fc.double({ min: 0.5, max: 2, noNaN: true });
  test.prop([strength], { numRuns: 25 })('tell how strong a jar is', k => {
    const found = calibrate({ optics: violet, base, bars: barsOf(k, 1) });
    expect(found.after).toBeLessThan(1.5);
    expect(found.after).toBeLessThanOrEqual(found.before + 1e-9);
    expect(Math.abs(Math.log(found.scale.k / k))).toBeLessThan(0.2);
    expect(found.doubt).toBeUndefined();
  });

  test('of a jar like its kind leave it as it is and narrow the error', () => {
    const found = calibrate({ optics: violet, base, bars: barsOf(1, 1) });
    expect(found.scale.k).toBeCloseTo(1, 2);
    expect(found.optics.plusMinus).toBeLessThan(violet.plusMinus * 0.7);
  });

  test('narrow the error the more the more there are', () => {
    const bars = barsOf(1.3, 1);
    const spread = (count: number) =>
      calibrate({ optics: violet, base, bars: bars.slice(0, count) }).belief.k.spread;
    expect(spread(2)).toBeLessThan(spread(1));
    expect(spread(4)).toBeLessThan(spread(2));
  });

  test('foretell a dose that was not among them', () => {
    const bars = barsOf(1.6, 1);
    const { optics } = calibrate({ optics: violet, base, bars: bars.filter(({ grams }) => grams !== 0.2) });
    const kept = bars.find(({ grams }) => grams === 0.2)!;
    const off = (of: Optics) => colourDifference(barLab([{ optics: of, grams: 0.2 }], base), kept.lab);
    expect(off(optics)).toBeLessThan(off(violet) / 4);
  });

  test('with a sloppy reading pull less than a careful one', () => {
    const bars = barsOf(2, 1).slice(0, 1);
    const pull = (plusMinus: number) =>
      calibrate({ optics: violet, base, bars: bars.map(bar => ({ ...bar, plusMinus })) }).scale.k;
    expect(pull(8)).toBeLessThan(pull(2));
    expect(pull(8)).toBeGreaterThan(1);
  });

  test('of another colour altogether are doubted', () => {
    const green = doses.map(grams => ({ grams, lab: { l: 55, a: -45, b: 35 }, plusMinus: 2 }));
    expect(calibrate({ optics: violet, base, bars: green }).doubt).toBeDefined();
  });

  test('without colourant correct the base', () => {
    const cream = plainBase('cream', false);
    const bars = [{ grams: 0, lab: barLab([], cream), plusMinus: 1 }];
    const tints = doses.map(grams => ({
      grams,
      lab: barLab([{ optics: violet, grams }], cream),
      plusMinus: 1,
    }));
    const withPlain = calibrate({ optics: violet, base, bars: [...bars, ...tints] });
    expect(Math.abs(Math.log(withPlain.scale.k))).toBeLessThan(0.15);
  });

  test('are needed, with a dose one can believe', () => {
    expect(() => calibrate({ optics: violet, base, bars: [] })).toThrow(
      expect.objectContaining({ id: 'calibration-without-bars' }),
    );
    const absurd = [{ grams: -1, lab: { l: 50, a: 0, b: 0 }, plusMinus: 2 }];
    expect(() => calibrate({ optics: violet, base, bars: absurd })).toThrow(
      expect.objectContaining({ id: 'calibration-dose-unusable', values: { grams: absurd[0]!.grams } }),
    );
  });
});

describe('members who calibrate the same product', () => {
  const kind: ScaleBelief = { k: { ln: 0, spread: 0.6 }, s: { ln: 0, spread: 0.6 } };
  const says = (ln: number, spread = 0.1): ScaleBelief => ({ k: { ln, spread }, s: { ln: 0, spread: 1 } });

  test('give the next one a better start', () => {
    const prior = poolCalibrations([says(0.4), says(0.45), says(0.5)], kind);
    expect(prior.k.ln).toBeGreaterThan(0.35);
    expect(prior.k.ln).toBeLessThan(0.46);
    expect(prior.k.spread).toBeLessThan(0.2);
  });

  test('who disagree leave it wide', () => {
    const agreed = poolCalibrations([says(0.4), says(0.42)], kind).k.spread;
    expect(poolCalibrations([says(-0.3), says(0.7)], kind).k.spread).toBeGreaterThan(agreed * 2);
  });

  test('move it little when they know little, and not at all when there is nobody', () => {
    expect(Math.abs(poolCalibrations([says(1, 3)], kind).k.ln)).toBeLessThan(0.1);
    expect(poolCalibrations([], kind)).toEqual(kind);
  });

  test('lower the error of a member without bars of their own', () => {
    const jars = [1.5, 1.6, 1.7].map(k => calibrate({ optics: violet, base, bars: barsOf(k, 1) }).evidence);
    const prior = poolCalibrations(jars, kind);
    const one = barsOf(1.6, 1).slice(1, 2);
    const alone = calibrate({ optics: violet, base, bars: one });
    const helped = calibrate({ optics: violet, base, bars: one, prior });
    expect(Math.abs(Math.log(helped.scale.k / 1.6))).toBeLessThan(Math.abs(Math.log(alone.scale.k / 1.6)));
    expect(helped.optics.plusMinus).toBeLessThanOrEqual(alone.optics.plusMinus);
  });
});
