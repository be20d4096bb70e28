import type { Said } from './session.ts';

/** Rows of `side` values mirrored left to right: a square of several planes, or maps. */
export function mirrored(values: Float32Array, side: number): Float32Array {
  const out = new Float32Array(values.length);
  for (let start = 0; start < values.length; start += side)
    for (let x = 0; x < side; x++) out[start + x] = values[start + side - 1 - x]!;
  return out;
}

/** The mean of the logits of a look at a square and of a look at the same square {@link mirrored}, turned back. */
export function meanWithMirrored(one: Said, other: Said): Said {
  const back = mirrored(other.maps, other.side);
  return {
    side: one.side,
    maps: one.maps.map((value, i) => (value + back[i]!) / 2),
    answers: one.answers.map((value, i) => (value + other.answers[i]!) / 2),
  };
}
