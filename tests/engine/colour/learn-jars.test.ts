import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { believedOptics } from '../../../src/engine/colour/calibration/joint/jar-model.ts';
import { type CuredBar, learnJars } from '../../../src/engine/colour/calibration/joint/learn-jars.ts';
import { robustUpdate } from '../../../src/engine/colour/calibration/joint/robust-update.ts';
import { isotropic, statedRadius } from '../../../src/engine/colour/calibration/joint/stated-error.ts';
import { fullDose, opticsOf } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { barLab, predictBar } from '../../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../../src/engine/colour/mixing/base-soap.ts';
import type { BaseOptics, Optics } from '../../../src/engine/colour/mixing/optics.ts';
import { colourDifference, type Lab } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';

/** Numbers that look drawn at random, the same on every run (mulberry32). */
function chance(seed: number) {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal, below: (most: number) => Math.floor(uniform() * most) };
}

describe('the update', () => {
  const { normal } = chance(3);
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

describe('the stated radius', () => {
  // Quantiles of chi-square at 0.9, any table: 6.251 with 3 degrees of freedom, 4.605 with 2, 2.706 with 1.
  test.each([
    [isotropic(1), Math.sqrt(6.251)],
    [
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 0],
      ],
      Math.sqrt(4.605),
    ],
    [
      [
        [4, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ],
      2 * Math.sqrt(2.706),
    ],
  ] as const)('holds nine in ten', (covariance, radius) => {
    expect(statedRadius(covariance as never)).toBeCloseTo(radius, 1);
  });
});

const KINDS = [
  'ultramarine-violet',
  'ultramarine-blue',
  'red-iron-oxide',
  'yellow-iron-oxide',
  'chromium-oxide-green',
  'black-iron-oxide',
  'gold-mica',
];
const DIRT = ['black-iron-oxide', 'red-iron-oxide', 'yellow-iron-oxide'];
const kindOf = (id: string) => opticsOf(colourantById(id)!);
const full = (id: string) => fullDose(colourantById(id)!);

type Chance = ReturnType<typeof chance>;

/**
 * A jar as it might be bought: stronger or weaker, with some of another colour and some dirt in it, by the measured spectra
 * of those: not of the family that the fit believes in.
 */
function bought(id: string, isDusty: boolean, { normal, uniform, below }: Chance): Optics {
  const kind = kindOf(id);
  const [times, covers] = [Math.exp(0.35 * normal()), Math.exp(0.35 * normal())];
  const [other, dirt] = [KINDS[below(KINDS.length)]!, DIRT[below(DIRT.length)]!];
  const share = Math.min(0.12, Math.abs(normal()) * 0.04);
  const dust = isDusty ? 0.15 + 0.2 * uniform() : Math.min(0.15, Math.abs(normal()) * 0.03);
  const mixed = (what: 'k' | 's') =>
    kind[what].map(
      (value, band) =>
        value +
        (share * kindOf(other)[what][band]! * full(other)) / full(id) +
        (dust * kindOf(dirt)[what][band]! * full(dirt)) / full(id),
    );
  return { ...kind, k: mixed('k').map(v => v * times), s: mixed('s').map(v => v * covers) };
}

/** A maker with three jars and a soap of their own, ten cured batches, and four more that are foretold. */
function maker(drawn: Chance, isDusty: boolean) {
  const { normal, uniform, below } = drawn;
  const ids = [...KINDS].sort(() => uniform() - 0.5).slice(0, 3);
  const jars = ids.map((id, at) => bought(id, isDusty && at === 0, drawn));
  const shades = [{ shade: (['white', 'cream', 'yellow'] as const)[below(3)]!, share: 1 }];
  const gelled = uniform() < 0.4;
  const usual = baseSoap(shades, gelled);
  const darker = Math.exp(0.2 * normal());
  const soap: BaseOptics = { ...usual, k: usual.k.map(value => value * darker) };
  const mix = () => {
    const many = uniform() < 0.5 ? 1 : 2;
    return [...ids.keys()]
      .sort(() => uniform() - 0.5)
      .slice(0, many)
      .map(jar => ({ jar, grams: (full(ids[jar]!) * [0.25, 0.5, 1][below(3)]!) / many }));
  };
  const truth = (of: ReturnType<typeof mix>) =>
    barLab(
      of.map(({ jar, grams }) => ({ optics: jars[jar]!, grams })),
      soap,
    );
  const read = ({ l, a, b }: Lab, error: number): Lab => ({
    l: l + error * normal(),
    a: a + error * normal(),
    b: b + error * normal(),
  });
  const bars = Array.from({ length: 10 }, (): CuredBar => {
    const made = mix();
    // One photo in twenty is a bad one.
    return { mix: made, shades, gelled, lab: read(truth(made), uniform() < 0.05 ? 8 : 1.6), plusMinus: 4 };
  });
  const next = Array.from({ length: 4 }, () => {
    const made = mix();
    return { made, real: truth(made) };
  });
  return { ids, usual, bars, next };
}

/** How far off the eleventh batches are and how often the stated radius holds it, before anything was learnt and after. */
function tried(seed: number, makers: number) {
  const drawn = chance(seed);
  const sums = {
    before: 0,
    after: 0,
    heldBefore: 0,
    heldAfter: 0,
    statedBefore: 0,
    statedAfter: 0,
    count: 0,
  };
  for (let run = 0; run < makers; run += 1) {
    const { ids, usual, bars, next } = maker(drawn, run % 4 === 0);
    const found = learnJars({ jars: ids.map(colourant => ({ colourant })), bars });
    for (const { made, real } of next) {
      const predicted = (optics: (jar: number) => Optics) =>
        predictBar(
          made.map(({ jar, grams }) => ({ optics: optics(jar), grams })),
          usual,
        );
      const first = predicted(jar => kindOf(ids[jar]!));
      const then = predicted(jar => believedOptics(kindOf(ids[jar]!), found.jars[jar]!));
      const [before, after] = [colourDifference(first.lab, real), colourDifference(then.lab, real)];
      sums.before += before;
      sums.after += after;
      sums.heldBefore += before <= first.plusMinus ? 1 : 0;
      sums.heldAfter += after <= then.plusMinus ? 1 : 0;
      sums.statedBefore += first.plusMinus;
      sums.statedAfter += then.plusMinus;
      sums.count += 1;
    }
  }
  return sums;
}

describe('ten cured batches', () => {
  const sums = tried(1, 60);
  const mean = (value: number) => value / sums.count;

  test('bring the eleventh nearer by half at least', () => {
    expect(mean(sums.before)).toBeGreaterThan(4);
    expect(mean(sums.after)).toBeLessThan(mean(sums.before) / 2);
  });

  test('and what is stated holds the truth nine times in ten, before and after, a dusty jar in every fourth shelf', () => {
    expect(mean(sums.heldBefore)).toBeGreaterThanOrEqual(0.9);
    expect(mean(sums.heldAfter)).toBeGreaterThanOrEqual(0.9);
    // No holding everything by claiming nothing.
    expect(mean(sums.statedBefore)).toBeLessThan(16);
    expect(mean(sums.statedAfter)).toBeLessThan(mean(sums.statedBefore) / 2);
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
