/** A square matrix row after row, symmetric: Fisher's information on as many unknowns, or weights on them. */
export type SquareMatrix = { readonly size: number; readonly values: Float64Array };

/** What observations tell: the sum of the outer products of their rows, each in units of its own error. */
export function informationOf(rows: readonly (readonly number[])[], size: number): SquareMatrix {
  const values = new Float64Array(size * size);
  for (const row of rows) {
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) values[i * size + j]! += row[i]! * row[j]!;
    }
  }
  return { size, values };
}

/** One matrix plus `times` another of the same size. */
export function plus({ size, values }: SquareMatrix, other: SquareMatrix, times = 1): SquareMatrix {
  return { size, values: values.map((value, at) => value + times * other.values[at]!) };
}

/** Lower triangle of Cholesky's root, undefined where the matrix is not positive definite. */
function choleskyRoot({ size, values }: SquareMatrix): Float64Array | undefined {
  const root = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = values[i * size + j]!;
      for (let k = 0; k < j; k++) sum -= root[i * size + k]! * root[j * size + k]!;
      if (i !== j) root[i * size + j] = sum / root[j * size + j]!;
      else if (sum > 0) root[i * size + i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return root;
}

/** Natural logarithm of the determinant; -Infinity where the matrix is not positive definite. */
export function logDeterminant(matrix: SquareMatrix): number {
  const root = choleskyRoot(matrix);
  if (!root) return Number.NEGATIVE_INFINITY;
  let sum = 0;
  for (let i = 0; i < matrix.size; i++) sum += 2 * Math.log(root[i * matrix.size + i]!);
  return sum;
}

/** The inverse, of information the covariance; undefined where the matrix is not positive definite. */
export function inverseOf(matrix: SquareMatrix): SquareMatrix | undefined {
  const { size } = matrix;
  const root = choleskyRoot(matrix);
  if (!root) return undefined;
  const unroot = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    unroot[i * size + i] = 1 / root[i * size + i]!;
    for (let j = 0; j < i; j++) {
      let sum = 0;
      for (let k = j; k < i; k++) sum -= root[i * size + k]! * unroot[k * size + j]!;
      unroot[i * size + j] = sum / root[i * size + i]!;
    }
  }
  const values = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = i; k < size; k++) sum += unroot[k * size + i]! * unroot[k * size + j]!;
      values[i * size + j] = sum;
      values[j * size + i] = sum;
    }
  }
  return { size, values };
}

/** Trace of the product of two symmetric matrices. */
export function traceOfProduct({ values }: SquareMatrix, other: SquareMatrix): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += values[at]! * other.values[at]!;
  return sum;
}

/** Product of two matrices of the same size. */
export function product({ size, values }: SquareMatrix, other: SquareMatrix): SquareMatrix {
  const made = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      let sum = 0;
      for (let k = 0; k < size; k++) sum += values[i * size + k]! * other.values[k * size + j]!;
      made[i * size + j] = sum;
    }
  }
  return { size, values: made };
}
