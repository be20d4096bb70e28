import {
  inverseOf,
  logDeterminant,
  product,
  type SquareMatrix,
  traceOfProduct,
} from './information-matrix.ts';

/**
 * What a design is judged by. `D`: the greatest determinant of the information. `A`: the least weighted trace of its
 * inverse; with the identity as weights that is the A-criterion, with other weights the linear criterion of A. C. Atkinson,
 * A. N. Donev and R. D. Tobias, Optimum Experimental Designs, with SAS (2007), chapter 10.
 */
export type Criterion = { readonly by: 'D' } | { readonly by: 'A'; readonly weights: SquareMatrix };

/** What a run tells: a row for each number read off it, by column of the unknowns; columns left out are 0. */
export type Run = readonly {
  readonly columns: readonly number[];
  readonly values: readonly number[];
}[];

/** A run from rows that name every column. */
export const runOf = (rows: readonly (readonly number[])[]): Run =>
  rows.map(row => {
    const columns = row.flatMap((value, at) => (value === 0 ? [] : [at]));
    return { columns, values: columns.map(at => row[at]!) };
  });

/** The loss of a design with one more run, without working out its information anew. */
export type LossWith = (run: Run) => number;

/**
 * Prepares {@link LossWith} for what is known so far, by the matrix determinant lemma and Woodbury's identity: a run of r rows
 * costs a determinant or an inverse of r by r. Undefined where something is wholly unknown yet.
 */
export function lossWith(information: SquareMatrix, criterion: Criterion): LossWith | undefined {
  const covariance = inverseOf(information);
  if (!covariance) return undefined;
  if (criterion.by === 'D') {
    const now = -logDeterminant(information);
    return run => now - logDeterminant(onePlus(spread(run, covariance)));
  }
  const now = traceOfProduct(criterion.weights, covariance);
  const weighted = product(product(covariance, criterion.weights), covariance);
  return run => now - traceOfProduct(inverseOf(onePlus(spread(run, covariance)))!, spread(run, weighted));
}

/** R M R' of a run's rows R and a symmetric matrix M. */
function spread(run: Run, { size, values }: SquareMatrix): SquareMatrix {
  const made = new Float64Array(run.length * run.length);
  run.forEach((one, i) => {
    for (let j = 0; j <= i; j++) {
      const other = run[j]!;
      let sum = 0;
      for (let a = 0; a < one.columns.length; a++) {
        const from = one.columns[a]! * size;
        for (let b = 0; b < other.columns.length; b++) {
          sum += one.values[a]! * other.values[b]! * values[from + other.columns[b]!]!;
        }
      }
      made[i * run.length + j] = sum;
      made[j * run.length + i] = sum;
    }
  });
  return { size: run.length, values: made };
}

function onePlus({ size, values }: SquareMatrix): SquareMatrix {
  const made = Float64Array.from(values);
  for (let at = 0; at < size; at++) made[at * size + at]! += 1;
  return { size, values: made };
}
