import type { Pixels } from '../decode.ts';
import { edgeBlur } from '../pixels/edge-blur.ts';
import { halved, type Plane, plane } from '../pixels/plane.ts';

/** Blur assumed where a picture has no edge to judge by, in pixels. */
const UNKNOWN = 2;
/** The mean of two pixels each way has blurred by itself: its variance in pixels of half the size. */
const HALVING_VARIANCE = 1 / 12;
/** Halvings that are looked at, the coarsest first. */
const HALVINGS = 3;
/** Edges at least this soft, in pixels of the size looked at, are resolved there; sharper ones need a finer look. */
const RESOLVED = 1;

/**
 * The blur of a whole picture by its sharpest edges: a standard deviation in its own pixels. Reads green alone, at half
 * the size or less, and believes the coarsest look that resolves the edges: grain and the blocks of JPEG make edges of
 * their own in a finer one.
 */
export function pictureBlur(photo: Pixels): number {
  const looks: Plane[] = [greenHalved(photo)];
  while (looks.length < HALVINGS) looks.push(halved(looks.at(-1)!));
  for (let at = HALVINGS - 1; at >= 0; at--) {
    const blur = edgeBlur(looks[at]!);
    if (Number.isFinite(blur) && (blur >= RESOLVED || at === 0))
      return 2 ** (at + 1) * Math.sqrt(Math.max(0.02, blur * blur - HALVING_VARIANCE));
  }
  return UNKNOWN;
}

function greenHalved({ width, height, rgb }: Pixels): Plane {
  const green = plane(width >> 1, height >> 1);
  for (let y = 0, i = 0; y < green.height; y++) {
    for (let x = 0; x < green.width; x++, i++) {
      const at = 3 * (2 * y * width + 2 * x) + 1;
      const below = at + 3 * width;
      green.data[i] = (rgb[at]! + rgb[at + 3]! + rgb[below]! + rgb[below + 3]!) * (100 / 255 / 4);
    }
  }
  return green;
}
