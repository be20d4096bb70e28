import type { Mask } from './plane.ts';

/** A connected piece of a mask: its label (from 1), its pixel indices, and the box they lie in. */
export type Component = {
  readonly label: number;
  readonly pixels: Int32Array;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** The 8-connected pieces of a mask of at least `least` pixels. */
export function components({ width, height, data }: Mask, least = 1): Component[] {
  const seen = new Uint8Array(data.length);
  const stack = new Int32Array(data.length);
  const found: Component[] = [];
  for (let start = 0; start < data.length; start++) {
    if (!data[start] || seen[start]) continue;
    seen[start] = 1;
    stack[0] = start;
    let read = 0;
    let end = 1;
    let left = width;
    let right = 0;
    let top = height;
    let bottom = 0;
    while (read < end) {
      const at = stack[read++]!;
      const x = at % width;
      const y = (at - x) / width;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
      for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
        for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
          const next = ny * width + nx;
          if (!data[next] || seen[next]) continue;
          seen[next] = 1;
          stack[end++] = next;
        }
      }
    }
    if (end >= least)
      found.push({ label: found.length + 1, pixels: stack.slice(0, end), left, top, right, bottom });
  }
  return found;
}

/** The mask with every hole filled that does not reach the picture's edge. */
export function filled({ width, height, data }: Mask): Mask {
  const outside = new Uint8Array(data.length);
  const stack: number[] = [];
  const visit = (i: number) => {
    if (data[i] || outside[i]) return;
    outside[i] = 1;
    stack.push(i);
  };
  for (let x = 0; x < width; x++) {
    visit(x);
    visit((height - 1) * width + x);
  }
  for (let y = 0; y < height; y++) {
    visit(y * width);
    visit(y * width + width - 1);
  }
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    const x = at % width;
    if (x > 0) visit(at - 1);
    if (x < width - 1) visit(at + 1);
    if (at >= width) visit(at - width);
    if (at < data.length - width) visit(at + width);
  }
  return { width, height, data: outside.map(value => 1 - value) };
}
