import { describe, expect, test } from 'vitest';
import { opticsOf } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { SubsetSolver } from '../../../src/engine/colour/matching/subset-solver.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import { colourDifference, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';

const base = plainBase('cream', false);
const jars = ['ultramarine-blue', 'red-iron-oxide', 'yellow-iron-oxide'].map(id =>
  opticsOf(colourantById(id)!),
);
const solverFor = (target: ReturnType<typeof barLab>) =>
  new SubsetSolver(
    jars.map(optics => ({ optics, gramsPerUnit: 1 })),
    base,
    target,
  );
const padded = (solver: SubsetSolver, ...members: readonly number[]) =>
  Array.from({ length: 4 }, (_, at) => members[at] ?? solver.kernel.nothing);

describe('what the linear problem promises of a subset', () => {
  test.each([0, 1, 2])('is next to nothing for a little of jar %i alone, by that jar', which => {
    const lab = barLab([{ optics: jars[which]!, grams: 0.003 }], base);
    const solver = solverFor(lab);
    const away = colourDifference(barLab([], base), lab);
    expect(away).toBeGreaterThan(0.2);
    expect(solver.start(padded(solver, which), 1)).toBeLessThan(away / 100);
    expect(solver.amounts[0]! / 0.003).toBeCloseTo(1, 1.5);
  });

  test('is far for a blue by a red alone, and nearer with the blue beside it', () => {
    const solver = solverFor(labOfHex('#3b4cae'));
    const alone = solver.start(padded(solver, 1), 1);
    expect(alone).toBeGreaterThan(5);
    expect(solver.start(padded(solver, 1, 0), 2)).toBeLessThan(alone / 2);
  });
});
