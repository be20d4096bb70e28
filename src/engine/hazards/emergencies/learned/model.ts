import type { EmergencyId } from '../emergency.ts';
import type { Features } from './features.ts';

/** What a text may tell of; `none`: of no emergency. */
export type Class = EmergencyId | 'none';

/**
 * A multinomial logistic regression over {@link Features}. `idf` and `weights` are whole numbers: a feature's rarity is
 * `idf / RARITY_STEPS`, its weight for class `c` is `weights[row * steps.length + c] * steps[c]`.
 */
export type Model = {
  readonly rows: ReadonlyMap<number, number>;
  readonly idf: Uint8Array;
  readonly weights: Int8Array;
  readonly steps: readonly number[];
  readonly intercepts: readonly number[];
};

export const RARITY_STEPS = 24;
/** Lengths of words, pieces and ideas; ideas count less, since a lexicon knows its own texts better than the next. */
const LENGTHS = [1, 1, 0.5] as const;

/** How rare a feature is that stands in `holding` of `all` texts, as kept in {@link Model}: 1 + ln((1+n)/(1+df)). */
export const rarity = (holding: number, all: number): number =>
  Math.min(255, Math.round(RARITY_STEPS * (1 + Math.log((1 + all) / (1 + holding)))));

/**
 * Calls `take` with the row and value of each known feature: 1 + ln(count) times its rarity, each kind scaled
 * to a length of its own.
 */
export function eachValue(
  { words, pieces, ideas }: Features,
  { rows, idf }: Pick<Model, 'rows' | 'idf'>,
  take: (row: number, value: number) => void,
): void {
  for (const [at, counts] of [words, pieces, ideas].entries()) {
    const whole = LENGTHS[at]!;
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

/** The score of each class, natural logarithm of its odds up to a common constant, in the order of `CLASSES`. */
export function scoresOf(features: Features, model: Model): readonly number[] {
  const { weights, steps, intercepts } = model;
  const width = steps.length;
  const sums = new Float64Array(width);
  eachValue(features, model, (row, value) => {
    for (let c = 0; c < width; c += 1) sums[c]! += value * weights[row * width + c]!;
  });
  return intercepts.map((intercept, c) => intercept + sums[c]! * steps[c]!);
}
