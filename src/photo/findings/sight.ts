import { median, quantile } from '../pixels/quantile.ts';
import { colourScaleSpace, type Level, scaleSpace } from '../pixels/scale-space.ts';
import type { MainColour, PhotoFinding } from '../reading.ts';
import type { Face } from '../scene/face.ts';
import { colourMap, mainColours } from './main-colours.ts';

/** Each channel of a face at every scale; colour has no finer level than {@link MAP_LEVEL}. */
export type Scales = {
  readonly l: readonly Level[];
  readonly a: readonly Level[];
  readonly b: readonly Level[];
};

/** Everything the detectors share about one face, worked out once. */
export type Sight = {
  readonly face: Face;
  readonly scales: Scales;
  readonly colours: readonly MainColour[];
  /** For each pixel of level {@link MAP_LEVEL} the main colour it is nearest to. */
  readonly map: Uint8Array;
  /** Standard deviation of the noise of L* at full size, the soap's own fine grain with it. */
  readonly noise: number;
  /** Standard deviation of the picture's blur in face pixels. */
  readonly blur: number;
};

/** What a detector finds, before the picture's quality has been weighed. */
export type Found = Omit<PhotoFinding, 'confidence'> & {
  /** 0 to 1: how clear the sight itself is, in a perfect picture. */
  readonly clarity: number;
  /** The size of what was found in face pixels: small things suffer most from blur. */
  readonly size: number;
};

const OCTAVES = 4;
/** The level (2.4 pixels of blur, half size) on which colours are told apart. */
export const MAP_LEVEL = 2;
/** The level (4.8 pixels of blur, quarter size) on which broad shapes are read. */
export const BROAD_LEVEL = 4;

/** Prepares a face for the detectors. `lightUnsure` is how far the light leaves its colours open (CIEDE2000), `blur` the picture's in face pixels. */
export function sightOf(face: Face, lightUnsure: number, blur: number): Sight {
  const { lab } = face;
  const scales = {
    l: scaleSpace(lab.l, OCTAVES),
    a: colourScaleSpace(lab.a, OCTAVES),
    b: colourScaleSpace(lab.b, OCTAVES),
  };
  const soft = planesAt(scales, MAP_LEVEL);
  const inside = insideAt(face, scales.l[MAP_LEVEL]!);
  const colours = mainColours(soft, inside, lightUnsure);
  return {
    face,
    scales,
    colours,
    map: colourMap(soft, colours),
    noise: noiseIn(scales.l[0]!, face.inside),
    blur,
  };
}

/** The three planes at one level, {@link MAP_LEVEL} or coarser: all of one size. */
export const planesAt = ({ l, a, b }: Scales, level: number) => ({
  l: l[level]!.smooth,
  a: a[level]!.smooth,
  b: b[level]!.smooth,
});

/** The pixels of a level that lie inside the bar. */
export function insideAt({ width, inside }: Face, { step, smooth }: Level): Uint8Array {
  if (step === 1) return inside;
  const out = new Uint8Array(smooth.width * smooth.height);
  for (let y = 0, i = 0; y < smooth.height; y++)
    for (let x = 0; x < smooth.width; x++, i++)
      out[i] = inside[(y * step + (step >> 1)) * width + x * step + (step >> 1)]!;
  return out;
}

/** Enough values for a median. */
const ENOUGH = 3000;

/** The middle size of a level's response inside the bar: what texture and noise alone bring about there. */
export const usualResponse = (response: Float32Array, inside: Uint8Array): number =>
  median(sizes(response, inside));

function sizes(response: Float32Array, inside: Uint8Array): Float64Array {
  const stride = Math.max(1, Math.floor(response.length / ENOUGH)) | 1;
  const seen = new Float64Array(Math.ceil(response.length / stride));
  let count = 0;
  for (let i = 0; i < response.length; i += stride) if (inside[i]) seen[count++] = Math.abs(response[i]!);
  return seen.subarray(0, count);
}

/** The difference of Gaussians of white noise keeps this part of the noise of its smoother level. */
const BAND_OF_SMOOTH = Math.sqrt(1.5 - 4 / 3);

/** A quarter of normal deviates are smaller than this part of their standard deviation. */
const LOWER_QUARTER = 0.3186;

/** The noise of a level, as a standard deviation, from the quietest quarter of its band: even a net of veins leaves that. */
export const noiseOfLevel = ({ band }: Level, inside: Uint8Array): number =>
  quantile(sizes(band.data, inside), 0.25) / LOWER_QUARTER / BAND_OF_SMOOTH;

/** The noise before smoothing: a bell of `sigma` leaves 1 / (2 sqrt(pi) sigma) of white noise. */
const noiseIn = (level: Level, inside: Uint8Array): number =>
  noiseOfLevel(level, inside) * 2 * Math.sqrt(Math.PI) * (level.sigma / level.step);
