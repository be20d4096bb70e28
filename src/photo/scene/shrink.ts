import type { Pixels } from '../decode.ts';

/** The picture with every `factor` by `factor` pixels averaged; odd edges are dropped. */
export function shrink({ width, height, rgb }: Pixels, factor: number): Pixels {
  const small = { width: Math.floor(width / factor), height: Math.floor(height / factor) };
  const out = new Uint8Array(small.width * small.height * 3);
  const sums = new Uint32Array(small.width * 3);
  for (let y = 0; y < small.height; y++) {
    sums.fill(0);
    for (let dy = 0; dy < factor; dy++) {
      let from = (y * factor + dy) * width * 3;
      for (let x = 0; x < small.width; x++) {
        for (let dx = 0; dx < factor; dx++, from += 3) {
          sums[3 * x]! += rgb[from]!;
          sums[3 * x + 1]! += rgb[from + 1]!;
          sums[3 * x + 2]! += rgb[from + 2]!;
        }
      }
    }
    const row = y * small.width * 3;
    for (let i = 0; i < sums.length; i++) out[row + i] = sums[i]! / (factor * factor);
  }
  return { ...small, rgb: out };
}
