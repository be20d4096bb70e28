import { type Component, components, filled } from '../pixels/components.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { otsu } from '../pixels/otsu.ts';
import { type Mask, mask, maskWhere, type Plane } from '../pixels/plane.ts';
import { hull, type Pixel, polygonArea, smallestRectangle, type TurnedRectangle } from '../pixels/polygon.ts';

/** A whole thing on the background: its pixels, hull and the rectangle round it. */
export type Thing = {
  readonly mask: Mask;
  readonly area: number;
  readonly hull: readonly Pixel[];
  readonly rectangle: TurnedRectangle;
  /** Area over the area of the hull, and of the rectangle; 1 for a perfect bar. */
  readonly solidity: number;
  readonly rectangularity: number;
  /** The share of the picture's edge pixels within its outline's length. */
  readonly onEdge: number;
};

/** Below this difference from the background nothing is a thing; above, Otsu's threshold decides. */
const LEAST_DIFFERENCE = 7;
const MOST_DIFFERENCE = 14;
const LEAST_AREA = 0.03;

/** The threshold of difference between background and things. */
export const thingsThreshold = ({ data }: Plane): number =>
  Math.min(Math.max(otsu(data.map(Math.sqrt), 0, 9) ** 2, LEAST_DIFFERENCE), MOST_DIFFERENCE);

/** The pixels of a picture that are not background, cleaned of specks and closed over gaps. */
export function notBackground(unlike: Plane): Mask {
  const threshold = thingsThreshold(unlike);
  const raw = maskWhere(unlike.width, unlike.height, i => unlike.data[i]! > threshold);
  return filled(grown(shrunk(shrunk(grown(raw, 2.5), 2.5), 2.5), 2.5));
}

/** The things of a mask that are large enough to be a bar, largest first. */
export function thingsIn(source: Mask): Thing[] {
  const least = source.width * source.height * LEAST_AREA;
  return components(source, least)
    .map(piece => thing(piece, source))
    .toSorted((one, other) => other.area - one.area);
}

/** Area over hull area of the largest piece of a mask: paper has straight edges. */
export function solidityOf(source: Mask): number {
  const largest = components(source).toSorted((one, other) => other.pixels.length - one.pixels.length)[0];
  return largest ? largest.pixels.length / polygonArea(hull(rim(source, largest))) : 0;
}

function thing(piece: Component, { width, height }: Mask): Thing {
  const whole = mask(width, height);
  for (const pixel of piece.pixels) whole.data[pixel] = 1;
  const outline = hull(rim(whole, piece));
  const rectangle = smallestRectangle(outline);
  const area = piece.pixels.length;
  let edge = 0;
  for (const pixel of piece.pixels) {
    const x = pixel % width;
    const y = (pixel - x) / width;
    if (x === 0 || y === 0 || x === width - 1 || y === height - 1) edge++;
  }
  return {
    mask: whole,
    area,
    hull: outline,
    rectangle,
    solidity: area / Math.max(1, polygonArea(outline)),
    rectangularity: area / Math.max(1, rectangle.width * rectangle.height),
    onEdge: edge / (2 * (rectangle.width + rectangle.height)),
  };
}

/** The corners of the first and last pixel of each row: enough for the hull. */
export function rim({ width, data }: Mask, { left, right, top, bottom }: Component): Pixel[] {
  const points: Pixel[] = [];
  for (let y = top; y <= bottom; y++) {
    let first = left;
    while (first <= right && !data[y * width + first]) first++;
    if (first > right) continue;
    let last = right;
    while (!data[y * width + last]) last--;
    points.push({ x: first, y }, { x: first, y: y + 1 }, { x: last + 1, y }, { x: last + 1, y: y + 1 });
  }
  return points;
}
