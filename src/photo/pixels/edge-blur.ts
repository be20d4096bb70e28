import type { Plane } from './plane.ts';
import { quantile } from './quantile.ts';

const REACH = 10;
const LEAST_STEP = 12;
const SLOPE_VARIANCE = 1 / 3;

/**
 * The blur of a picture, as the standard deviation in pixels of the bell that would make its sharpest edges so soft:
 * the height of an edge over its steepest slope is sqrt(2 pi) sigma for a step seen through a Gaussian (after
 * P. Marziliano and others, "A no-reference perceptual blur metric", ICIP 2002). Infinity where there is no edge.
 */
export function edgeBlur({ width, height, data }: Plane, inside?: Uint8Array): number {
  const widths: number[] = [];
  for (let y = REACH; y < height - REACH; y += 3) {
    for (let x = REACH; x < width - REACH; x++) {
      const i = y * width + x;
      if (inside && !inside[i]) continue;
      const across = slope(data, i, 1);
      const down = slope(data, i, width);
      const step = Math.abs(across) > Math.abs(down) ? 1 : width;
      const steepest = step === 1 ? across : down;
      if (Math.abs(steepest) < 1) continue;
      if (Math.abs(slope(data, i - step, step)) > Math.abs(steepest)) continue;
      if (Math.abs(slope(data, i + step, step)) > Math.abs(steepest)) continue;
      const sign = Math.sign(steepest);
      let from = 0;
      while (from < REACH - 1 && sign * (data[i - from * step]! - data[i - (from + 1) * step]!) > 0) from++;
      let to = 0;
      while (to < REACH - 1 && sign * (data[i + (to + 1) * step]! - data[i + to * step]!) > 0) to++;
      const rise = Math.abs(data[i + to * step]! - data[i - from * step]!);
      if (rise >= LEAST_STEP) widths.push(rise / Math.abs(steepest) / Math.sqrt(2 * Math.PI));
    }
  }
  if (widths.length < 12) return Number.POSITIVE_INFINITY;
  // A slope over two pixels has seen a box that wide: its variance is not the picture's.
  return Math.sqrt(Math.max(0.1, quantile(widths, 0.15) ** 2 - SLOPE_VARIANCE));
}

const slope = (data: Float32Array, at: number, step: number) => (data[at + step]! - data[at - step]!) / 2;
