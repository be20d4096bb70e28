/** A place in pixels. */
export type Pixel = { readonly x: number; readonly y: number };

/** A rectangle at any angle: its middle, sides, and the turn of its width from the horizontal, in radians. */
export type TurnedRectangle = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly angle: number;
};

const cross = (o: Pixel, a: Pixel, b: Pixel) => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/** The convex hull, by A. M. Andrew's monotone chain (Information Processing Letters 9 (1979) 216-219). */
export function hull(points: readonly Pixel[]): Pixel[] {
  const sorted = points.toSorted((one, other) => one.x - other.x || one.y - other.y);
  const chain = (run: readonly Pixel[]) => {
    const kept: Pixel[] = [];
    for (const point of run) {
      while (kept.length > 1 && cross(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/**
 * The smallest rectangle round a convex hull: it lies along one of the hull's edges (H. Freeman and R. Shapira,
 * CACM 18 (1975) 409-413). Its angle is within 45 degrees of upright.
 */
export function smallestRectangle(points: readonly Pixel[]): TurnedRectangle {
  const quarter = Math.PI / 2;
  let best: TurnedRectangle | undefined;
  points.forEach((point, i) => {
    const next = points[(i + 1) % points.length]!;
    const edge = Math.atan2(next.y - point.y, next.x - point.x);
    const around = rectangleAt(points, edge - quarter * Math.round(edge / quarter));
    if (!best || around.width * around.height < best.width * best.height) best = around;
  });
  return best ?? rectangleAt(points, 0);
}

function rectangleAt(points: readonly Pixel[], angle: number): TurnedRectangle {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const along = points.map(({ x, y }) => x * cos + y * sin);
  const down = points.map(({ x, y }) => y * cos - x * sin);
  const [left, right] = [Math.min(...along), Math.max(...along)];
  const [top, bottom] = [Math.min(...down), Math.max(...down)];
  const u = (left + right) / 2;
  const v = (top + bottom) / 2;
  return { x: u * cos - v * sin, y: u * sin + v * cos, width: right - left, height: bottom - top, angle };
}

/** The corners of a rectangle, clockwise from the top left one. */
export function corners({ x, y, width, height, angle }: TurnedRectangle): Pixel[] {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([sx = 0, sy = 0]) => {
    const u = (sx * width) / 2;
    const v = (sy * height) / 2;
    return { x: x + u * cos - v * sin, y: y + u * sin + v * cos };
  });
}
