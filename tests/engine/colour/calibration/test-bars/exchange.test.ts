import { describe, expect, test } from 'vitest';
import {
  AS_ITS_KIND,
  independent,
  USUAL_SPREAD,
} from '../../../../../src/engine/colour/calibration/joint/jar-parameters.ts';
import {
  knownInformation,
  sensitivityOf,
} from '../../../../../src/engine/colour/calibration/test-bars/bar-information.ts';
import { exchangeDesign, lossOf } from '../../../../../src/engine/colour/calibration/test-bars/exchange.ts';
import {
  informationOf,
  inverseOf,
  logDeterminant,
  plus,
  type SquareMatrix,
} from '../../../../../src/engine/colour/calibration/test-bars/information-matrix.ts';
import { opticsOf } from '../../../../../src/engine/colour/jars/colourant-optics.ts';
import { plainBase } from '../../../../../src/engine/colour/mixing/base-soap.ts';
import { colourantById } from '../../../../../src/engine/colourants/catalogue.ts';

/** `values` on the diagonal. */
function diagonal(values: readonly number[]): SquareMatrix {
  const size = values.length;
  const made = new Float64Array(size * size);
  values.forEach((value, at) => {
    made[at * size + at] = value;
  });
  return { size, values: made };
}
const nothing = (size: number) => diagonal(new Array<number>(size).fill(1e-9));
/** Every row of so many entries, each one of `values`. */
const rowsOf = (size: number, values: readonly number[]): number[][] =>
  size === 0 ? [[]] : rowsOf(size - 1, values).flatMap(row => values.map(value => [...row, value]));
const single = (rows: readonly number[][]) => rows.map(row => [row]);

/** Determinant of the square design itself, from that of its information. */
const determinant = (loss: number) => Math.round(Math.exp(-loss / 2));

describe('exchange finds published optimal designs', () => {
  // Greatest determinants of n by n matrices of 0 and 1, OEIS A003432 (spring balance) and of -1 and 1, OEIS A003433
  // (chemical balance; at 4 and 8 Hadamard's bound n^(n/2)): H. Hotelling, Ann. Math. Statist. 15 (1944) 297-306.
  test.each([
    [2, 1],
    [3, 2],
    [4, 3],
    [5, 5],
    [6, 9],
    [7, 32],
  ])('weighing %i things on a spring balance', (size, most) => {
    const candidates = single(rowsOf(size, [0, 1]).slice(1));
    const design = exchangeDesign({
      candidates,
      prior: nothing(size),
      runs: size,
      criterion: { by: 'D' },
      starts: 40,
    });
    expect(determinant(design.loss)).toBe(most);
  });

  test.each([
    [3, 4],
    [4, 16],
    [5, 48],
    [6, 160],
  ])('weighing %i things on a balance with two pans', (size, most) => {
    const candidates = single(rowsOf(size, [-1, 1]));
    const design = exchangeDesign({
      candidates,
      prior: nothing(size),
      runs: size,
      criterion: { by: 'D' },
      starts: 40,
    });
    expect(determinant(design.loss)).toBe(most);
  });

  // A-optimal: Hadamard matrices on a balance with two pans, trace of the inverse 1 whatever their order (H. Hotelling, as above;
  // C.-S. Cheng, Ann. Statist. 8 (1980) 436-446); S-matrices on a spring balance, trace 4 n^2 / (n + 1)^2 (M. Jacroux and W. Notz,
  // Ann. Statist. 11 (1983) 970-978; N. J. A. Sloane and M. Harwit, Applied Optics 15 (1976) 107-114).
  test.each([
    ['two pans', 4, [-1, 1], 1],
    ['two pans', 8, [-1, 1], 1],
    ['a spring balance', 3, [0, 1], (4 * 9) / 16],
    ['a spring balance', 7, [0, 1], (4 * 49) / 64],
  ] as const)('weighing on %s, %i things, by the A-criterion', (_, size, values, trace) => {
    const rows = rowsOf(size, values).filter(row => row.some(value => value !== 0));
    const weights = diagonal(new Array<number>(size).fill(1));
    const design = exchangeDesign({
      candidates: single(rows),
      prior: nothing(size),
      runs: size,
      criterion: { by: 'A', weights },
      repeats: size,
      starts: 40,
    });
    expect(design.loss).toBeCloseTo(trace, 6);
  });

  // H. Scheffé, J. R. Statist. Soc. B 20 (1958) 344-360; J. Kiefer, Ann. Math. Statist. 32 (1961) 298-325: for the quadratic
  // mixture model the D-optimal design puts equal weight on the {q,2} simplex lattice.
  test.each([
    [3, 6],
    [4, 10],
  ])('a quadratic mixture of %i parts is best tried on the {q,2} simplex lattice', (parts, points) => {
    const lattice = rowsOf(parts, [0, 1, 2, 3, 4]).filter(row => row.reduce((a, b) => a + b, 0) === 4);
    const scheffe = lattice.map(row => {
      const x = row.map(value => value / 4);
      return [...x, ...x.flatMap((one, at) => x.slice(at + 1).map(other => one * other))];
    });
    const design = exchangeDesign({
      candidates: single(scheffe),
      prior: nothing(points),
      runs: points,
      criterion: { by: 'D' },
    });
    expect(design.chosen.map(at => lattice[at]!.every(value => value % 2 === 0))).toEqual(
      new Array(points).fill(true),
    );
    // The same weight on each: twice the runs take each point twice.
    const twice = exchangeDesign({
      candidates: single(scheffe),
      prior: nothing(points),
      runs: 2 * points,
      criterion: { by: 'D' },
      repeats: 4,
    });
    expect(twice.chosen).toEqual(design.chosen.flatMap(at => [at, at]));
  });
});

