import type { Pixels } from '../decode.ts';

/** A square of a picture: its middle and half its side, in the picture's pixels. It may reach beyond the picture. */
export type Square = { readonly x: number; readonly y: number; readonly half: number };

/** The square that holds the whole picture. */
export const wholeSquare = ({ width, height }: Pick<Pixels, 'width' | 'height'>): Square => ({
  x: width / 2,
  y: height / 2,
  half: Math.max(width, height) / 2,
});

/**
 * A square of the picture brought to `side` x `side`, sRGB 0 to 1, red, green and blue one after another. Beyond the
 * picture its edge goes on. Larger squares are averaged: as many places to a pixel as it holds, each between four.
 */
export function cutSquare(photo: Pixels, { x, y, half }: Square, side: number): Float32Array {
  const scale = (2 * half) / side;
  const places = Math.max(1, Math.round(scale));
  const fine = side * places;
  const columns = tapsAlong(x - half, scale / places, fine, photo.width);
  const rows = tapsAlong(y - half, scale / places, fine, photo.height);
  const out = new Float32Array(3 * side * side);
  const weight = 1 / (255 * places * places);
  for (let row = 0; row < side; row++) {
    const at = row * side;
    for (let dy = 0; dy < places; dy++) addRow(out, at, photo, columns, rows, row * places + dy, places);
  }
  for (let i = 0; i < out.length; i++) out[i]! *= weight;
  return out;
}

/** For each place the pixel before it and how far it is to the next. */
type Taps = { readonly first: Int32Array; readonly part: Float32Array };

function tapsAlong(start: number, step: number, count: number, length: number): Taps {
  const first = new Int32Array(count);
  const part = new Float32Array(count);
  for (let i = 0; i < count; i++) {
    const place = Math.min(Math.max(start + (i + 0.5) * step - 0.5, 0), length - 1);
    first[i] = Math.min(Math.floor(place), Math.max(0, length - 2));
    part[i] = length > 1 ? place - first[i]! : 0;
  }
  return { first, part };
}

function addRow(
  out: Float32Array,
  at: number,
  { width, height, rgb }: Pixels,
  columns: Taps,
  rows: Taps,
  row: number,
  places: number,
): void {
  const plane = out.length / 3;
  const side = columns.first.length / places;
  const fy = rows.part[row]!;
  const top = rows.first[row]! * width * 3;
  const bottom = height > 1 ? top + width * 3 : top;
  const next = width > 1 ? 3 : 0;
  for (let column = 0, i = 0; column < side; column++) {
    for (let dx = 0; dx < places; dx++, i++) {
      const fx = columns.part[i]!;
      const left = columns.first[i]! * 3;
      for (let c = 0; c < 3; c++) {
        const a = top + left + c;
        const b = bottom + left + c;
        const above = rgb[a]! + (rgb[a + next]! - rgb[a]!) * fx;
        const below = rgb[b]! + (rgb[b + next]! - rgb[b]!) * fx;
        out[c * plane + at + column]! += above + (below - above) * fy;
      }
    }
  }
}
