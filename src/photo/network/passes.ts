import type { Pixels } from '../decode.ts';
import { components } from '../pixels/components.ts';
import { type Mask, maskWhere, type Plane, sample } from '../pixels/plane.ts';
import { said } from './session.ts';
import { cutSquare, type Square, wholeSquare } from './square.ts';

/** Sides in pixels at which the network was trained: for finding the bar, and for reading it (there at 384 as well). */
const WHOLE = 256;
const CLOSE = 512;
/** The bar's square is this much wider than the bar. Trained with 1.0 to 1.3. */
const MARGIN = 1.12;
/** Pieces of less than this part of the largest are no bars. */
const LEAST_PIECE = 0.05;
/** Nor are other pieces whose mean chance is less than this: bars stand out from 0.85 up. Chosen on one picture. */
const FIRM = 0.7;
/** A mask with less of the picture than this is none. */
const LEAST_SHARE = 0.003;

/** After the findings' answers come "no soap in view" and "too poor to read". */
const OTHER_ANSWERS = 2;

/** Where the network sees soap in a picture, in a map of chances 0 to 1 over the square `square` of it. */
export type Outlined = {
  readonly square: Square;
  /** Chance that there is soap at all, uncalibrated: the logit of "no soap in view", and whether a bar was outlined. */
  readonly noSoap: number;
  readonly bar: Plane;
};

/** What the network sees in a picture, in such maps. */
export type Seen = Outlined & {
  /** The logit of "too poor to read", of the bar's own look. */
  readonly poor: number;
  readonly maps: readonly Plane[];
  /** Logits, one a finding, in the order of the maps. */
  readonly answers: readonly number[];
};

/** Looks at the whole picture for the bar, in a fifth of the time of {@link look}. Undefined where none can be outlined. */
export async function outline(photo: Pixels): Promise<Outlined | undefined> {
  const square = wholeSquare(photo);
  const { maps, answers, side } = await said(cutSquare(photo, square, WHOLE), WHOLE);
  const bar = chances(maps, 0, side);
  if (!squareRound(bar, square)) return undefined;
  return { square, noSoap: answers[answers.length - OTHER_ANSWERS]!, bar: firm(bar) };
}

/**
 * Looks at the whole picture for the bar, then at the bar. Undefined where no bar can be outlined.
 */
export async function look(photo: Pixels): Promise<Seen | undefined> {
  const whole = wholeSquare(photo);
  const first = await said(cutSquare(photo, whole, WHOLE), WHOLE);
  const square = squareRound(chances(first.maps, 0, first.side), whole);
  if (!square) return undefined;
  const second = await said(cutSquare(photo, square, CLOSE), CLOSE);
  const count = second.answers.length - OTHER_ANSWERS;
  return {
    square,
    noSoap: first.answers[count]!,
    poor: second.answers[count + 1]!,
    bar: firm(chances(second.maps, 0, second.side)),
    maps: Array.from({ length: count }, (_, i) => chances(second.maps, i + 1, second.side)),
    answers: [...second.answers.subarray(0, count)],
  };
}

function chances(logits: Float32Array, index: number, side: number): Plane {
  const part = logits.subarray(index * side * side, (index + 1) * side * side);
  return { width: side, height: side, data: part.map(value => 1 / (1 + Math.exp(-value))) };
}

/**
 * A map of the bars' chances, 0 to 1, without the pieces (where it exceeds 0.5) that the network is in two minds about: those
 * whose mean is under {@link FIRM}. The largest piece stays whatever its mean.
 */
export function firm({ width, height, data }: Plane): Plane {
  const pieces = components(
    maskWhere(width, height, i => data[i]! > 0.5),
    1,
  );
  const largest = Math.max(0, ...pieces.map(({ pixels }) => pixels.length));
  const kept = Float32Array.from(data);
  for (const { pixels } of pieces) {
    const mean = pixels.reduce((sum, pixel) => sum + data[pixel]!, 0) / pixels.length;
    if (pixels.length < largest && mean < FIRM) for (const pixel of pixels) kept[pixel] = 0;
  }
  return { width, height, data: kept };
}

function squareRound(bar: Plane, { x, y, half }: Square): Square | undefined {
  const side = bar.width;
  const pieces = components(
    maskWhere(side, side, i => bar.data[i]! > 0.5),
    LEAST_SHARE * side * side,
  );
  const largest = Math.max(0, ...pieces.map(({ pixels }) => pixels.length));
  if (largest === 0) return undefined;
  const kept = pieces.filter(({ pixels }) => pixels.length >= LEAST_PIECE * largest);
  const [left, top] = [Math.min(...kept.map(one => one.left)), Math.min(...kept.map(one => one.top))];
  const [right, bottom] = [
    Math.max(...kept.map(one => one.right)) + 1,
    Math.max(...kept.map(one => one.bottom)) + 1,
  ];
  const unit = (2 * half) / side;
  return {
    x: x - half + ((left + right) / 2) * unit,
    y: y - half + ((top + bottom) / 2) * unit,
    half: Math.max(16, (Math.max(right - left, bottom - top) / 2) * unit * MARGIN),
  };
}

/** Where a map, laid over a picture of `width` x `height` pixels that is `factor` times smaller than the one looked at, exceeds `from`. */
export function laidOver(
  map: Plane,
  { x, y, half }: Square,
  { width, height, factor }: { readonly width: number; readonly height: number; readonly factor: number },
  from = 0.5,
): Mask {
  const unit = map.width / (2 * half);
  return maskWhere(width, height, i => {
    const u = (((i % width) + 0.5) * factor - x + half) * unit - 0.5;
    const v = ((Math.floor(i / width) + 0.5) * factor - y + half) * unit - 0.5;
    if (u < -0.5 || v < -0.5 || u > map.width - 0.5 || v > map.height - 0.5) return false;
    return sample(map, u, v) > from;
  });
}
