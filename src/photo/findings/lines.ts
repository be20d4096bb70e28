import { components } from '../pixels/components.ts';
import { type Mask, mask, sample } from '../pixels/plane.ts';
import { quantile } from '../pixels/quantile.ts';
import { curvature, vesselness } from '../pixels/ridge.ts';
import { type Level, valueAt } from '../pixels/scale-space.ts';
import { neighbours, thinned } from '../pixels/thinning.ts';
import type { Face } from '../scene/face.ts';
import { insideAt, noiseOfLevel, type Scales, type Sight } from './sight.ts';

/** One line on a face, drawn to one pixel's width: its pixels, and what it is like. */
export type Line = {
  readonly pixels: readonly number[];
  /** Length along it and the distance between its farthest corners, in face pixels. */
  readonly length: number;
  readonly span: number;
  readonly junctions: number;
  /** Closed cells it draws: a tree has none, a net many. */
  readonly cells: number;
  /** Mean L* of the line less that of both its sides. */
  readonly contrast: number;
  /** The same for its clearest fifth. */
  readonly clearest: number;
  /** Mean change of a*, b* that a mere change of light does not explain. */
  readonly hueShift: number;
  /** The blur at which it answers best: about half its width. */
  readonly sigma: number;
  /** Direction in radians, 0 along the width, and how straight it keeps to it (0 to 1). */
  readonly heading: number;
  readonly straight: number;
};

/** Least difference in L* between a line and each of its sides. */
const LEAST_CONTRAST = 1.5;
const ABOVE_NOISE = 3.2;
/** Shorter than this share of the bar's width is no line. */
const LEAST_LENGTH = 0.06;
const LEVELS = 5;
/** The rim, as a share of the bar's width. */
const RIM = 0.035;

/** The lines of a face that are darker (or lighter) than both their sides, at scales from 1.2 to 4.8 pixels. */
export function linesOf(sight: Sight, dark: boolean): Line[] {
  const { face, scales } = sight;
  const found = mask(face.width, face.height);
  const best = new Float32Array(found.data.length);
  const sigmas = new Float32Array(found.data.length);
  scales.l.slice(0, LEVELS).forEach(level => {
    markRidges(level, insideAt(face, level), dark, (x, y, contrast) => {
      for (let dy = 0; dy < level.step; dy++) {
        for (let dx = 0; dx < level.step; dx++) {
          const i = (y * level.step + dy) * face.width + x * level.step + dx;
          found.data[i] = 1;
          if (contrast <= best[i]!) continue;
          best[i] = contrast;
          sigmas[i] = level.sigma;
        }
      }
    });
  });
  const least = LEAST_LENGTH * face.barWidth;
  return components(found, least)
    .map(({ pixels }) => lineOf(found, pixels, sight.scales, best, sigmas, dark))
    .filter(({ length, span }) => length >= least && span >= 0.7 * least)
    .filter(({ pixels }) => !alongRim(pixels, face));
}

function markRidges(
  level: Level,
  inside: Uint8Array,
  dark: boolean,
  mark: (x: number, y: number, contrast: number) => void,
): void {
  const { smooth, sigma, step } = level;
  const { width, height, data } = smooth;
  const own = sigma / step;
  const least = Math.max(LEAST_CONTRAST, ABOVE_NOISE * noiseOfLevel(level, inside));
  const enough = (0.2 * least) / (own * own);
  const side = 1.8 * own + 1;
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if (!inside[i]) continue;
      const bend = data[i - 1]! + data[i + 1]! + data[i - width]! + data[i + width]! - 4 * data[i]!;
      if (dark ? bend < enough : bend > -enough) continue;
      const curve = curvature(smooth, i);
      if (vesselness(curve, own, 0.2 * least) < 0.35) continue;
      const one = sample(smooth, x + curve.dx * side, y + curve.dy * side);
      const other = sample(smooth, x - curve.dx * side, y - curve.dy * side);
      const contrast = dark ? Math.min(one, other) - data[i]! : data[i]! - Math.max(one, other);
      if (contrast >= least) mark(x, y, contrast);
    }
  }
}

