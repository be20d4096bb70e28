import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  calibrateJar,
  type JarCalibrationAsk,
} from '../../../../src/engine/colour/calibration/calibrate-jar.ts';
import { darkerBy } from '../../../../src/engine/colour/calibration/darker-base.ts';
import { poolCalibrations } from '../../../../src/engine/colour/calibration/pool.ts';
import type { ScaleBelief, TestBar } from '../../../../src/engine/colour/calibration/test-bar.ts';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import type { Optics } from '../../../../src/engine/colour/mixing/optics.ts';
import { colourDifference, type Lab } from '../../../../src/engine/colour/spectra/cielab.ts';
import { candidates } from '../shelves.ts';

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

const of = (bars: readonly TestBar[], more: Partial<JarCalibrationAsk> = {}) =>
  calibrateJar({
    colourant: 'ultramarine-violet',
    bars,
    shades: [{ shade: 'white', share: 1 }],
    gelled: false,
    ...more,
  });

describe('test bars', () => {
  const strength = fc.double({ min: 0.5, max: 2, noNaN: true });
  test.prop([strength], { numRuns: 25 })('tell how strong a jar is', k => {
    const found = of(barsOf(k, 1));
    expect(found.after).toBeLessThan(1.5);
    expect(found.after).toBeLessThanOrEqual(found.before + 1e-9);
    expect(Math.abs(Math.log(found.scale.k / k))).toBeLessThan(0.2);
    expect(found.doubt).toBeUndefined();
  });

  test('of a jar like its kind leave it as it is and narrow the error', () => {
    const found = of(barsOf(1, 1));
    expect(found.scale.k).toBeCloseTo(1, 2);
    expect(found.plusMinus.after).toBeLessThan(found.plusMinus.before * 0.7);
  });

  test('narrow the error the more the more there are', () => {
    const bars = barsOf(1.3, 1);
    const found = (count: number) => of(bars.slice(0, count));
    expect(found(2).evidence.k.spread).toBeLessThan(found(1).evidence.k.spread);
    expect(found(4).evidence.k.spread).toBeLessThan(found(2).evidence.k.spread);
    expect(found(4).plusMinus.after).toBeLessThan(found(1).plusMinus.after);
  });

  test('foretell a dose that was not among them', () => {
    const { grams, usual, fitted } = of(barsOf(1.6, 1)).curve[30]!;
    const jar: Optics = { ...violet, k: violet.k.map(v => v * 1.6) };
    const truth = barLab([{ optics: jar, grams }], base);
    expect(doses.every(dose => Math.abs(dose - grams) > 0.02)).toBe(true);
    expect(colourDifference(fitted, truth)).toBeLessThan(colourDifference(usual, truth) / 4);
  });

  test('with a sloppy reading pull less than a careful one', () => {
    const bars = barsOf(2, 1).slice(0, 1);
    const pull = (plusMinus: number) => of(bars.map(bar => ({ ...bar, plusMinus }))).scale.k;
    expect(pull(8)).toBeLessThan(pull(2));
    expect(pull(8)).toBeGreaterThan(1);
  });

  test('of another colour altogether are doubted', () => {
    const green = doses.map(grams => ({ grams, lab: { l: 55, a: -45, b: 35 }, plusMinus: 2 }));
    expect(of(green).doubt).toBe('poor-fit');
  });

  test('without colourant correct the base', () => {
    const dark = { ...base, k: base.k.map(value => value * 2.2) };
    const plain = { grams: 0, lab: barLab([], dark), plusMinus: 1 };
    const tints = doses.map(grams => ({
      grams,
      lab: barLab([{ optics: violet, grams }], dark),
      plusMinus: 1,
    }));
    expect(of([plain, ...tints]).after).toBeLessThan(of(tints).after / 2);
    expect(Math.exp(darkerBy(base, [plain])) / 2.2).toBeCloseTo(1, 0);
    expect(darkerBy(base, [plain])).toBeGreaterThan(0.65);
    expect(darkerBy(base, tints)).toBe(0);
  });

  test('are needed, with a dose one can believe', () => {
    expect(() => of([])).toThrow(expect.objectContaining({ id: 'calibration-without-bars' }));
    const absurd = [{ grams: -1, lab: { l: 50, a: 0, b: 0 }, plusMinus: 2 }];
    expect(() => of(absurd)).toThrow(
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
    const jars = [1.5, 1.6, 1.7].map(k => of(barsOf(k, 1)).evidence);
    const one = barsOf(1.6, 1).slice(1, 2);
    const alone = of(one);
    const helped = of(one, { pool: jars });
    expect(Math.abs(Math.log(helped.scale.k / 1.6))).toBeLessThan(Math.abs(Math.log(alone.scale.k / 1.6)));
    expect(helped.plusMinus.after).toBeLessThanOrEqual(alone.plusMinus.after);
  });
});
