import { type Component, components, filled } from '../pixels/components.ts';
import { type Mask, mask } from '../pixels/plane.ts';
import { hull, type Pixel, smallestRectangle, type TurnedRectangle } from '../pixels/polygon.ts';

/** A whole thing in the picture: its pixels and the rectangle round it. */
export type Thing = {
  readonly mask: Mask;
  readonly area: number;
  readonly rectangle: TurnedRectangle;
  /** Area over the area of the rectangle; 1 for a perfect bar. */
  readonly rectangularity: number;
};

/** A piece with less of the picture than this is no bar. */
const LEAST_AREA = 0.004;

/** The things of a mask that are large enough to be a bar, largest first. */
export function thingsIn(source: Mask): Thing[] {
  const least = source.width * source.height * LEAST_AREA;
  return components(filled(source), least)
    .map(piece => thing(piece, source))
    .toSorted((one, other) => other.area - one.area);
}

function thing(piece: Component, { width, height }: Mask): Thing {
  const whole = mask(width, height);
  for (const pixel of piece.pixels) whole.data[pixel] = 1;
  const outline = hull(rim(whole, piece));
  const rectangle = smallestRectangle(outline);
  const area = piece.pixels.length;
  return {
    mask: whole,
    area,
    rectangle,
    rectangularity: area / Math.max(1, rectangle.width * rectangle.height),
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
