import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** What is believed before: a normal distribution by its mean and precision (the inverse of its covariance). */
export type NormalPrior = { readonly mean: readonly number[]; readonly precision: Matrix };

/** One observation: how far off it is at the parameters, each number in units of its standard error. */
export type Residual = (parameters: readonly number[]) => readonly number[];

export type RobustUpdate = {
  /** Where the posterior is highest. */
  readonly mean: readonly number[];
  /** Its covariance there (Laplace's approximation, with the weights as they are). */
  readonly covariance: Matrix;
  /** What the observations alone say: their information, without the prior. */
  readonly information: Matrix;
  /** How much each observation counted, 0 to 1: an outlier counts little. */
  readonly weights: readonly number[];
};

const MOST_STEPS = 60;
const NUDGE = 1e-4;

/**
 * Updates a belief by observations with the pseudo-Huber loss 2 d^2 (sqrt(1 + |r|^2 / d^2) - 1) on the length of each
 * residual: squares for what fits, distances for what does not, so one bad observation moves little. Made least by
 * Levenberg and Marquardt's steps on reweighted squares. With `outlier` without end it is Bayes' rule for normal errors.
 * @param outlier residual, in standard errors, beyond which an observation counts less and less
 * Source: P. Charbonnier et al., IEEE Trans. Image Processing 6 (1997) 298-311 (the loss and its half-quadratic weights).
 */
export function robustUpdate(
  prior: NormalPrior,
  observations: readonly Residual[],
  outlier: number,
): RobustUpdate {
  const size = prior.mean.length;
  let mean = [...prior.mean];
  let now = costOf(mean);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { information, gradient } = linearised(mean);
    const hessian = Matrix.add(information, prior.precision);
    const damped = hessian.clone();
    for (let at = 0; at < size; at += 1) damped.set(at, at, hessian.get(at, at) * (1 + damping));
    const move = new CholeskyDecomposition(damped).solve(Matrix.columnVector(gradient));
    const next = mean.map((value, at) => value - move.get(at, 0));
    const tried = costOf(next);
    if (tried < now) {
      const settled = now - tried < 1e-10 * Math.max(now, 1e-6);
      [mean, now] = [next, tried];
      damping /= 5;
      if (settled) break;
    } else if (damping > 1e8) break;
    else damping *= 6;
  }
  const { information, weights } = linearised(mean);
  const hessian = Matrix.add(information, prior.precision);
  return {
    mean,
    covariance: new CholeskyDecomposition(hessian).solve(Matrix.eye(size)),
    information,
    weights,
  };

  function costOf(parameters: readonly number[]): number {
    const off = offsetOf(parameters);
    const ofPrior = dot(off, timesVector(prior.precision, off));
    return observations.reduce((sum, observe) => {
      const r = observe(parameters);
      return sum + lossOf(dot(r, r), outlier);
    }, ofPrior);
  }

  function offsetOf(parameters: readonly number[]): number[] {
    return parameters.map((value, at) => value - prior.mean[at]!);
  }

  function linearised(parameters: readonly number[]) {
    const information = Matrix.zeros(size, size);
    const gradient = timesVector(prior.precision, offsetOf(parameters));
    const weights = observations.map(observe => {
      const r = observe(parameters);
      const weight = weightOf(dot(r, r), outlier);
      const slopes = parameters.map((value, at) => {
        const moved = observe(parameters.with(at, value + NUDGE));
        return moved.map((one, row) => (one - r[row]!) / NUDGE);
      });
      slopes.forEach((column, at) => {
        gradient[at] = gradient[at]! + weight * dot(column, r);
        if (column.every(one => one === 0)) return;
        slopes.forEach((other, to) => {
          information.set(at, to, information.get(at, to) + weight * dot(column, other));
        });
      });
      return weight;
    });
    return { information, gradient, weights };
  }
}

/** The loss of a squared length; twice the half-square for small ones, so that it adds to the prior's square. */
function lossOf(squared: number, outlier: number): number {
  if (outlier === Number.POSITIVE_INFINITY) return squared;
  return 2 * outlier ** 2 * (Math.sqrt(1 + squared / outlier ** 2) - 1);
}

const weightOf = (squared: number, outlier: number): number =>
  outlier === Number.POSITIVE_INFINITY ? 1 : 1 / Math.sqrt(1 + squared / outlier ** 2);

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, at) => sum + value * other[at]!, 0);

const timesVector = (matrix: Matrix, vector: readonly number[]): number[] =>
  vector.map((_, row) => dot(matrix.getRow(row), vector));
