import { describe, expect, test } from 'vitest';
import { opticsOf } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { SubsetSolver } from '../../../../src/engine/colour/matching/subset-solver.ts';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { colourDifference, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';

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

describe('the amounts that come nearest', () => {
  const mixed = [
    { optics: jars[0]!, grams: 0.2 },
    { optics: jars[2]!, grams: 0.3 },
  ];
  const target = barLab(mixed, base);

  test('are those that the colour was made of', () => {
    const solver = solverFor(target);
    expect(solver.solve(padded(solver, 0, 2), 2)).toBeLessThan(0.05);
    expect(solver.amounts[0]).toBeCloseTo(0.2, 2);
    expect(solver.amounts[1]).toBeCloseTo(0.3, 2);
    expect([...solver.amounts.subarray(2)]).toEqual([0, 0]);
  });

  test('fill all that fits, and no more, where that is too little', () => {
    const far = solverFor(
      barLab(
        mixed.map(part => ({ ...part, grams: 8 * part.grams })),
        base,
      ),
    );
    expect(far.solve(padded(far, 0, 2), 2)).toBeGreaterThan(1);
    const sum = far.amounts.reduce((all, one) => all + one, 0);
    expect(sum).toBeGreaterThan(1 - 1e-6);
    expect(sum).toBeLessThan(1 + 1e-6);
  });

  test('leave one where it is that is held, and give it up once the limit is out of reach', () => {
    const solver = solverFor(target);
    solver.solve(padded(solver, 0, 2), 2);
    solver.amounts[0] = 0.05;
    const held = solver.refine(padded(solver, 0, 2), 2, { held: 0 });
    expect(solver.amounts[0]).toBe(0.05);
    expect(held).toBeGreaterThan(1);
    // No step is taken towards what promises to stay above the limit.
    solver.start(padded(solver, 1), 1);
    const begun = [...solver.amounts];
    const alone = solver.refine(padded(solver, 1), 1, { limit: 0.1 });
    expect(alone).toBeGreaterThan(0.1);
    expect([...solver.amounts]).toEqual(begun);
  });

  test('each step is nearer, and a step that is not taken changes nothing', () => {
    const solver = solverFor(target);
    const by = [0, 1, 2, 8].map(steps => solver.solve(padded(solver, 0, 2), 2, { steps }));
    expect(by).toEqual(by.toSorted((a, b) => b - a));
    expect(by[0]).toBeGreaterThan(by[3]! + 0.1);
    // What is left is the difference at the amounts found, in the metric about the target: about CIEDE2000.
    solver.solve(padded(solver, 0, 2), 2, { steps: 0 });
    const there = barLab(
      [0, 1].map(at => ({ optics: jars[2 * at]!, grams: solver.amounts[at]! })),
      base,
    );
    const said = Math.hypot(...solver.residual);
    expect(said).toBeCloseTo(by[0]!, 9);
    expect(said / colourDifference(there, target)).toBeGreaterThan(0.7);
    expect(said / colourDifference(there, target)).toBeLessThan(1.4);
  });
});
