import type { Outline } from '../reading.ts';
import { boxRound } from './region.ts';
import type { Found, Sight } from './sight.ts';
import type { Speck } from './specks.ts';

type SpeckKind = 'coloured-specks' | 'white-specks' | 'orange-spots' | 'pinholes';

/** Fewer than this are chance. */
const LEAST_COUNT = 4;
/** A kind with less than this share of all specks is taken for misread ones of another. */
const LEAST_SHARE = 0.2;
/** Orange spots are blotches, specks are grains: the radius that parts them, as a share of the bar's width. */
const BLOTCH = 0.0085;

/** Dark specks whose lit sides agree on this much, on the mean, are holes. Pigment gives 0.05 at most, holes 0.12. */
const LIT = 0.07;
const CLEAR_OF_CHANCE = 2.6;

/** The specks of a face, parted by kind: at most one finding each. */
export function speckFindings(sight: Sight, specks: readonly Speck[]): Found[] {
  const { barWidth } = sight.face;
  const shadowed = holesAmong(specks.filter(speck => kindOf(speck, barWidth) === 'shadow'));
  const kinds = Map.groupBy(specks, speck => {
    const kind = kindOf(speck, barWidth);
    return kind === 'shadow' ? shadowed : kind;
  });
  return [...kinds]
    .filter(([, some]) => some.length >= LEAST_COUNT && some.length >= LEAST_SHARE * specks.length)
    .map(([id, some]) => finding(id, some, sight));
}

/**
 * Small dark specks look alike one by one, holes or pigment. Together they tell: holes are all lit from the same side,
 * and have no colour but the bar's.
 */
function holesAmong(specks: readonly Speck[]): 'pinholes' | 'coloured-specks' {
  const mean = (value: (speck: Speck) => number) =>
    specks.reduce((sum, speck) => sum + value(speck), 0) / Math.max(1, specks.length);
  const right = mean(({ lit }) => lit[0]);
  const down = mean(({ lit }) => lit[1]);
  const spread = Math.sqrt(mean(({ lit }) => ((lit[0] - right) ** 2 + (lit[1] - down) ** 2) / 2));
  const agreed = Math.hypot(right, down);
  // Few specks can agree by chance: the mean must also stand clear of its own standard error.
  return agreed > LIT && agreed * Math.sqrt(specks.length) > CLEAR_OF_CHANCE * spread
    ? 'pinholes'
    : 'coloured-specks';
}

function kindOf(
  { contrast: [dl, da, db], ground: [l, a, b], radius }: Speck,
  barWidth: number,
): SpeckKind | 'shadow' {
  const hue = (Math.atan2(db, da) * 180) / Math.PI;
  const hueChange = Math.hypot(da, db);
  if (radius > BLOTCH * barWidth && hue > 20 && hue < 105 && dl < 0 && hueChange > 6 && hueChange > 0.5 * -dl)
    return 'orange-spots';
  // A shadow scales light in every channel alike, and CIELAB with it; the camera's coarser colour shows part of that.
  const share = (l + dl + 16) / (l + 16);
  const leftOver = awayFrom([a * (share - 1), b * (share - 1)], [da, db]);
  if (dl < 0 && leftOver < 0.35 * -dl + 2) return 'shadow';
  if (dl > 0 && dl > 0.4 * hueChange) return 'white-specks';
  return 'coloured-specks';
}

/** How far a point is from the way between zero and `end`. */
function awayFrom([ex, ey]: readonly [number, number], [x, y]: readonly [number, number]): number {
  const squared = ex * ex + ey * ey;
  const along = squared > 0 ? Math.min(1, Math.max(0, (x * ex + y * ey) / squared)) : 0;
  return Math.hypot(x - along * ex, y - along * ey);
}

function finding(id: SpeckKind, specks: readonly Speck[], { face, colours, map, scales }: Sight): Found {
  const { barWidth } = face;
  const mean = (value: (speck: Speck) => number) =>
    specks.reduce((sum, s) => sum + value(s), 0) / specks.length;
  const cover = specks.reduce((sum, { radius }) => sum + Math.PI * radius * radius, 0) / face.area;
  const contrast = mean(speck => Math.hypot(...speck.contrast));
  const outlines = specks.slice(0, 60).map(
    ({ x, y, radius }): Outline => ({
      kind: 'circle',
      at: face.place(x, y),
      radius: face.length(radius * 1.6 + 1.5),
    }),
  );
  const wide = scales.l[2]!.smooth.width;
  const inColours = Map.groupBy(specks, ({ x, y }) => map[(y >> 1) * wide + (x >> 1)] ?? 0);
  const [colour, most] = [...inColours].toSorted((one, other) => other[1].length - one[1].length)[0] ?? [
    0,
    [],
  ];
  return {
    id,
    strength: Math.min(1, Math.sqrt((specks.length / 60) * Math.min(1, contrast / 30))),
    clarity: Math.min(1, 0.55 + 0.03 * specks.length) * Math.min(1, contrast / 11),
    size: mean(({ radius }) => radius),
    region: { box: boxRound(outlines), outlines },
    ...(colours.length > 1 && most.length > 0.8 * specks.length && { inColour: colour }),
    measures: {
      count: specks.length,
      perArea: (specks.length * barWidth * barWidth) / face.area,
      cover,
      radius: mean(({ radius }) => radius) / barWidth,
      contrast,
      lightness: mean(speck => speck.contrast[0]),
    },
  };
}
