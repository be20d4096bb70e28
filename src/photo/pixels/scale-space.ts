import { blurred } from './gaussian.ts';
import { halved, type Plane, sample } from './plane.ts';

/**
 * One level of a scale space. `sigma` is its blur and `step` the size of its pixels, both in pixels of the original.
 * `band` is the next level less this one: the difference of Gaussians.
 */
export type Level = {
  readonly sigma: number;
  readonly step: number;
  readonly smooth: Plane;
  readonly band: Plane;
};

const PER_OCTAVE = 2;
const RATIO = 2 ** (1 / PER_OCTAVE);
export const FIRST_SIGMA = 1.2;

/**
 * Scale space in octaves, each at half the size of the one before (D. G. Lowe, "Distinctive image features from
 * scale-invariant keypoints", IJCV 60 (2004) 91-110, section 3), after the band-pass of D. Marr and E. Hildreth,
 * "Theory of edge detection", Proc. R. Soc. B 207 (1980) 187-217. Levels stand at 1.2, 1.7, 2.4 ... pixels.
 */
export function scaleSpace(source: Plane, octaves: number): Level[] {
  return octavesFrom(blurred(source, FIRST_SIGMA), 1, octaves);
}

/**
 * The same for a colour channel, from the second octave on: cameras and JPEG keep colour at half the size of lightness,
 * so the first octave would show nothing more. Its place is taken by the second octave's first level.
 */
export function colourScaleSpace(source: Plane, octaves: number): Level[] {
  const small = blurred(halved(source), FIRST_SIGMA * HALF_BLUR);
  const levels = octavesFrom(small, 2, octaves - 1);
  return [...Array.from({ length: PER_OCTAVE }, () => levels[0]!), ...levels];
}

/** Halving blurs by itself: a little less is left to do to reach the first sigma at half size. */
const HALF_BLUR = Math.sqrt(1 - (0.5 / (2 * FIRST_SIGMA)) ** 2);

function octavesFrom(first: Plane, firstStep: number, octaves: number): Level[] {
  const levels: Level[] = [];
  let base = first;
  let step = firstStep;
  for (let octave = 0; octave < octaves; octave++) {
    const smooth = [base];
    for (let i = 0; i < PER_OCTAVE; i++) {
      const sigma = FIRST_SIGMA * RATIO ** i;
      smooth.push(blurred(smooth[i]!, sigma * Math.sqrt(RATIO * RATIO - 1)));
    }
    for (let i = 0; i < PER_OCTAVE; i++) {
      const here = smooth[i]!;
      levels.push({
        sigma: FIRST_SIGMA * RATIO ** i * step,
        step,
        smooth: here,
        band: less(smooth[i + 1]!, here),
      });
    }
    base = halved(smooth[PER_OCTAVE]!);
    step *= 2;
  }
  return levels;
}

function less(one: Plane, other: Plane): Plane {
  const data = new Float32Array(one.data.length);
  for (let i = 0; i < data.length; i++) data[i] = one.data[i]! - other.data[i]!;
  return { ...one, data };
}

/** A level's smoothed value at a place given in pixels of the original. */
export const valueAt = ({ smooth, step }: Level, x: number, y: number): number =>
  sample(smooth, (x + 0.5) / step - 0.5, (y + 0.5) / step - 0.5);
