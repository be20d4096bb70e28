import type { Pixels } from '../decode.ts';
import { filled } from '../pixels/components.ts';
import { labOf } from '../pixels/lab.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { areaOf, type Mask, maskWhere, type Plane } from '../pixels/plane.ts';
import { unlikeBackground } from './background.ts';
import { notBackground, type Thing, thingsIn, thingsThreshold } from './objects.ts';
import { shrink } from './shrink.ts';
import { whitePatches } from './white.ts';

/** What lies in the picture, at `factor` times fewer pixels each way. */
export type Scene = {
  readonly small: Pixels;
  readonly factor: number;
  readonly bars: readonly Thing[];
  /** The pixels of white paper or card, well inside it. */
  readonly white: Mask | undefined;
};

/** The longer side, in pixels, at which bars are looked for. */
const SEEK_AT = 256;

/** Finds the bars and the white paper in a photo. No bar: an empty list. */
export function sceneOf(photo: Pixels): Scene {
  const factor = Math.max(1, Math.round(Math.max(photo.width, photo.height) / SEEK_AT));
  const small = shrink(photo, factor);
  const lab = labOf(small);
  const unlike = unlikeBackground(lab);
  const patches = whitePatches(small, lab);
  const things = notBackground(unlike);
  const { paper, soap } = partPaper(patches, things, lab.l);
  const bars = thingsIn(soap).filter(one => isBar(one) && standsOut(one, unlike));
  return { small, factor, bars, white: paper && shrunk(paper, 1.5) };
}

function isBar({ solidity, rectangularity, onEdge, rectangle }: Thing): boolean {
  const slender = Math.max(rectangle.width, rectangle.height) / Math.min(rectangle.width, rectangle.height);
  return solidity > 0.86 && rectangularity > 0.7 && onEdge < 0.12 && slender < 6;
}

/** The rest of the picture must be background indeed: in a picture that is texture all over, nothing is a bar. */
function standsOut({ mask }: Thing, unlike: Plane): boolean {
  const threshold = thingsThreshold(unlike);
  const near = grown(mask, 14);
  const far = grown(mask, 3);
  let round = 0;
  let plain = 0;
  let inside = 0;
  let total = 0;
  for (let i = 0; i < mask.data.length; i++) {
    if (mask.data[i]) {
      inside++;
      total += unlike.data[i]!;
    } else if (near.data[i] && !far.data[i]) {
      round++;
      if (unlike.data[i]! <= threshold) plain++;
    }
  }
  return total / inside > 1.2 * threshold && plain > 0.5 * round;
}

/**
 * Tells white paper from white soap. Paper that is the background, or a thing by itself beside another, is paper; a
 * white thing alone is the bar; a white part that completes the rectangle of a coloured one is part of that bar.
 */
function partPaper(
  patches: readonly Mask[],
  things: Mask,
  lightness: Plane,
): { paper: Mask | undefined; soap: Mask } {
  const { width, height } = things;
  const without = (paper: Mask) =>
    filled(opened(maskWhere(width, height, i => things.data[i] === 1 && paper.data[i] === 0)));
  const brightest = patches.toSorted((one, other) => meanOf(lightness, other) - meanOf(lightness, one));
  for (const patch of brightest) {
    const covered = overlap(patch, things) / areaOf(patch);
    if (covered < 0.3) return { paper: patch, soap: things };
    const rest = without(grown(patch, 2));
    const bars = thingsIn(rest).filter(isBar);
    if (bars.length === 0) continue;
    const whole = thingsIn(things).find(one => overlap(patch, one.mask) > 0.5 * areaOf(patch));
    if (
      whole &&
      isBar(whole) &&
      whole.rectangularity > 0.85 &&
      whole.solidity > 0.93 &&
      sharesOneSide(patch, bars[0]!, whole)
    )
      continue;
    return { paper: patch, soap: rest };
  }
  return { paper: undefined, soap: things };
}

const opened = (source: Mask) => grown(shrunk(source, 2.5), 2.5);

/** True where patch and bar lie side by side within one rectangle, rather than the bar lying on the patch. */
function sharesOneSide(patch: Mask, bar: Thing, whole: Thing): boolean {
  const touching = overlap(grown(bar.mask, 5), patch);
  const rim = areaOf(grown(bar.mask, 5)) - bar.area;
  return touching < 0.45 * rim && touching > 0.05 * rim && bar.area + areaOf(patch) > 0.75 * whole.area;
}

function overlap(one: Mask, other: Mask): number {
  let count = 0;
  for (let i = 0; i < one.data.length; i++) if (one.data[i] && other.data[i]) count++;
  return count;
}

function meanOf({ data }: Plane, { data: inside }: Mask): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < data.length; i++) {
    if (!inside[i]) continue;
    sum += data[i]!;
    count++;
  }
  return sum / Math.max(1, count);
}
