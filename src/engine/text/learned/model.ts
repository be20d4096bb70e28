import type { Counts } from './hashes.ts';

/** What a text is weighed by: kinds of features, each scaled to a length of its own. */
export type Features = readonly { readonly counts: Counts; readonly length: number }[];

/**
 * A multinomial logistic regression over {@link Features}. `idf` and `weights` are whole numbers: a feature's rarity is
 * `idf / RARITY_STEPS` (`tests/engine/text/learned/rarity.ts`), its weight for class `c` is `weights[row * steps.length + c] * steps[c]`.
 */
export type Model = {
  readonly rows: ReadonlyMap<number, number>;
  readonly idf: Uint8Array;
  readonly weights: Int8Array;
  readonly steps: readonly number[];
  readonly intercepts: readonly number[];
};

/**
 * Calls `take` with the row and value of each known feature: 1 + ln(count) times its rarity, each kind scaled to its
 * length.
 */
export function eachValue(
  features: Features,
  { rows, idf }: Pick<Model, 'rows' | 'idf'>,
  take: (row: number, value: number) => void,
): void {
  for (const { counts, length: whole } of features) {
    const known: number[] = [];
    const values: number[] = [];
    let square = 0;
    for (const [hash, times] of counts) {
      const row = rows.get(hash);
      if (row === undefined) continue;
      const value = (1 + Math.log(times)) * idf[row]!;
      known.push(row);
      values.push(value);
      square += value * value;
    }
    const length = Math.sqrt(square);
    for (let i = 0; i < known.length; i += 1) take(known[i]!, (values[i]! * whole) / length);
  }
}

/** The score of each class, natural logarithm of its odds up to a common constant, in the order of the model's classes. */
export function scoresOf(features: Features, model: Model): readonly number[] {
  const { weights, steps, intercepts } = model;
  const width = steps.length;
  const sums = new Float64Array(width);
  eachValue(features, model, (row, value) => {
    for (let c = 0; c < width; c += 1) sums[c]! += value * weights[row * width + c]!;
  });
  return intercepts.map((intercept, c) => intercept + sums[c]! * steps[c]!);
}

/** The natural logarithm of each class's probability, in the order of the model's classes. */
export function logChances(features: Features, model: Model): readonly number[] {
  const scores = scoresOf(features, model);
  const most = Math.max(...scores);
  const all = most + Math.log(scores.reduce((sum, score) => sum + Math.exp(score - most), 0));
  return scores.map(score => score - all);
}
