import { labResponse } from '../../engine/colour/spectra/cielab.ts';
import { WHITE_POINT } from '../../engine/colour/spectra/observer.ts';
import type { Pixels } from '../decode.ts';
import { type LabPlanes, plane } from './plane.ts';

/**
 * Takes linear sRGB to tristimulus values over those of white: nine numbers, row by row. The light of the picture is
 * taken out in the same step.
 */
export type LightMatrix = readonly number[];

/** sRGB's primaries (IEC 61966-2-1) over the white point the engine reads colours under: white is L* 100, no hue. */
export const AS_SEEN: LightMatrix = [
  [0.4124, 0.3576, 0.1805, WHITE_POINT.x],
  [0.2126, 0.7152, 0.0722, 1],
  [0.0193, 0.1192, 0.9505, WHITE_POINT.z],
].flatMap(([r = 0, g = 0, b = 0, white = 1]) => {
  // Each row is scaled so that white is exactly white: the two white points differ in their fourth decimal.
  const total = (r + g + b) / white;
  return [r / white / total, g / white / total, b / white / total];
});

/** Linear light, 0 to 1, of each 8-bit sRGB value (IEC 61966-2-1). */
export const LINEAR: Float32Array = Float32Array.from({ length: 256 }, (_, value) => {
  const v = value / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
});

// The cube root of CIELAB is looked up between these many stops up to twice white, since balancing may brighten.
const STOPS = 8192;
const MOST = 2;
const RESPONSE = Float32Array.from({ length: STOPS + 2 }, (_, i) => labResponse((i / STOPS) * MOST));

function response(ratio: number): number {
  const at = Math.min(Math.max(ratio, 0), MOST - 1e-6) * (STOPS / MOST);
  const i = Math.floor(at);
  const low = RESPONSE[i]!;
  return low + (RESPONSE[i + 1]! - low) * (at - i);
}

const labPlanes = (width: number, height: number): LabPlanes => ({
  l: plane(width, height),
  a: plane(width, height),
  b: plane(width, height),
});

/** The picture in CIELAB (D65) under the light that `matrix` takes out. */
export function labOf({ width, height, rgb }: Pixels, matrix: LightMatrix = AS_SEEN): LabPlanes {
  const planes = labPlanes(width, height);
  const [xr = 0, xg = 0, xb = 0, yr = 0, yg = 0, yb = 0, zr = 0, zg = 0, zb = 0] = matrix;
  for (let i = 0, at = 0; i < width * height; i++, at += 3) {
    const r = LINEAR[rgb[at]!]!;
    const g = LINEAR[rgb[at + 1]!]!;
    const b = LINEAR[rgb[at + 2]!]!;
    const fx = response(xr * r + xg * g + xb * b);
    const fy = response(yr * r + yg * g + yb * b);
    const fz = response(zr * r + zg * g + zb * b);
    planes.l.data[i] = 116 * fy - 16;
    planes.a.data[i] = 500 * (fx - fy);
    planes.b.data[i] = 200 * (fy - fz);
  }
  return planes;
}