describe('exchange against every choice there is', () => {
  const size = 4;
  /** Invented runs of two observations each, spread without any pattern. */
  const candidates = Array.from({ length: 11 }, (_, at) =>
    [0, 1].map(row => Array.from({ length: size }, (__, k) => Math.sin(7.3 * at + 3.1 * row + 1.7 * k * k))),
  );
  const weights = informationOf(
    [
      [1, 0.4, 0, 0.2],
      [0, 1, 0.5, 0],
    ],
    size,
  );
  const prior = diagonal([0.3, 0.1, 0.4, 0.2]);
  const choices = (from: number, left: number): number[][] =>
    left === 0
      ? [[]]
      : Array.from({ length: candidates.length - from }, (_, step) => from + step).flatMap(at =>
          choices(at + 1, left - 1).map(rest => [at, ...rest]),
        );

  test.each([
    ['D', 2],
    ['D', 4],
    ['A', 2],
    ['A', 3],
    ['A', 5],
  ] as const)('%s-criterion, %i runs of 11', (by, runs) => {
    const criterion = by === 'D' ? { by } : { by, weights };
    const losses = choices(0, runs).map(chosen =>
      lossOf(
        chosen.reduce((sum, at) => plus(sum, informationOf(candidates[at]!, size)), prior),
        criterion,
      ),
    );
    const found = exchangeDesign({ candidates, prior, runs, criterion });
    expect(found.loss).toBeCloseTo(Math.min(...losses), 9);
    expect(new Set(found.chosen).size).toBe(runs);
  });

  test.each([2, 3])(
    '%i real bars of two jars, mixes among them, as good as the best of all choices',
    runs => {
      const kinds = ['ultramarine-blue', 'red-iron-oxide'].map(id => opticsOf(colourantById(id)!));
      const jars = kinds.map(kind => ({
        kind,
        belief: { parameters: AS_ITS_KIND, covariance: independent(USUAL_SPREAD) },
      }));
      const doses = kinds.map(({ full }) => [full / 8, full / 2, full]);
      const mixes = [
        ...doses.flatMap((list, jar) => list.map(grams => [{ jar, grams }])),
        ...doses[0]!.flatMap(blue =>
          doses[1]!.map(red => [
            { jar: 0, grams: blue / 2 },
            { jar: 1, grams: red / 2 },
          ]),
        ),
      ];
      const base = plainBase('cream', false);
      const bars = mixes.map(mix => sensitivityOf(mix, jars, { base, error: 1.6 }));
      const full = kinds
        .map((kind, jar) =>
          informationOf(sensitivityOf([{ jar, grams: kind.full }], jars, { base, error: 1 }), 8),
        )
        .reduce((sum, one) => plus(sum, one));
      const known = knownInformation(jars);
      const choose = (from: number, left: number): number[][] =>
        left === 0
          ? [[]]
          : mixes.flatMap((_, at) => (at < from ? [] : choose(at + 1, left - 1).map(rest => [at, ...rest])));
      for (const criterion of [{ by: 'D' } as const, { by: 'A', weights: full } as const]) {
        const losses = choose(0, runs).map(chosen =>
          lossOf(
            chosen.reduce((sum, at) => plus(sum, informationOf(bars[at]!, 8)), known),
            criterion,
          ),
        );
        const found = exchangeDesign({ candidates: bars, prior: known, runs, criterion });
        expect(found.loss).toBeCloseTo(Math.min(...losses), 8);
      }
    },
  );

  test('what leaves something unknown has no determinant to speak of, and no inverse', () => {
    const once = informationOf([[1, 2]], 2);
    expect(logDeterminant(once)).toBe(Number.NEGATIVE_INFINITY);
    expect(inverseOf(once)).toBeUndefined();
    expect(logDeterminant(diagonal([2, 8]))).toBeCloseTo(Math.log(16), 12);
  });

  test('an inverse times its matrix is one', () => {
    const matrix = plus(prior, informationOf(candidates[3]!, size));
    const inverse = inverseOf(matrix)!;
    const product = ({ values: a }: SquareMatrix, { values: b }: SquareMatrix, i: number, j: number) =>
      [0, 1, 2, 3].reduce((sum, k) => sum + a[i * size + k]! * b[k * size + j]!, 0);
    for (const i of [0, 1, 2, 3])
      for (const j of [0, 1, 2, 3]) expect(product(matrix, inverse, i, j)).toBeCloseTo(i === j ? 1 : 0, 10);
  });
});
