import type { Plane } from './plane.ts';

/** The middle of some values; 0 of none. Does not change them. */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/** The value below which `share` of the values lie; 0 of none. Does not change them. */
export function quantile(values: ArrayLike<number>, share: number): number {
  if (values.length === 0) return 0;
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

/**
 * Standard deviation of the noise of a picture from the mask's difference of Laplacians (J. Immerkaer, "Fast noise
 * variance estimation", CVIU 64 (1996) 300-302), taken by the median so that edges and specks do not count as noise.
 */
export function noiseOf({ width, height, data }: Plane, inside: Uint8Array): number {
  const seen: number[] = [];
  for (let y = 1; y < height - 1; y += 2) {
    for (let x = 1; x < width - 1; x += 3) {
      const i = y * width + x;
      if (!inside[i]) continue;
      const corners =
        data[i - width - 1]! + data[i - width + 1]! + data[i + width - 1]! + data[i + width + 1]!;
      const sides = data[i - width]! + data[i + width]! + data[i - 1]! + data[i + 1]!;
      seen.push(Math.abs(corners - 2 * sides + 4 * data[i]!));
    }
  }
  // The mask's weights squared sum to 36; 1.4826 takes a median deviation to a standard one.
  return (1.4826 * median(seen)) / 6;
}
