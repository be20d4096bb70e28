import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { believedOptics } from '../../../../../src/engine/colour/calibration/joint/jar-model.ts';
import { type CuredBar, learnJars } from '../../../../../src/engine/colour/calibration/joint/learn-jars.ts';
import { robustUpdate } from '../../../../../src/engine/colour/calibration/joint/robust-update.ts';
import { barLab } from '../../../../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../../../../src/engine/colour/mixing/base-soap.ts';
import type { Optics } from '../../../../../src/engine/colour/mixing/optics.ts';
import { colourDifference } from '../../../../../src/engine/colour/spectra/cielab.ts';
import { fitting, full, kindOf } from '../../invented-makers.ts';

describe('the update', () => {
  const { normal } = fitting(3);
  const rows = Array.from({ length: 8 }, () => [normal(), normal(), normal()]);
  const prior = { mean: [0.3, -0.2, 0.5], precision: Matrix.diag([4, 1, 9]) };
  const seen = rows.map(() => normal());
  const error = 0.7;
  const observations = (values: readonly number[]) =>
    rows.map((row, at) => (theta: readonly number[]) => [
      (row.reduce((sum, value, which) => sum + value * theta[which]!, 0) - values[at]!) / error,
    ]);

  test('is Bayes’ rule in closed form where all is linear and normal', () => {
    // Posterior of a linear normal model: Lindley and Smith, J. R. Statist. Soc. B 34 (1972) 1-41.
    const design = new Matrix(rows);
    const information = design
      .transpose()
      .mmul(design)
      .div(error ** 2);
    const covariance = inverse(Matrix.add(information, prior.precision));
    const pull = design
      .transpose()
      .mmul(Matrix.columnVector(seen))
      .div(error ** 2)
      .add(prior.precision.mmul(Matrix.columnVector(prior.mean)));
    const mean = covariance.mmul(pull).to1DArray();
    const found = robustUpdate(prior, observations(seen), Number.POSITIVE_INFINITY);
    for (const [at, value] of found.mean.entries()) expect(value).toBeCloseTo(mean[at]!, 6);
    const wanted = covariance.to1DArray();
    for (const [at, value] of found.covariance.to1DArray().entries())
      expect(value).toBeCloseTo(wanted[at]!, 6);
    expect(found.weights).toEqual(rows.map(() => 1));
  });

  test('stands where its cost is least, found by looking everywhere', () => {
    const readings = [0.1, 0.2, 6];
    const outlier = 1.5;
    const cost = (x: number) =>
      readings.reduce(
        (sum, one) => sum + 2 * outlier ** 2 * (Math.sqrt(1 + (x - one) ** 2 / outlier ** 2) - 1),
        x * x,
      );
    const grid = Array.from({ length: 60_001 }, (_, step) => -3 + step / 10_000);
    const least = grid.reduce((best, x) => (cost(x) < cost(best) ? x : best));
    const found = robustUpdate(
      { mean: [0], precision: Matrix.eye(1) },
      readings.map(one => ([x = 0]) => [x - one]),
      outlier,
    );
    expect(found.mean[0]).toBeCloseTo(least, 3);
    expect(found.weights[2]).toBeLessThan(0.35);
  });

  test('is moved by one wild observation no further, however wild', () => {
    const at = (wild: number, outlier: number) =>
      robustUpdate(prior, observations(seen.with(0, wild)), outlier).mean;
    const shift = (wild: number, outlier: number) =>
      Math.hypot(...at(wild, outlier).map((value, which) => value - at(seen[0]!, outlier)[which]!));
    expect(shift(1000, 1.5)).toBeLessThan(1.3 * shift(20, 1.5));
    expect(shift(1000, Number.POSITIVE_INFINITY)).toBeGreaterThan(30 * shift(1000, 1.5));
  });
});

