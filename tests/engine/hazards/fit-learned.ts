import type { Features } from '../../../src/engine/hazards/emergencies/learned/features.ts';
import {
  type Class,
  eachValue,
  type Model,
  rarity,
} from '../../../src/engine/hazards/emergencies/learned/model.ts';
import { CLASSES } from '../../../src/engine/hazards/emergencies/learned/weights.ts';
import { minimise } from './minimise.ts';

export type Lesson = { readonly features: Features; readonly label: Class };

/** How much the texts weigh against small weights: the inverse of the ridge penalty. */
const TRUST = 20;
const ROUNDS = 60;
const SIFTING_ROUNDS = 15;
/** A word, a run of letters or an idea in fewer texts is an accident of one writer. */
const LEAST = { words: 2, pieces: 3, ideas: 2 } as const;

type Known = Pick<Model, 'rows' | 'idf'>;

function knownIn(lessons: readonly Lesson[]): Known {
  const hashes: number[] = [];
  const idf: number[] = [];
  for (const kind of ['words', 'pieces', 'ideas'] as const) {
    const holding = new Map<number, number>();
    for (const { features } of lessons)
      for (const hash of features[kind].keys()) holding.set(hash, (holding.get(hash) ?? 0) + 1);
    for (const [hash, texts] of holding)
      if (texts >= LEAST[kind]) {
        hashes.push(hash);
        idf.push(rarity(texts, lessons.length));
      }
  }
  return { rows: new Map(hashes.map((hash, at) => [hash, at])), idf: Uint8Array.from(idf) };
}

/** Weights, row by row, and behind them the intercepts: minimum of the ridge-penalised cross-entropy. */
function descend(lessons: readonly Lesson[], known: Known, rounds: number): Float64Array {
  const width = CLASSES.length;
  const size = known.idf.length * width;
  const texts = lessons.map(({ features, label }) => {
    const rows: number[] = [];
    const values: number[] = [];
    eachValue(features, known, (row, value) => {
      rows.push(row * width);
      values.push(value);
    });
    return { rows: Int32Array.from(rows), values: Float64Array.from(values), right: CLASSES.indexOf(label) };
  });
  const odds = new Float64Array(width);
  return minimise(new Float64Array(size + width), rounds, (weights, slope) => {
    let loss = 0;
    for (let i = 0; i < size; i += 1) {
      slope[i] = weights[i]! / TRUST;
      loss += (weights[i]! * weights[i]!) / (2 * TRUST);
    }
    for (let c = 0; c < width; c += 1) slope[size + c] = 0;
    for (const { rows, values, right } of texts) {
      for (let c = 0; c < width; c += 1) odds[c] = weights[size + c]!;
      for (let i = 0; i < rows.length; i += 1)
        for (let c = 0, row = rows[i]!, value = values[i]!; c < width; c += 1)
          odds[c]! += value * weights[row + c]!;
      loss += softmax(odds, right);
      odds[right]! -= 1;
      for (let i = 0; i < rows.length; i += 1)
        for (let c = 0, row = rows[i]!, value = values[i]!; c < width; c += 1)
          slope[row + c]! += value * odds[c]!;
      for (let c = 0; c < width; c += 1) slope[size + c]! += odds[c]!;
    }
    return loss;
  });
}

/** Scores into probabilities, in place; the cross-entropy of the right one. */
function softmax(scores: Float64Array, right: number): number {
  const most = Math.max(...scores);
  let sum = 0;
  for (const score of scores) sum += Math.exp(score - most);
  const loss = Math.log(sum) - (scores[right]! - most);
  for (let c = 0; c < scores.length; c += 1) scores[c] = Math.exp(scores[c]! - most) / sum;
  return loss;
}

/** The `most` features whose weights are farthest from alike, after a short fit. */
function sifted(lessons: readonly Lesson[], known: Known, most: number): Known {
  const width = CLASSES.length;
  const weights = descend(lessons, known, SIFTING_ROUNDS);
  const kept = [...known.rows]
    .map(([hash, row]) => ({
      hash,
      row,
      says: weights.subarray(row * width, row * width + width).reduce((sum, one) => sum + one * one, 0),
    }))
    .toSorted((a, b) => b.says - a.says || a.hash - b.hash)
    .slice(0, most)
    .toSorted((a, b) => a.hash - b.hash);
  return {
    rows: new Map(kept.map(({ hash }, at) => [hash, at])),
    idf: Uint8Array.from(kept, ({ row }) => known.idf[row]!),
  };
}

/** So many features are kept: 16 bytes each. */
const MOST = 12_000;

/** Learns from texts; the same texts give the same model, in about ten seconds. */
export function fitLearned(lessons: readonly Lesson[], most = MOST): Model {
  const width = CLASSES.length;
  const known = sifted(lessons, knownIn(lessons), most);
  const fitted = descend(lessons, known, ROUNDS);
  const size = known.idf.length * width;
  const steps = CLASSES.map((_, c) => {
    let largest = 0;
    for (let i = c; i < size; i += width) largest = Math.max(largest, Math.abs(fitted[i]!));
    return Number((largest / 127).toPrecision(6));
  });
  return {
    ...known,
    weights: Int8Array.from(fitted.subarray(0, size), (weight, i) => Math.round(weight / steps[i % width]!)),
    steps,
    intercepts: [...fitted.subarray(size)].map(one => Number(one.toFixed(4))),
  };
}
