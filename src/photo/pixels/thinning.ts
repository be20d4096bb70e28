import type { Mask } from './plane.ts';

/**
 * A mask worn down to lines one pixel wide (T. Y. Zhang and C. Y. Suen, "A fast parallel algorithm for thinning digital
 * patterns", CACM 27 (1984) 236-239). Only the listed pixels are looked at; the picture's rim is cleared.
 */
export function thinned({ width, height, data }: Mask, pixels: ArrayLike<number>): Mask {
  const out = data.slice();
  let live = Array.from(pixels).filter(i => {
    const x = i % width;
    const y = (i - x) / width;
    if (x > 0 && y > 0 && x < width - 1 && y < height - 1) return out[i] === 1;
    out[i] = 0;
    return false;
  });
  for (let changed = true; changed; ) {
    changed = false;
    for (const second of [false, true]) {
      const gone = live.filter(i => removable(out, width, i, second));
      for (const i of gone) out[i] = 0;
      if (gone.length > 0) {
        changed = true;
        live = live.filter(i => out[i] === 1);
      }
    }
  }
  return { width, height, data: out };
}

/** The eight neighbours clockwise from above. */
export const neighbours = (width: number): readonly number[] => [
  -width,
  -width + 1,
  1,
  width + 1,
  width,
  width - 1,
  -1,
  -width - 1,
];

function removable(data: Uint8Array, width: number, i: number, second: boolean): boolean {
  const n = data[i - width]!;
  const ne = data[i - width + 1]!;
  const e = data[i + 1]!;
  const se = data[i + width + 1]!;
  const s = data[i + width]!;
  const sw = data[i + width - 1]!;
  const w = data[i - 1]!;
  const nw = data[i - width - 1]!;
  const count = n + ne + e + se + s + sw + w + nw;
  if (count < 2 || count > 6) return false;
  const rise = (from: number, to: number) => (from === 0 && to === 1 ? 1 : 0);
  const rises =
    rise(n, ne) +
    rise(ne, e) +
    rise(e, se) +
    rise(se, s) +
    rise(s, sw) +
    rise(sw, w) +
    rise(w, nw) +
    rise(nw, n);
  if (rises !== 1) return false;
  return second ? n * e * w === 0 && n * s * w === 0 : n * e * s === 0 && e * s * w === 0;
}
