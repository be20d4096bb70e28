import { describe, expect, test } from 'vitest';
import { darkened, darkerBy } from '../../../../src/engine/colour/calibration/darker-base.ts';
import { dustOf, greyShare, jarOptics } from '../../../../src/engine/colour/calibration/joint/jar-model.ts';
import {
  axisSpread,
  carried,
  isotropic,
  NOTHING,
  plus,
  statedRadius,
} from '../../../../src/engine/colour/calibration/joint/stated-error.ts';
import { opticsOf } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { type ComparedJar, compareJars } from '../../../../src/engine/colour/jars/compare-jars.ts';
import { SubsetSolver } from '../../../../src/engine/colour/matching/subset-solver.ts';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import type { MixPart } from '../../../../src/engine/colour/mixing/optics.ts';
import { colourDifference, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';
import { candidates } from '../shelves.ts';

const cream = plainBase('cream', false);
const optics = (id: string) => opticsOf(colourantById(id)!);
const part = (id: string, grams: number): MixPart => ({ optics: optics(id), grams });

describe('a stated error', () => {
  // Chi-square with three degrees: 6.2514 holds nine in ten (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
  test('of three equal axes holds nine in ten', () => {
    expect(statedRadius(isotropic(1))).toBeCloseTo(Math.sqrt(6.2514), 1);
    expect(statedRadius(isotropic(4))).toBeCloseTo(2 * statedRadius(isotropic(1)), 9);
    expect(statedRadius(isotropic(axisSpread(5) ** 2))).toBeCloseTo(5, 9);
  });
  // One axis alone: 1.645 standard deviations either way.
  test('of one axis is the two-sided quantile, about', () => {
    expect(
      statedRadius([
        [1, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ]),
    ).toBeCloseTo(1.645, 1);
  });
  test('of a shift far beyond its spread is the shift and 1.28 of the spread along it', () => {
    expect(statedRadius(NOTHING, [3, 4, 0])).toBe(5);
    expect(statedRadius(isotropic(0.01), [10, 0, 0])).toBeCloseTo(10 + 1.28 * 0.1, 1);
    expect(statedRadius(plus(isotropic(1), isotropic(3)))).toBeCloseTo(statedRadius(isotropic(4)), 12);
  });
  test('is carried through what is linear as it is', () => {
    // Two parameters that move L* by 2 and 3 of theirs.
    const lab = ([one = 0, other = 0]: readonly number[]) => ({
      l: 50 + 0.02 * one + 0.03 * other,
      a: 0,
      b: 0,
    });
    const { covariance, shift } = carried(
      lab,
      [0, 0],
      [
        [1, 0.5],
        [0.5, 1],
      ],
    );
    const unit = colourDifference({ l: 50.01, a: 0, b: 0 }, { l: 50, a: 0, b: 0 }) / 0.01;
    // Var(2x + 3y) = 4 + 9 + 2 * 2 * 3 * 0.5.
    expect(covariance[0][0]).toBeCloseTo((4 + 9 + 6) * 1e-4 * unit ** 2, 6);
    expect(shift).toEqual([0, 0, 0]);
    const far = carried(
      lab,
      [0, 0],
      [
        [0, 0],
        [0, 0],
      ],
      { l: 48, a: 0, b: 0 },
    );
    expect(far.covariance).toEqual(NOTHING);
    expect(Math.hypot(...far.shift)).toBeCloseTo(
      colourDifference({ l: 50, a: 0, b: 0 }, { l: 48, a: 0, b: 0 }),
      9,
    );
  });
});

describe('a jar of a kind', () => {
  const kind = optics('ultramarine-blue');
  test('is as its kind where nothing differs', () => {
    const same = jarOptics(kind, [0, 0, 0, 0]);
    expect([...same.k]).toEqual([...kind.k]);
    expect([...same.s]).toEqual([...kind.s]);
  });
  test('twice as strong, half as covering, and a band along', () => {
    const strong = jarOptics(kind, [Math.log(2), Math.log(0.5), 0, 0]);
    expect(strong.k[20]).toBeCloseTo(2 * kind.k[20]!, 12);
    expect(strong.s[20]).toBeCloseTo(kind.s[20]! / 2, 12);
    const along = jarOptics(kind, [0, 0, 1, 0]);
    expect(along.k[20]).toBeCloseTo(kind.k[19]!, 12);
    expect(along.k[0]).toBeCloseTo(kind.k[0]!, 12);
    expect(jarOptics(kind, [0, 0, 0.5, 0]).k[20]).toBeCloseTo((kind.k[19]! + kind.k[20]!) / 2, 12);
  });
  test('with dirt in it is greyer in every band by the same', () => {
    expect(greyShare(0)).toBe(0);
    for (const grey of [0.05, 0.5, 2]) expect(greyShare(dustOf(grey))).toBeCloseTo(grey, 12);
    const dusty = jarOptics(kind, [0, 0, 0, 1]);
    const grey = dusty.k[5]! - kind.k[5]!;
    expect(grey).toBeGreaterThan(0);
    for (const band of [0, 15, 35]) expect(dusty.k[band]! - kind.k[band]!).toBeCloseTo(grey, 12);
  });
  test('two whites are held side by side by what they scatter, a white and a colour by what is seen', () => {
    const compared = (id: string): ComparedJar => {
      const [one] = candidates(id);
      return {
        jar: { colourant: id },
        gramsPerTeaspoon: one!.gramsPerTeaspoon,
        fullTspPerCup: colourantById(id)!.dose.fullTspPerCup,
        ceilingTspPerCup: one!.ceilingTspPerCup,
        white: one!.white,
      };
    };
    const whites = compareJars(compared('titanium-dioxide'), compared('zinc-oxide'));
    // S of titania and zinc oxide as measured: the grams that scatter alike.
    const s = (id: string) => optics(id).s[20]!;
    const scattered = s('titanium-dioxide') / s('zinc-oxide');
    expect(whites.grams[1] / whites.grams[0] / scattered).toBeGreaterThan(0.85);
    expect(whites.grams[1] / whites.grams[0] / scattered).toBeLessThan(1.15);
  });
});

describe('the linear start of a match', () => {
  const at = (l: number, a: number, b: number) => {
    const plain = barLab([], cream);
    return { l: plain.l + l, a: plain.a + a, b: plain.b + b };
  };
  const solverFor = (target: ReturnType<typeof at>) =>
    new SubsetSolver([{ optics: optics('ultramarine-blue'), gramsPerUnit: 1 }], cream, target);
  test.each([
    [-1, 0, 0],
    [0, 1, 0],
    [0, -1, 0],
    [0, 0, 1],
    [0, 0, -1],
  ] as const)('promises of the plain base how far it is off: %s %s %s', (l, a, b) => {
    const target = at(l, a, b);
    const solver = solverFor(target);
    const none = solver.kernel.nothing;
    const promised = solver.start([none, none, none, none], 0);
    expect(promised / colourDifference(barLab([], cream), target)).toBeGreaterThan(0.85);
    expect(promised / colourDifference(barLab([], cream), target)).toBeLessThan(1.15);
  });
  test('finds about the dose that made a colour, and the solution finds it exactly', () => {
    const target = barLab([part('ultramarine-blue', 0.03)], cream);
    const solver = solverFor(target);
    const none = solver.kernel.nothing;
    solver.start([0, none, none, none], 1);
    expect(solver.amounts[0]! / 0.03).toBeGreaterThan(0.8);
    expect(solver.amounts[0]! / 0.03).toBeLessThan(1.2);
    expect(solver.solve([0, none, none, none], 1)).toBeLessThan(0.05);
    expect(solver.amounts[0]).toBeCloseTo(0.03, 3);
  });
});

test('soap that came out darker is darker by about what makes its plain bar', () => {
  const foundDarker = (bars: Parameters<typeof darkerBy>[1]) => darkerBy(cream, bars);
  expect(foundDarker([])).toBe(0);
  for (const factor of [0.5, 1, 2]) {
    const lab = barLab([], darkened(cream, Math.log(factor)));
    expect(Math.exp(foundDarker([{ grams: 0, lab, plusMinus: 0.3 }]))).toBeCloseTo(factor, 0);
  }
  // Bars with colour in them say nothing of it.
  expect(foundDarker([{ grams: 1, lab: labOfHex('#222222'), plusMinus: 1 }])).toBe(0);
});
