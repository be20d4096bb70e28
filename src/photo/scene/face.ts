import type { Pixels } from '../decode.ts';
import { blurred } from '../pixels/gaussian.ts';
import { type LightMatrix, labOf } from '../pixels/lab.ts';
import { depth, nearest } from '../pixels/nearest.ts';
import { type LabPlanes, type Mask, maskWhere, sample } from '../pixels/plane.ts';
import type { Thing } from './objects.ts';

/** The longer side of a face, in pixels, at most. */
const FACE_AT = 384;

/**
 * The bar's face turned upright. Beyond `inside` (a little within the outline, clear of its rounded edge) the planes go
 * on with the nearest colour inside, so that no filter sees an edge there.
 */
export type Face = {
  readonly width: number;
  readonly height: number;
  /** The bar's own width in these pixels: lengths are told as fractions of it. */
  readonly barWidth: number;
  readonly lab: LabPlanes;
  readonly inside: Uint8Array;
  /** Share of the face that is blown out. */
  readonly glare: number;
  /** Face pixels to a pixel of the photo. */
  readonly scale: number;
};

const BLOWN_OUT = 252;

/** Turns a bar upright; `factor` is how much smaller the picture was in which the bar was found. */
export function faceOf(photo: Pixels, bar: Thing, factor: number, light: LightMatrix): Face {
  const { rectangle } = bar;
  const scale = Math.min(1, FACE_AT / (Math.max(rectangle.width, rectangle.height) * factor));
  const width = Math.max(16, Math.round(rectangle.width * factor * scale));
  const height = Math.max(16, Math.round(rectangle.height * factor * scale));
  const cos = Math.cos(rectangle.angle) / scale;
  const sin = Math.sin(rectangle.angle) / scale;
  const inPhoto = (x: number, y: number) => {
    const u = x - width / 2;
    const v = y - height / 2;
    return { x: rectangle.x * factor + u * cos - v * sin, y: rectangle.y * factor + u * sin + v * cos };
  };
  const pixels = turned(photo, width, height, inPhoto);
  const outline = outlineOf(bar, width, height, (x, y) => {
    const at = inPhoto(x, y);
    return { x: at.x / factor, y: at.y / factor };
  });
  const deep = depth(outline);
  const margin = 0.012 * Math.min(width, height) + Math.max(1.5, 0.75 * factor * scale);
  const inside = maskWhere(width, height, i => deep[i]! > margin);
  const lab = extended(labOf(pixels, light), inside);
  return {
    width,
    height,
    barWidth: width,
    lab,
    inside: inside.data,
    glare: glareOf(pixels, inside),
    scale,
  };
}

type Map2 = (x: number, y: number) => { x: number; y: number };

function turned(
  { width: wide, height: high, rgb }: Pixels,
  width: number,
  height: number,
  from: Map2,
): Pixels {
  const out = new Uint8Array(width * height * 3);
  // The way is straight: step along it instead of asking for each pixel.
  const start = from(0.5, 0.5);
  const right = from(1.5, 0.5);
  const down = from(0.5, 1.5);
  const [rx, ry] = [right.x - start.x, right.y - start.y];
  const [dx, dy] = [down.x - start.x, down.y - start.y];
  for (let y = 0, to = 0; y < height; y++) {
    for (let x = 0; x < width; x++, to += 3) {
      const sx = Math.min(Math.max(start.x + rx * x + dx * y - 0.5, 0), wide - 1.001);
      const sy = Math.min(Math.max(start.y + ry * x + dy * y - 0.5, 0), high - 1.001);
      const x0 = sx | 0;
      const y0 = sy | 0;
      const fx = sx - x0;
      const fy = sy - y0;
      const at = (y0 * wide + x0) * 3;
      const below = at + wide * 3;
      for (let c = 0; c < 3; c++) {
        const top = rgb[at + c]! + (rgb[at + 3 + c]! - rgb[at + c]!) * fx;
        const bottom = rgb[below + c]! + (rgb[below + 3 + c]! - rgb[below + c]!) * fx;
        out[to + c] = top + (bottom - top) * fy + 0.5;
      }
    }
  }
  return { width, height, rgb: out };
}

function outlineOf({ mask }: Thing, width: number, height: number, from: Map2): Mask {
  const soft = blurred({ ...mask, data: Float32Array.from(mask.data) }, 1);
  const start = from(0.5, 0.5);
  const right = from(1.5, 0.5);
  const down = from(0.5, 1.5);
  const out = { width, height, data: new Uint8Array(width * height) };
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const sx = start.x + (right.x - start.x) * x + (down.x - start.x) * y - 0.5;
      const sy = start.y + (right.y - start.y) * x + (down.y - start.y) * y - 0.5;
      if (sample(soft, sx, sy) > 0.5) out.data[i] = 1;
    }
  }
  return out;
}

function extended(lab: LabPlanes, inside: Mask): LabPlanes {
  const { index } = nearest(inside);
  for (const { data } of [lab.l, lab.a, lab.b])
    for (let i = 0; i < data.length; i++)
      if (inside.data[i] === 0 && index[i]! >= 0) data[i] = data[index[i]!]!;
  return lab;
}

function glareOf({ rgb }: Pixels, { data }: Mask): number {
  let blown = 0;
  let all = 0;
  for (let i = 0; i < data.length; i++) {
    if (!data[i]) continue;
    all++;
    if (Math.min(rgb[3 * i]!, rgb[3 * i + 1]!, rgb[3 * i + 2]!) >= BLOWN_OUT) blown++;
  }
  return blown / Math.max(1, all);
}
