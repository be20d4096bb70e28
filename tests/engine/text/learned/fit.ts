import { eachValue, type Features, type Model } from '../../../../src/engine/text/learned/model.ts';
import { minimise } from '../../hazards/emergencies/minimise.ts';
import { rarity } from './rarity.ts';

/**
 * A text's features and which class it is of, by number, or one of which it is; `weight` where it counts for more or less than one
 * text.
 */
export type Lesson = {
  readonly features: Features;
  readonly label: number | readonly number[];
  readonly weight?: number;
};

export type Fit = {
  readonly classes: number;
  /** How much the texts weigh against small weights: the inverse of the ridge penalty. */
  readonly trust: number;
  /** So many features are kept. */
  readonly most: number;
  /** Features in fewer texts are accidents of one writer: counted over all kinds of feature, or for each kind. */
  readonly least: number | readonly number[];
};

const ROUNDS = 60;
const SIFTING_ROUNDS = 15;

type Known = Pick<Model, 'rows' | 'idf'>;

/** In how many texts each feature stands, of one kind or of all. */
function holdingIn(lessons: readonly Lesson[], kind?: number): ReadonlyMap<number, number> {
  const holding = new Map<number, number>();
  for (const { features } of lessons)
    for (const { counts } of kind === undefined ? features : [features[kind]!])
      for (const hash of counts.keys()) holding.set(hash, (holding.get(hash) ?? 0) + 1);
  return holding;
}

function knownIn(lessons: readonly Lesson[], least: Fit['least']): Known {
  const counted =
    typeof least === 'number'
      ? [{ holding: holdingIn(lessons), least }]
      : least.map((one, kind) => ({ holding: holdingIn(lessons, kind), least: one }));
  const kept = counted.flatMap(one => [...one.holding].filter(([, texts]) => texts >= one.least));
  return {
    rows: new Map(kept.map(([hash], at) => [hash, at])),
    idf: Uint8Array.from(kept, ([, texts]) => rarity(texts, lessons.length)),
  };
}

/** Weights, row by row, and behind them the intercepts: minimum of the ridge-penalised cross-entropy. */
function descend(lessons: readonly Lesson[], known: Known, rounds: number, { classes, trust }: Fit) {
  const size = known.idf.length * classes;
  const texts = lessons.map(({ features, label, weight = 1 }) => {
    const rows: number[] = [];
    const values: number[] = [];
    eachValue(features, known, (row, value) => {
      rows.push(row * classes);
      values.push(value);
    });
    const right = typeof label === 'number' ? [label] : label;
    return { rows: Int32Array.from(rows), values: Float64Array.from(values), right, weight };
  });
  const odds = new Float64Array(classes);
  return minimise(new Float64Array(size + classes), rounds, (weights, slope) => {
    let loss = 0;
    for (let i = 0; i < size; i += 1) {
      slope[i] = weights[i]! / trust;
      loss += (weights[i]! * weights[i]!) / (2 * trust);
    }
    for (let c = 0; c < classes; c += 1) slope[size + c] = 0;
    for (const { rows, values, right, weight } of texts) {
      for (let c = 0; c < classes; c += 1) odds[c] = weights[size + c]!;
      addScores(odds, weights, rows, values);
      loss += weight * softmax(odds, right);
      const sum = right.reduce((all, c) => all + odds[c]!, 0);
      for (const c of right) odds[c]! -= odds[c]! / sum;
      for (let c = 0; c < classes; c += 1) odds[c]! *= weight;
      addSlope(slope, odds, rows, values);
      for (let c = 0; c < classes; c += 1) slope[size + c]! += odds[c]!;
    }
    return loss;
  });
}

/**
 * Adds what each feature says of each class. Four features at a time: the sums are the same to the last digit, and `odds`
 * is read and written a quarter as often, which takes a third less time.
 */
