import { type Mask, maskWhere } from './plane.ts';

/** For each pixel the index of the nearest set pixel of a mask, and how far it is in pixels. */
export type Nearest = { readonly index: Int32Array; readonly distance: Float32Array };

/**
 * Nearest set pixel by two sweeps over the picture (P.-E. Danielsson, "Euclidean distance mapping", Computer Graphics
 * and Image Processing 14 (1980) 227-248); off by less than a pixel in rare corners. -1 and Infinity in an empty mask.
 */
export function nearest({ width, height, data }: Mask): Nearest {
  const index = new Int32Array(data.length).fill(-1);
  const squared = new Float32Array(data.length).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i < data.length; i++) {
    if (!data[i]) continue;
    index[i] = i;
    squared[i] = 0;
  }
  const offer = (at: number, x: number, y: number, from: number) => {
    const seed = index[from]!;
    if (seed < 0) return;
    const sx = seed % width;
    const dx = x - sx;
    const dy = y - (seed - sx) / width;
    const length = dx * dx + dy * dy;
    if (length >= squared[at]!) return;
    squared[at] = length;
    index[at] = seed;
  };
  const sweep = (y: number, back: number) => {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const at = row + x;
      if (squared[at] === 0) continue;
      if (back >= 0) {
        offer(at, x, y, back + x);
        if (x > 0) offer(at, x, y, back + x - 1);
        if (x < width - 1) offer(at, x, y, back + x + 1);
      }
      if (x > 0) offer(at, x, y, at - 1);
    }
    for (let x = width - 2; x >= 0; x--) offer(row + x, x, y, row + x + 1);
  };
  for (let y = 0; y < height; y++) sweep(y, y > 0 ? (y - 1) * width : -1);
  for (let y = height - 1; y >= 0; y--) sweep(y, y < height - 1 ? (y + 1) * width : -1);
  return { index, distance: squared.map(Math.sqrt) };
}

const opposite = ({ width, height, data }: Mask): Mask => maskWhere(width, height, i => data[i] === 0);

/** The distance of every pixel of a mask to the nearest pixel outside it; the picture's edge counts as outside. */
export function depth({ width, height, data }: Mask): Float32Array {
  const wide = width + 2;
  const framed = maskWhere(wide, height + 2, i => {
    const x = (i % wide) - 1;
    const y = Math.floor(i / wide) - 1;
    return x < 0 || y < 0 || x >= width || y >= height || data[y * width + x] === 0;
  });
  const { distance } = nearest(framed);
  const out = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    out.set(distance.subarray((y + 1) * wide + 1, (y + 1) * wide + 1 + width), y * width);
  return out;
}

/** The mask grown by a disc of `radius` pixels. */
export function grown(source: Mask, radius: number): Mask {
  const { distance } = nearest(source);
  return maskWhere(source.width, source.height, i => distance[i]! <= radius);
}

/** The mask shrunk by a disc of `radius` pixels. */
export function shrunk(source: Mask, radius: number): Mask {
  const { distance } = nearest(opposite(source));
  return maskWhere(source.width, source.height, i => distance[i]! > radius);
}
