import { fc, test } from '@fast-check/vitest';
import { Matrix, solve } from 'ml-matrix';
import { expect } from 'vitest';
import { solveBordered } from './bordered-cholesky.ts';

test.prop([
  fc.integer({ min: 1, max: 4 }),
  fc.integer({ min: 0, max: 3 }),
  fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
])('a bordered banded system is solved as the full matrix is', (reach, outsiders, stream) => {
  const next = () => stream.next().value as number;
  const size = 9;
  const full = Matrix.zeros(size + outsiders, size + outsiders);
  for (let row = 0; row < size + outsiders; row++) {
    for (let column = 0; column < row; column++) {
      const known = row < size ? row - column <= reach : column < size;
      if (!known) continue;
      const value = next();
      full.set(row, column, value);
      full.set(column, row, value);
    }
    full.set(row, row, 20);
  }
  const right = Array.from({ length: size + outsiders }, next);
  const band = new Float64Array(size * (reach + 1));
  for (let row = 0; row < size; row++) {
    for (let back = 0; back <= Math.min(reach, row); back++) {
      band[row * (reach + 1) + reach - back] = full.get(row, row - back);
    }
  }
  const border = Float64Array.from({ length: size * outsiders }, (_, at) =>
    full.get(at % size, size + Math.floor(at / size)),
  );
  const found = solveBordered({
    band,
    reach,
    border,
    corner: new Float64Array(outsiders).fill(20),
    right: Float64Array.from(right.slice(0, size)),
    cornerRight: Float64Array.from(right.slice(size)),
  });
  const expected = solve(full, Matrix.columnVector(right)).to1DArray();
  [...(found?.inner ?? []), ...(found?.outer ?? [])].forEach((value, at) => {
    expect(value).toBeCloseTo(expected[at] ?? Number.NaN, 9);
  });
});

test('a matrix that is not positive definite is told', () => {
  const found = solveBordered({
    band: Float64Array.of(-1),
    reach: 0,
    border: new Float64Array(0),
    corner: new Float64Array(0),
    right: Float64Array.of(1),
    cornerRight: new Float64Array(0),
  });
  expect(found).toBeUndefined();
});
