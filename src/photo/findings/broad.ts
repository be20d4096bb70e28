import { BROAD_LEVEL, insideAt, planesAt, type Sight } from './sight.ts';

/** A pixel of the broad view: place from the middle (-1 to 1 each way), share of the way in from the outline, colour. */
export type Broad = {
  readonly width: number;
  readonly height: number;
  readonly l: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  readonly inside: Uint8Array;
  /** L* with the slope of the light across the bar taken out. */
  readonly level: Float32Array;
  /** Distance from the outline over the greatest there is: 0 at the rim, 1 at the heart. */
  readonly depth: Float32Array;
};

/** The face at a quarter of its size, evenly lit. */
export function broadView({ face, scales }: Sight): Broad {
  const level = scales.l[BROAD_LEVEL]!;
  const { l, a, b } = planesAt(scales, BROAD_LEVEL);
  const { width, height } = l;
  const inside = insideAt(face, level);
  const depth = new Float32Array(width * height);
  let deepest = 1;
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i++) {
      depth[i] = face.depth[(y * level.step + 2) * face.width + x * level.step + 2] ?? 0;
      deepest = Math.max(deepest, depth[i]!);
    }
  return {
    width,
    height,
    l: l.data,
    a: a.data,
    b: b.data,
    inside,
    level: evenlyLit(l.data, inside, width, height),
    depth: depth.map(value => value / deepest),
  };
}

/** Takes the least-squares plane out of L*: the slope of the light, about the same mean. */
function evenlyLit(l: Float32Array, inside: Uint8Array, width: number, height: number): Float32Array {
  let n = 0;
  let [mx, my, ml] = [0, 0, 0];
  each((x, y, i) => {
    n++;
    mx += x;
    my += y;
    ml += l[i]!;
  });
  [mx, my, ml] = [mx / n, my / n, ml / n];
  let [xx, yy, xy, xl, yl] = [1e-6, 1e-6, 0, 0, 0];
  each((x, y, i) => {
    xx += (x - mx) ** 2;
    yy += (y - my) ** 2;
    xy += (x - mx) * (y - my);
    xl += (x - mx) * (l[i]! - ml);
    yl += (y - my) * (l[i]! - ml);
  });
  const determinant = xx * yy - xy * xy;
  const right = (xl * yy - yl * xy) / determinant;
  const down = (yl * xx - xl * xy) / determinant;
  return l.map((value, i) => value - right * ((i % width) - mx) - down * (Math.floor(i / width) - my));

  function each(visit: (x: number, y: number, i: number) => void) {
    for (let y = 0, i = 0; y < height; y++)
      for (let x = 0; x < width; x++, i++) if (inside[i]) visit(x, y, i);
  }
}
