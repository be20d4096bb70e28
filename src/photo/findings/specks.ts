import { sample } from '../pixels/plane.ts';
import { type Level, valueAt } from '../pixels/scale-space.ts';
import { insideAt, MAP_LEVEL, type Scales, type Sight, usualResponse } from './sight.ts';

/** Differences in L*, a*, b*. */
export type Contrast = readonly [number, number, number];

/** One small thing unlike all that is round it: place and radius in face pixels. */
export type Speck = {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** What it is less what is round it, undone for the blur of its scale. */
  readonly contrast: Contrast;
  /** The colour round it. */
  readonly ground: Contrast;
  /** Which side of its rim is the lighter, right and down, over its contrast: a hole's far rim catches the light. */
  readonly lit: readonly [number, number];
};

/** Least difference-of-Gaussians response (CIELAB units); a disc of contrast 6 gives 1.4 at its own scale. */
const LEAST_RESPONSE = 1.2;
/** A speck must stand out this many times above what texture and noise usually bring about. */
const ABOVE_USUAL = 5;
const DIRECTIONS = 12;
/** Least contrast at its own scale, in CIELAB units. */
const LEAST_CONTRAST = 4;
/** A disc as wide as its scale's zero crossing keeps this part of its contrast at its middle. */
const KEPT = 1 - Math.exp(-1);

const ROUND = Array.from({ length: DIRECTIONS }, (_, i) => {
  const angle = (2 * Math.PI * i) / DIRECTIONS;
  return [Math.cos(angle), Math.sin(angle)] as const;
});

/**
 * Finds specks at every scale: extrema of the difference of Gaussians over L*, a* and b* together (Marr and Hildreth
 * 1980; Lowe 2004), kept where they differ from their ground in every direction, so that veins and borders are none.
 * A disc of radius r answers most at the scale r / sqrt 2.
 */
export function specksOf({ face, scales }: Sight): Speck[] {
  const found: { speck: Speck; response: number }[] = [];
  scales.l.forEach((level, i) => {
    const inside = insideAt(face, level);
    const response = responseAt(scales, i);
    const usual = usualResponse(response, inside);
    const least = Math.max(LEAST_RESPONSE, ABOVE_USUAL * usual);
    for (const at of peaks(response, level, inside, least)) {
      const speck = standingOut(scales, i, at);
      if (speck) found.push({ speck, response: response[at]! });
    }
  });
  return apart(found.toSorted((one, other) => other.response - one.response).map(({ speck }) => speck));
}

function responseAt({ l, a, b }: Scales, level: number): Float32Array {
  const dl = l[level]!.band.data;
  if (level < MAP_LEVEL) return dl.map(Math.abs);
  const [da, db] = [a[level]!.band.data, b[level]!.band.data];
  const out = new Float32Array(dl.length);
  for (let i = 0; i < out.length; i++)
    out[i] = Math.sqrt(dl[i]! * dl[i]! + da[i]! * da[i]! + db[i]! * db[i]!);
  return out;
}

function peaks(response: Float32Array, { smooth }: Level, inside: Uint8Array, least: number): number[] {
  const { width, height } = smooth;
  const found: number[] = [];
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      const value = response[i]!;
      if (value < least || !inside[i]) continue;
      if (value < response[i - 1]! || value < response[i + 1]!) continue;
      if (value < response[i - width]! || value < response[i + width]!) continue;
      if (value < response[i - width - 1]! || value < response[i - width + 1]!) continue;
      if (value < response[i + width - 1]! || value < response[i + width + 1]!) continue;
      found.push(i);
    }
  }
  return found;
}

function standingOut(scales: Scales, index: number, at: number): Speck | undefined {
  const levels = [scales.l[index]!, scales.a[index]!, scales.b[index]!] as const;
  const { step, sigma, smooth } = levels[0];
  const x = ((at % smooth.width) + 0.5) * step - 0.5;
  const y = (Math.floor(at / smooth.width) + 0.5) * step - 0.5;
  const reach = 2.3 * sigma + step;
  const here = levels.map(level => valueAt(level, x, y)) as unknown as Contrast;
  const rays = ROUND.map(([cos, sin]) =>
    levels.map((level, d) => here[d]! - valueAt(level, x + cos * reach, y + sin * reach)),
  ) as unknown as Contrast[];
  const mean = [0, 1, 2].map(
    d => rays.reduce((sum, ray) => sum + ray[d]!, 0) / DIRECTIONS,
  ) as unknown as Contrast;
  const length = Math.hypot(...mean);
  if (length < LEAST_CONTRAST) return undefined;
  const along = rays.map(ray => (ray[0] * mean[0] + ray[1] * mean[1] + ray[2] * mean[2]) / length);
  // One ray may meet a neighbour; a vein would take two, a border half of them.
  if (along.filter(value => value < 0.5 * length).length > 1) return undefined;
  return {
    x,
    y,
    radius: Math.SQRT2 * sigma,
    contrast: mean.map(value => value / KEPT) as unknown as Contrast,
    ground: here.map((value, d) => value - mean[d]!) as unknown as Contrast,
    lit: litSide(scales, x, y, sigma, length),
  };
}

/** The first harmonic of L* on a circle just outside a speck. */
function litSide(
  scales: Scales,
  x: number,
  y: number,
  sigma: number,
  contrast: number,
): readonly [number, number] {
  const fine = scales.l[0]!.smooth;
  const reach = 1.3 * Math.SQRT2 * sigma + 0.5;
  let right = 0;
  let down = 0;
  for (const [cos, sin] of ROUND) {
    const value = sample(fine, x + cos * reach, y + sin * reach);
    right += (2 / DIRECTIONS) * value * cos;
    down += (2 / DIRECTIONS) * value * sin;
  }
  return [right / contrast, down / contrast];
}

function apart(specks: readonly Speck[]): Speck[] {
  const kept: Speck[] = [];
  for (const speck of specks) {
    const taken = kept.some(
      other => Math.hypot(speck.x - other.x, speck.y - other.y) < Math.max(speck.radius, other.radius) * 1.2,
    );
    if (!taken) kept.push(speck);
    if (kept.length >= 400) break;
  }
  return kept;
}
