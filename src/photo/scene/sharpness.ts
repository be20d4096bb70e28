import type { Pixels } from '../decode.ts';
import { edgeBlur } from '../pixels/edge-blur.ts';
import { halved, type Plane, plane } from '../pixels/plane.ts';

/** Blur assumed where a picture has no edge to judge by, in pixels. */
const UNKNOWN = 2;
/** The mean of two pixels each way has blurred by itself: its variance in pixels of half the size. */
const HALVING_VARIANCE = 1 / 12;
/** Edges softer than this many pixels are not followed to their ends: a quarter and an eighth of the size serve then. */
const FOLLOWED = 4;
const HALVINGS = 3;

/**
 * The blur of a whole picture by its sharpest edges: a standard deviation in its own pixels. Reads green alone at half
 * the size, where grain makes no edges.
 */
export function pictureBlur(photo: Pixels): number {
  let green = greenHalved(photo);
  for (let halving = 1; halving <= HALVINGS; halving++, green = halved(green)) {
    const blur = edgeBlur(green);
    if (blur < FOLLOWED || (halving === HALVINGS && Number.isFinite(blur)))
      return 2 ** halving * Math.sqrt(Math.max(0.02, blur * blur - HALVING_VARIANCE));
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
