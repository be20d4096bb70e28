import type { Outline } from '../reading.ts';
import type { Face } from '../scene/face.ts';
import { type Line, linesOf } from './lines.ts';
import { boxRound } from './region.ts';
import type { Found, Sight } from './sight.ts';
import type { Speck } from './specks.ts';

/** Darker than its sides by this share of the bar's own lightness (L* + 16) and long: a gap, not a vein. */
const CRACK = 0.115;
/** Lines that differ in hue more than in light are drawn on purpose. */
const SWIRL_SHIFT = 5;
/** Lines longer than this share of the bar's width are no row of specks. */
const SPECKLED = 0.12;
/** Stubs shorter than this many pixels are not drawn. */
const SHORTEST_BRANCH = 10;
/** Total length, in widths of the bar, that makes a finding. */
const LEAST_TOTAL = 0.5;
/** Closed cells that no single crack draws. */
const NETWORK = 7;
/** A net of fine cells has much length of line to each area, and its lines are thin: the one over the other, in widths. */
const FINE_NET = 1500;

/** Veins, networks, drag lines and cracks, but for lines that specks or a film (`veiled`) explain. */
export function lineFindings(
  sight: Sight,
  specks: readonly Speck[],
  veiled: (line: Line) => boolean,
): LinesSeen {
  const clear = (line: Line) => !veiled(line) && !madeOfSpecks(line, specks, sight.face);
  const dark = linesOf(sight, true).filter(clear);
  const light = linesOf(sight, false).filter(clear);
  const gap = CRACK * ((sight.colours[0]?.lab.l ?? 60) + 16);
  const cracks = dark.filter(line => isCrack(line, gap, sight.face));
  const veins = [...dark.filter(line => !cracks.includes(line)), ...light].filter(
    ({ hueShift, contrast }) => hueShift < SWIRL_SHIFT + 0.35 * Math.abs(contrast),
  );
  const drawn = cracks.length > 0 ? [crackFinding(cracks, sight.face)] : [];
  // Light rims and dark forks beside a crack are part of it.
  const apart = cracks.length > 0 ? veins.filter(line => !besideCrack(line, cracks, sight.face)) : veins;
  const found = [...drawn, ...veinFindings(apart, sight)];
  return { found, lines: found.length > 0 ? [...cracks, ...apart] : [] };
}

/** What lines amount to, and the lines themselves, so that no speck is seen where they cross. */
export type LinesSeen = { readonly found: readonly Found[]; readonly lines: readonly Line[] };

/** The specks of a face that are not part of a line. */
export function offLines(specks: readonly Speck[], lines: readonly Line[], face: Face): Speck[] {
  const taken = new Set(lines.flatMap(({ pixels }) => pixels));
  return specks.filter(({ x, y, radius }) => {
    const reach = Math.ceil(radius + 2);
    for (let dy = -reach; dy <= reach; dy++)
      for (let dx = -reach; dx <= reach; dx++)
        if (taken.has((Math.round(y) + dy) * face.width + Math.round(x) + dx)) return false;
    return true;
  });
}

/** True where most of a short line runs through or round specks. */
function madeOfSpecks({ pixels, span }: Line, specks: readonly Speck[], { width, barWidth }: Face): boolean {
  if (span > SPECKLED * barWidth) return false;
  const near = (i: number) =>
    specks.some(
      ({ x, y, radius }) => Math.hypot((i % width) - x, Math.floor(i / width) - y) < 1.6 * radius + 2,
    );
  const some = pixels.filter((_, k) => k % 3 === 0);
  return some.filter(near).length > 0.4 * some.length;
}

const isCrack = ({ clearest, hueShift, span, cells }: Line, gap: number, { barWidth }: Face) =>
  clearest < -gap && hueShift < 0.35 * -clearest + 3 && span > 0.15 * barWidth && cells < NETWORK;

function besideCrack(line: Line, cracks: readonly Line[], { width, barWidth }: Face): boolean {
  const reach = 0.06 * barWidth;
  const near = (i: number) =>
    cracks.some(({ pixels }) =>
      pixels.some(
        j => Math.hypot((i % width) - (j % width), Math.floor(i / width) - Math.floor(j / width)) < reach,
      ),
    );
  const some = line.pixels.filter((_, k) => k % 7 === 0);
  return some.filter(near).length > 0.5 * some.length;
}