function lineOf(
  found: Mask,
  pixels: Int32Array,
  scales: Scales,
  best: Float32Array,
  sigmas: Float32Array,
  dark: boolean,
): Line {
  const { width } = found;
  const thin = thinned(found, pixels);
  const line = [...pixels].filter(i => thin.data[i] === 1);
  const mean = (value: (i: number) => number) =>
    line.reduce((sum, i) => sum + value(i), 0) / Math.max(1, line.length);
  const xs = line.map(i => i % width);
  const ys = line.map(i => Math.floor(i / width));
  const span = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const mx = mean(i => i % width);
  const my = mean(i => Math.floor(i / width));
  const xx = mean(i => ((i % width) - mx) ** 2);
  const yy = mean(i => (Math.floor(i / width) - my) ** 2);
  const xy = mean(i => ((i % width) - mx) * (Math.floor(i / width) - my));
  const spread = Math.hypot(xx - yy, 2 * xy);
  return {
    pixels: line,
    length: lengthOf(line, thin.data, width),
    span,
    ...joints(line, thin.data, width),
    contrast: (dark ? -1 : 1) * mean(i => best[i]!),
    clearest:
      (dark ? -1 : 1) *
      quantile(
        line.map(i => best[i]!),
        0.8,
      ),
    hueShift: mean(i => hueShiftAt(scales, i, width, sigmas[i]!)),
    sigma: mean(i => sigmas[i]!),
    heading: Math.atan2(2 * xy, xx - yy) / 2,
    straight: spread / (xx + yy || 1),
  };
}

/** Pixels joined along a side count 1, across a corner the root of 2. */
function lengthOf(line: readonly number[], data: Uint8Array, width: number): number {
  let length = 0;
  for (const i of line) {
    const [right, below] = [data[i + 1]!, data[i + width]!];
    length += right + below;
    if (data[i + width + 1] && !right && !below) length += Math.SQRT2;
    if (data[i + width - 1] && !below && !data[i - 1]) length += Math.SQRT2;
  }
  return length;
}

/**
 * Junctions (three or more ways meet; neighbours of one are not counted again) and the closed cells that follow from
 * them and the loose ends by Euler's formula, every junction taken to be of three ways.
 */
function joints(
  line: readonly number[],
  data: Uint8Array,
  width: number,
): { junctions: number; cells: number } {
  const round = neighbours(width);
  const taken = new Set<number>();
  let junctions = 0;
  let ends = 0;
  for (const i of line) {
    let ways = 0;
    for (let k = 0; k < 8; k++) if (!data[i + round[k]!] && data[i + round[(k + 1) % 8]!]) ways++;
    if (ways === 1) ends++;
    if (ways < 3 || taken.has(i)) continue;
    junctions++;
    for (let dy = -2; dy <= 2; dy++) for (let dx = -2; dx <= 2; dx++) taken.add(i + dy * width + dx);
  }
  return { junctions, cells: Math.max(0, 1 + (junctions - ends) / 2) };
}

/** The rounded rim of a bar has a shade of its own. */
function alongRim(pixels: readonly number[], { depth, barWidth }: Face): boolean {
  return pixels.filter(i => depth[i]! < RIM * barWidth).length > 0.5 * pixels.length;
}

/** How far the colour of a line is from its ground seen in less or more light. */
function hueShiftAt({ l, a, b }: Scales, i: number, width: number, sigma: number): number {
  const x = i % width;
  const y = (i - x) / width;
  const fine = [l[1]!, a[1]!, b[1]!] as const;
  const reach = 2.2 * sigma + 3;
  const here = fine.map(level => valueAt(level, x, y)) as [number, number, number];
  const ground = fine.map(
    level =>
      (valueAt(level, x - reach, y) +
        valueAt(level, x + reach, y) +
        valueAt(level, x, y - reach) +
        valueAt(level, x, y + reach)) /
      4,
  ) as [number, number, number];
  const share = (here[0] + 16) / (ground[0] + 16);
  return Math.hypot(here[1] - ground[1] * share, here[2] - ground[2] * share);
}
