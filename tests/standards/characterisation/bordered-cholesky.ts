/**
 * A symmetric positive definite system whose unknowns stand in a row and know only near neighbours,
 * plus a few outsiders (the border) that know everyone but not one another:
 *
 *     | A  B | |x|   |f|        A: banded, lower half stored row by row
 *     | B' D | |y| = |g|        D: diagonal
 *
 * Solved exactly by eliminating A first (block Cholesky), at the cost of the band, not of the square.
 */
export type BorderedSystem = {
  /** Rows of A: entry `row * (reach + 1) + reach` is the diagonal, the ones before it lie to its left. */
  readonly band: Float64Array;
  /** How many neighbours to the left a row may know. */
  readonly reach: number;
  /** Columns of B one after the other, each as long as A. */
  readonly border: Float64Array;
  readonly corner: Float64Array;
  readonly right: Float64Array;
  readonly cornerRight: Float64Array;
};

export type BorderedSolution = { readonly inner: Float64Array; readonly outer: Float64Array };

/** Factors a banded matrix in place into its lower Cholesky factor; false when it is not positive definite. */
function factor(band: Float64Array, reach: number): boolean {
  const width = reach + 1;
  const rows = band.length / width;
  for (let row = 0; row < rows; row++) {
    const rowAt = row * width + reach - row;
    for (let column = Math.max(0, row - reach); column <= row; column++) {
      const columnAt = column * width + reach - column;
      let sum = band[rowAt + column]!;
      for (let k = Math.max(0, row - reach); k < column; k++) {
        sum -= band[rowAt + k]! * band[columnAt + k]!;
      }
      if (column < row) band[rowAt + column] = sum / band[columnAt + column]!;
      else if (sum <= 0) return false;
      else band[rowAt + row] = Math.sqrt(sum);
    }
  }
  return true;
}

/** Solves L z = right in place. */
function forward(band: Float64Array, reach: number, right: Float64Array): void {
  const width = reach + 1;
  for (let row = 0; row < right.length; row++) {
    const rowAt = row * width + reach - row;
    let sum = right[row]!;
    for (let k = Math.max(0, row - reach); k < row; k++) {
      sum -= band[rowAt + k]! * right[k]!;
    }
    right[row] = sum / band[rowAt + row]!;
  }
}

/** Solves L' x = right in place. */
function backward(band: Float64Array, reach: number, right: Float64Array): void {
  const width = reach + 1;
  for (let row = right.length - 1; row >= 0; row--) {
    const rowAt = row * width + reach - row;
    const value = right[row]! / band[rowAt + row]!;
    right[row] = value;
    for (let k = Math.max(0, row - reach); k < row; k++) {
      right[k] = right[k]! - band[rowAt + k]! * value;
    }
  }
}

function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += one[i]! * other[i]!;
  return sum;
}

/** Solves the system (its arrays are used up), or undefined when it is not positive definite. */
export function solveBordered(system: BorderedSystem): BorderedSolution | undefined {
  const { band, reach, border, corner, right, cornerRight } = system;
  const size = right.length;
  const outsiders = corner.length;
  if (!factor(band, reach)) return undefined;
  forward(band, reach, right);
  const columns = Array.from({ length: outsiders }, (_, j) => border.subarray(j * size, (j + 1) * size));
  for (const column of columns) forward(band, reach, column);
  const schur = new Float64Array(outsiders * outsiders);
  columns.forEach((column, i) => {
    for (let j = 0; j <= i; j++) {
      const left = columns[j] as Float64Array;
      schur[i * outsiders + outsiders - 1 - i + j] = (i === j ? corner[i]! : 0) - dot(column, left);
    }
    cornerRight[i] = cornerRight[i]! - dot(column, right);
  });
  if (!factor(schur, outsiders - 1)) return undefined;
  forward(schur, outsiders - 1, cornerRight);
  backward(schur, outsiders - 1, cornerRight);
  columns.forEach((column, j) => {
    const value = cornerRight[j]!;
    for (let i = 0; i < size; i++) right[i] = right[i]! - column[i]! * value;
  });
  backward(band, reach, right);
  return { inner: right, outer: cornerRight };
}