function crackFinding(lines: readonly Line[], face: Face): Found {
  const { barWidth } = face;
  const length = total(lines, line => line.length);
  const contrast = mean(lines, line => line.contrast);
  const clearest = mean(lines, line => line.clearest);
  return {
    id: 'crack-on-top',
    strength: Math.min(1, length / barWidth),
    clarity: Math.min(1, -clearest / 12) * Math.min(1, 0.4 + length / barWidth),
    size: mean(lines, line => line.sigma),
    region: regionOf(lines, face),
    measures: {
      length: length / barWidth,
      contrast,
      width: (2 * mean(lines, line => line.sigma)) / barWidth,
    },
  };
}

function veinFindings(lines: readonly Line[], sight: Sight): Found[] {
  const { face } = sight;
  const { barWidth } = face;
  const length = total(lines, line => line.length);
  if (length < LEAST_TOTAL * barWidth) return [];
  const junctions = total(lines, line => line.junctions);
  const cells = total(lines, line => line.cells);
  const contrast = mean(lines, line => line.contrast);
  const branching = junctions / (length / barWidth);
  const size = mean(lines, line => line.sigma);
  const width = (2 * size) / barWidth;
  const lengthPerArea = (length * barWidth) / face.area;
  const parallel = agreement(lines);
  const straight = mean(lines, line => line.straight);
  const id =
    parallel > 0.9 && straight > 0.97 && lines.length > 2
      ? 'drag-lines'
      : lengthPerArea / width > FINE_NET
        ? 'crackle-network'
        : 'translucent-veins';
  return [
    {
      id,
      strength: Math.min(1, lengthPerArea / 8),
      clarity:
        Math.min(1, 0.5 + (0.25 * length) / barWidth) *
        Math.min(1, 0.4 + mean(lines, l => Math.abs(l.contrast)) / 5),
      size,
      region: regionOf(lines, face),
      ...inColour(lines, sight),
      measures: {
        length: length / barWidth,
        lengthPerArea,
        branching,
        cells,
        contrast,
        width,
        parallel,
      },
    },
  ];
}

const total = (lines: readonly Line[], value: (line: Line) => number) =>
  lines.reduce((sum, line) => sum + value(line), 0);

/** The mean over all length of line. */
const mean = (lines: readonly Line[], value: (line: Line) => number) =>
  total(lines, line => value(line) * line.length) / total(lines, line => line.length);

/** How well the lines run the same way, 0 to 1: the length of their mean doubled direction (Mardia 1972). */
function agreement(lines: readonly Line[]): number {
  return Math.hypot(
    mean(lines, l => Math.cos(2 * l.heading)),
    mean(lines, l => Math.sin(2 * l.heading)),
  );
}

function inColour(lines: readonly Line[], { colours, map, face, scales }: Sight): { inColour?: number } {
  if (colours.length < 2) return {};
  const wide = scales.l[2]!.smooth.width;
  const counts = new Array<number>(colours.length).fill(0);
  for (const { pixels } of lines)
    for (const i of pixels) {
      const at = (Math.floor(i / face.width) >> 1) * wide + ((i % face.width) >> 1);
      counts[map[at] ?? 0]! += 1;
    }
  const most = Math.max(...counts);
  return most > 0.8 * counts.reduce((sum, n) => sum + n, 0) ? { inColour: counts.indexOf(most) } : {};
}

function regionOf(lines: readonly Line[], face: Face) {
  const outlines = lines
    .toSorted((one, other) => other.length - one.length)
    .flatMap(line => traced(line, face))
    .slice(0, 60);
  return { box: boxRound(outlines), outlines };
}

/** A line's branches, each as a few points from one end to the other. */
function traced({ pixels }: Line, face: Face): Outline[] {
  const { width } = face;
  const left = new Set(pixels);
  const branches: Outline[] = [];
  const starts = pixels.filter(i => neighboursIn(left, i, width).length === 1);
  for (const start of [...starts, ...pixels]) {
    const path: number[] = [];
    for (let at: number | undefined = left.has(start) ? start : undefined; at !== undefined; ) {
      path.push(at);
      left.delete(at);
      at = neighboursIn(left, at, width)[0];
    }
    if (path.length < SHORTEST_BRANCH) continue;
    const points = path.filter((_, k) => k % 8 === 0 || k === path.length - 1);
    branches.push({
      kind: 'path',
      points: points.map(i => face.place(i % width, Math.floor(i / width))),
      closed: false,
    });
  }
  return branches;
}

const neighboursIn = (some: ReadonlySet<number>, i: number, width: number) =>
  [1, -1, width, -width, width + 1, width - 1, -width + 1, -width - 1]
    .map(by => i + by)
    .filter(j => some.has(j));