describe('a cured bar', () => {
  const shades = [{ shade: 'white' as const, share: 1 }];
  const base = baseSoap(shades, false);
  const violet = kindOf('ultramarine-violet');
  const weak = (times: number): Optics => ({ ...violet, k: violet.k.map(value => value * times) });
  const barOf = (optics: Optics, share: number, plusMinus = 4): CuredBar => {
    const grams = full('ultramarine-violet') * share;
    return {
      mix: [{ jar: 0, grams }],
      shades,
      gelled: false,
      lab: barLab([{ optics, grams }], base),
      plusMinus,
    };
  };
  const learnt = (bars: readonly CuredBar[]) =>
    learnJars({ jars: [{ colourant: 'ultramarine-violet' }], bars }).jars[0]!;

  test('tells how strong the jar is, and narrows what is stated', () => {
    const bars = [1, 0.5, 0.25].map(share => barOf(weak(0.5), share));
    const found = learnt(bars);
    expect(Math.exp(found.parameters[0])).toBeGreaterThan(0.42);
    expect(Math.exp(found.parameters[0])).toBeLessThan(0.65);
    expect(found.plusMinus.after).toBeLessThan(found.plusMinus.before / 1.5);
  });

  test('that is of another colour altogether moves little', () => {
    const good = [1, 0.5, 0.25, 0.125].map(share => barOf(violet, share));
    const wrong = { ...barOf(violet, 0.75), lab: { l: 60, a: -40, b: 45 } };
    const [without, withIt] = [learnt(good), learnt([...good, wrong])];
    const grams = full('ultramarine-violet');
    const colour = (found: typeof without) =>
      barLab([{ optics: believedOptics(violet, found), grams }], base);
    expect(colourDifference(colour(without), colour(withIt))).toBeLessThan(4);
    expect(
      learnJars({ jars: [{ colourant: 'ultramarine-violet' }], bars: [...good, wrong] }).bars.at(-1)?.weight,
    ).toBeLessThan(0.2);
  });

  test('says the same whichever of its bars comes first', () => {
    const off = (share: number, lighter: number): CuredBar => {
      const bar = barOf(violet, share);
      return { ...bar, lab: { ...bar.lab, l: bar.lab.l + lighter } };
    };
    const [near, fair, far] = [off(1, 1), off(0.5, 9), off(0.25, 25)];
    const stated = [
      [near, fair, far],
      [fair, near, far],
      [far, near, fair],
      [far, fair, near],
    ].map(bars => learnt(bars).plusMinus.after);
    for (const one of stated) expect(one).toBeCloseTo(stated[0]!, 3);
  });

  test('of two jars tells them apart once each was seen with the other in other shares', () => {
    const yellow = kindOf('yellow-iron-oxide');
    const strong: Optics = { ...yellow, k: yellow.k.map(value => value * 1.8) };
    const mixed = (violetShare: number, yellowShare: number): CuredBar => {
      const mix = [
        { jar: 0, grams: full('ultramarine-violet') * violetShare },
        { jar: 1, grams: full('yellow-iron-oxide') * yellowShare },
      ];
      const lab = barLab(
        [
          { optics: weak(0.6), grams: mix[0]!.grams },
          { optics: strong, grams: mix[1]!.grams },
        ],
        base,
      );
      return { mix, shades, gelled: false, lab, plusMinus: 4 };
    };
    const bars = [mixed(1, 0.1), mixed(0.5, 0.3), mixed(0.2, 0.8), mixed(0.7, 0.05), mixed(0.1, 0.4)];
    const { jars } = learnJars({
      jars: [{ colourant: 'ultramarine-violet' }, { colourant: 'yellow-iron-oxide' }],
      bars,
    });
    expect(Math.exp(jars[0]!.parameters[0])).toBeLessThan(0.8);
    expect(Math.exp(jars[1]!.parameters[0])).toBeGreaterThan(1.3);
  });

  test('says nothing of a jar that is not in it', () => {
    const jars = [{ colourant: 'ultramarine-violet' }, { colourant: 'gold-mica' }];
    const found = learnJars({ jars, bars: [barOf(weak(0.5), 1)] }).jars[1]!;
    expect(found.parameters).toEqual([0, 0, 0, 0]);
    expect(found.plusMinus.after).toBeCloseTo(found.plusMinus.before, -1);
    expect(found.evidence.k.spread).toBeGreaterThan(2.9);
  });
});