function addScores(odds: Float64Array, weights: Float64Array, rows: Int32Array, values: Float64Array): void {
  const classes = odds.length;
  let i = 0;
  for (; i + 3 < rows.length; i += 4) {
    const [a, b, c, d] = [rows[i]!, rows[i + 1]!, rows[i + 2]!, rows[i + 3]!];
    const [ofA, ofB, ofC, ofD] = [values[i]!, values[i + 1]!, values[i + 2]!, values[i + 3]!];
    for (let k = 0; k < classes; k += 1)
      odds[k] =
        odds[k]! +
        ofA * weights[a + k]! +
        ofB * weights[b + k]! +
        ofC * weights[c + k]! +
        ofD * weights[d + k]!;
  }
  for (; i < rows.length; i += 1)
    for (let k = 0, row = rows[i]!, value = values[i]!; k < classes; k += 1)
      odds[k]! += value * weights[row + k]!;
}

/** Adds to the slope of each feature's weights what this text pulls at them, four features at a time. */
function addSlope(slope: Float64Array, odds: Float64Array, rows: Int32Array, values: Float64Array): void {
  const classes = odds.length;
  let i = 0;
  for (; i + 3 < rows.length; i += 4) {
    const [a, b, c, d] = [rows[i]!, rows[i + 1]!, rows[i + 2]!, rows[i + 3]!];
    const [ofA, ofB, ofC, ofD] = [values[i]!, values[i + 1]!, values[i + 2]!, values[i + 3]!];
    for (let k = 0; k < classes; k += 1) {
      const pull = odds[k]!;
      slope[a + k]! += ofA * pull;
      slope[b + k]! += ofB * pull;
      slope[c + k]! += ofC * pull;
      slope[d + k]! += ofD * pull;
    }
  }
  for (; i < rows.length; i += 1)
    for (let k = 0, row = rows[i]!, value = values[i]!; k < classes; k += 1)
      slope[row + k]! += value * odds[k]!;
}

/** Scores into probabilities, in place; the cross-entropy of the right ones together. */
function softmax(scores: Float64Array, right: readonly number[]): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let c = 0; c < scores.length; c += 1) most = Math.max(most, scores[c]!);
  let sum = 0;
  for (let c = 0; c < scores.length; c += 1) {
    const one = Math.exp(scores[c]! - most);
    scores[c] = one;
    sum += one;
  }
  let told = 0;
  for (const c of right) told += scores[c]!;
  for (let c = 0; c < scores.length; c += 1) scores[c]! /= sum;
  return Math.log(sum) - Math.log(told);
}

/** The `most` features whose weights are farthest from alike, after a short fit. */
function sifted(lessons: readonly Lesson[], fit: Fit): Known {
  const known = knownIn(lessons, fit.least);
  const { classes } = fit;
  const weights = descend(lessons, known, SIFTING_ROUNDS, fit);
  const kept = [...known.rows]
    .map(([hash, row]) => ({
      hash,
      row,
      says: weights.subarray(row * classes, row * classes + classes).reduce((sum, one) => sum + one * one, 0),
    }))
    .toSorted((a, b) => b.says - a.says || a.hash - b.hash)
    .slice(0, fit.most)
    .toSorted((a, b) => a.hash - b.hash);
  return {
    rows: new Map(kept.map(({ hash }, at) => [hash, at])),
    idf: Uint8Array.from(kept, ({ row }) => known.idf[row]!),
  };
}

/** Learns from texts; the same texts give the same model. */
export function fitModel(lessons: readonly Lesson[], fit: Fit): Model {
  const { classes } = fit;
  const known = sifted(lessons, fit);
  const fitted = descend(lessons, known, ROUNDS, fit);
  const size = known.idf.length * classes;
  const steps = Array.from({ length: classes }, (_, c) => {
    let largest = 0;
    for (let i = c; i < size; i += classes) largest = Math.max(largest, Math.abs(fitted[i]!));
    return Number((largest / 127 || 1).toPrecision(6));
  });
  return {
    ...known,
    weights: Int8Array.from(fitted.subarray(0, size), (weight, i) =>
      Math.round(weight / steps[i % classes]!),
    ),
    steps,
    intercepts: [...fitted.subarray(size)].map(one => Number(one.toFixed(4))),
  };
}
