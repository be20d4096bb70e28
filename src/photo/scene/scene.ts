import type { Pixels } from '../decode.ts';
import { filled } from '../pixels/components.ts';
import { labOf } from '../pixels/lab.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { areaOf, type Mask, maskWhere, type Plane } from '../pixels/plane.ts';
import { unlikeBackground } from './background.ts';
import { notBackground, solidityOf, type Thing, thingsIn, thingsThreshold } from './objects.ts';
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
/** Lying at the picture's edge instead of its middle speaks for paper as much as this much L*. */
const ASIDE = 20;
/** The share of a patch's surroundings that is background where the patch lies apart. */
const GAP = 0.12;
/** What is left of a thing round a white patch may be this much of it, and the patch still is all of it. */
const LEFT_ROUND = 0.12;

/** Finds the bars and the white paper in a photo. No bar: an empty list. */
export function sceneOf(photo: Pixels): Scene {
  const factor = Math.max(1, Math.round(Math.max(photo.width, photo.height) / SEEK_AT));
  const small = shrink(photo, factor);
  const lab = labOf(small);
  const unlike = unlikeBackground(lab);
  const patches = whitePatches(small, lab);
  const things = notBackground(unlike);
  const { paper, soap } = partPaper(patches, things, lab.l, unlike);
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
 * Tells white paper from white soap. White that is the background, or a thing by itself beside another, is paper; a
 * white thing alone is the bar; a white part of something shaped like a bar is part of it, unless a bar lies on it.
 */
function partPaper(
  patches: readonly Mask[],
  things: Mask,
  lightness: Plane,
  unlike: Plane,
): { paper: Mask | undefined; soap: Mask } {
  const { width, height } = things;
  const without = (paper: Mask) =>
    filled(opened(maskWhere(width, height, i => things.data[i] === 1 && paper.data[i] === 0)));
  // Between white soap and white paper: paper is brighter, and the soap is what the picture is of.
  const paperiness = (patch: Mask) => meanOf(lightness, patch) + ASIDE * awayFromMiddle(patch);
  const brightest = patches.toSorted((one, other) => paperiness(other) - paperiness(one));
  for (const patch of brightest) {
    const covered = overlap(patch, things) / areaOf(patch);
    if (covered < 0.3) return { paper: patch, soap: things };
    if (solidityOf(patch) < 0.85) continue;
    const rest = without(grown(patch, 2));
    const bars = thingsIn(rest).filter(isBar);
    if (bars.length === 0) continue;
    const whole = thingsIn(things).find(one => overlap(patch, one.mask) > 0.5 * areaOf(patch));
    const partOfBar = whole && wellShaped(whole) && !isAlone(patch, whole) && !hasGap(patch, whole, unlike);
    if (partOfBar && !bars.some(bar => liesOn(bar, patch))) continue;
    return { paper: patch, soap: rest };
  }
  return { paper: undefined, soap: things };
}

const opened = (source: Mask) => grown(shrunk(source, 2.5), 2.5);

/** One bar by itself: two things that nearly touch, such as a bar and the sheet beside it, leave corners empty. */
const wellShaped = (thing: Thing) => isBar(thing) && thing.rectangularity > 0.88 && thing.solidity > 0.94;

/** True where background shows between a patch and the rest of the thing it was joined to. */
function hasGap(patch: Mask, whole: Thing, unlike: Plane): boolean {
  const threshold = thingsThreshold(unlike);
  const round = grown(patch, 5);
  let rim = 0;
  let background = 0;
  for (let i = 0; i < round.data.length; i++) {
    if (!round.data[i] || patch.data[i] || !whole.mask.data[i]) continue;
    rim++;
    if (unlike.data[i]! < threshold) background++;
  }
  return background > GAP * rim;
}

/** True where a patch is a whole thing, its rim aside. */
function isAlone(patch: Mask, whole: Thing): boolean {
  const round = grown(patch, 4);
  const { width, height } = patch;
  const left = maskWhere(width, height, i => whole.mask.data[i] === 1 && round.data[i] === 0);
  return areaOf(opened(left)) < LEFT_ROUND * whole.area;
}

/**
 * True where a bar lies on a sheet: a good rectangle, white nearly all round it. A pale part of a design is not, nor is
 * the pale rim round a dark heart, which is round.
 */
function liesOn(bar: Thing, sheet: Mask): boolean {
  if (bar.rectangularity < 0.9 || bar.solidity < 0.95) return false;
  const near = grown(bar.mask, 3);
  const far = grown(bar.mask, 9);
  const round = areaOf(far) - areaOf(near);
  return overlap(far, sheet) - overlap(near, sheet) > 0.65 * round;
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

/** How far a patch's middle is from the picture's: 0 to about 1 at an edge. */
function awayFromMiddle({ width, height, data }: Mask): number {
  let [x, y, count] = [0, 0, 0];
  for (let i = 0; i < data.length; i++) {
    if (!data[i]) continue;
    x += i % width;
    y += Math.floor(i / width);
    count++;
  }
  return Math.hypot(x / count / width - 0.5, y / count / height - 0.5) * 2;
}
