import { type Component, components } from '../pixels/components.ts';
import { type Mask, maskWhere, type Plane } from '../pixels/plane.ts';
import type { Box, Outline, Point, Region } from '../reading.ts';

/** Outlines of at most so many places are drawn: more would hide the bar. */
const MOST_PLACES = 60;
/** A place no longer than this part of the map is a dot: it gets a circle. */
const DOT = 0.055;
/** A dot's circle is this many pixels of the map wider than the dot, so that the dot shows inside it. */
const CLEAR = 1.6;
/** Points of an outline nearer than this to the line between their neighbours are left out (map pixels). */
const STRAIGHT = 0.8;

/** Where a finding is on the map, and what was measured there; lengths and areas are of the bar. */
export type Places = {
  readonly region: Region;
  readonly share: number;
  readonly count: number;
  /** The middle place's size: the diameter of a circle of its area, in bar widths. */
  readonly size: number;
};

/**
 * Turns a map of chances into places. `level` is the chance from which a pixel belongs; a finding that was answered
 * although no pixel reaches it is where its map is highest. `place` says where a pixel of the map is in the picture,
 * `unit` how wide it is there as a fraction of the picture's width.
 */
export function placesOf(
  map: Plane,
  bar: Mask,
  barWidth: number,
  place: (x: number, y: number) => Point,
  unit: number,
): Places {
  const { width, height, data } = map;
  let highest = 0;
  for (let i = 0; i < data.length; i++) if (bar.data[i]) highest = Math.max(highest, data[i]!);
  const level = Math.min(0.5, 0.6 * highest);
  const found = maskWhere(width, height, i => bar.data[i] === 1 && data[i]! >= level && highest > 0);
  const pieces = components(found).toSorted((one, other) => other.pixels.length - one.pixels.length);
  const area = bar.data.reduce((sum, value) => sum + value, 0);
  const covered = pieces.reduce((sum, { pixels }) => sum + pixels.length, 0);
  const middle = pieces[pieces.length >> 1]?.pixels.length ?? 0;
  const outlines = pieces.slice(0, MOST_PLACES).map(piece => outlineOf(piece, found, place, unit));
  return {
    region: { box: boxOf(pieces, place), outlines },
    share: covered / Math.max(1, area),
    count: pieces.length,
    size: (2 * Math.sqrt(middle / Math.PI)) / Math.max(1, barWidth),
  };
}

function outlineOf(
  piece: Component,
  { width }: Mask,
  place: (x: number, y: number) => Point,
  unit: number,
): Outline {
  const long = Math.max(piece.right - piece.left, piece.bottom - piece.top) + 1;
  if (long <= DOT * width)
    return {
      kind: 'circle',
      at: place((piece.left + piece.right + 1) / 2, (piece.top + piece.bottom + 1) / 2),
      radius: (long / 2 + CLEAR) * unit,
    };
  const points = straightened(borderOf(piece, width)).map(([x, y]) => place(x, y));
  return { kind: 'path', points, closed: true };
}

type Corner = readonly [number, number];

/** The outer border of a piece along its pixels' edges, clockwise from its top left corner. */
function borderOf({ pixels }: Component, width: number): Corner[] {
  const own = new Set(pixels);
  const holds = (x: number, y: number) => x >= 0 && x < width && own.has(y * width + x);
  const first = pixels.reduce((least, at) => Math.min(least, at), pixels[0] ?? 0);
  const start: Corner = [first % width, Math.floor(first / width)];
  const border: Corner[] = [];
  let [x, y] = start;
  // Eastward along the top edge of the first pixel, the piece on the right hand.
  let [dx, dy] = [1, 0];
  do {
    border.push([x, y]);
    [x, y] = [x + dx, y + dy];
    const ahead: Corner = [x + (dx - dy - 1) / 2, y + (dy + dx - 1) / 2];
    const left: Corner = [x + (dx + dy - 1) / 2, y + (dy - dx - 1) / 2];
    if (holds(...left)) [dx, dy] = [dy, -dx];
    else if (!holds(...ahead)) [dx, dy] = [-dy, dx];
  } while (x !== start[0] || y !== start[1] || dx !== 1);
  return border;
}

/** Fewer points, none further than {@link STRAIGHT} off (D. H. Douglas and T. K. Peucker, Cartographica 10 (1973) 112-122). */
function straightened(points: readonly Corner[]): Corner[] {
  if (points.length < 8) return [...points];
  const half = points.length >> 1;
  const closed = [...points, points[0]!];
  return [...between(closed, 0, half), ...between(closed, half, points.length)];
}

function between(points: readonly Corner[], from: number, to: number): Corner[] {
  const [ax, ay] = points[from]!;
  const [bx, by] = points[to]!;
  const length = Math.hypot(bx - ax, by - ay) || 1;
  let farthest = -1;
  let most = STRAIGHT;
  for (let i = from + 1; i < to; i++) {
    const [x, y] = points[i]!;
    const off = Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / length;
    if (off > most) [most, farthest] = [off, i];
  }
  if (farthest < 0) return [points[from]!];
  return [...between(points, from, farthest), ...between(points, farthest, to)];
}

function boxOf(pieces: readonly Component[], place: (x: number, y: number) => Point): Box {
  if (pieces.length === 0) return { x: 0, y: 0, width: 0, height: 0 };
  const clamp = (value: number) => Math.min(1, Math.max(0, value));
  const low = place(Math.min(...pieces.map(one => one.left)), Math.min(...pieces.map(one => one.top)));
  const high = place(
    Math.max(...pieces.map(one => one.right)) + 1,
    Math.max(...pieces.map(one => one.bottom)) + 1,
  );
  const [x, y] = [clamp(low.x), clamp(low.y)];
  return { x, y, width: clamp(high.x) - x, height: clamp(high.y) - y };
}
