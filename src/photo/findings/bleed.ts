import { type Plane, sample } from '../pixels/plane.ts';
import { median } from '../pixels/quantile.ts';
import type { Outline } from '../reading.ts';
import { boxRound } from './region.ts';
import { type Found, MAP_LEVEL, planesAt, type Sight } from './sight.ts';

/** Colours this far apart (plain CIELAB) make a border worth measuring. */
const LEAST_APART = 24;
/** A border is bled when it is this wide, as a share of the bar's width, and this many times the picture's own blur. */
const LEAST_WIDTH = 0.034;
const ABOVE_BLUR = 2.2;
/** Half the stretch, as a share of the bar's width, over which a border is followed. */
const REACH = 0.13;
const MOST_BORDERS = 400;

type Border = { readonly at: number; readonly width: number; readonly rise: number };

/** Colour that ran over its border: how wide the change from one main colour to another is (10 to 90 % of the rise). */
export function bleedFinding(sight: Sight): Found[] {
  const { face, colours } = sight;
  const pair = farthestPair(sight);
  if (!pair) return [];
  const along = axis(sight, pair);
  const borders = bordersOf(along, sight).filter(({ rise }) => rise > 0.6);
  if (borders.length < 20) return [];
  const { step } = sight.scales.l[MAP_LEVEL]!;
  const width = (median(borders.map(border => border.width)) * step) / face.barWidth;
  // What a crisp border would show after the picture's blur and our own smoothing, 10 to 90 %.
  const own = (2.56 * Math.hypot(sight.blur, 2.4)) / face.barWidth;
  if (width < Math.max(LEAST_WIDTH, ABOVE_BLUR * own)) return [];
  const wide = borders.filter(border => (border.width * step) / face.barWidth > 0.7 * width);
  const every = Math.max(1, Math.floor(wide.length / 24));
  const outlines = wide
    .filter((_, i) => i % every === 0)
    .map(
      ({ at }): Outline => ({
        kind: 'circle',
        at: face.place((at % along.width) * step, Math.floor(at / along.width) * step),
        radius: face.length((width * face.barWidth) / 2),
      }),
    );
  return [
    {
      id: 'colour-bled',
      strength: Math.min(1, width / 0.1),
      clarity: Math.min(1, 0.5 + (width / LEAST_WIDTH - 1) * 0.4) * Math.min(1, 0.6 + borders.length / 200),
      size: width * face.barWidth,
      region: { box: boxRound(outlines), outlines },
      measures: { width, borders: borders.length, from: pair[0], to: pair[1], colours: colours.length },
    },
  ];
}

function farthestPair({ colours }: Sight): readonly [number, number] | undefined {
  let best: readonly [number, number] | undefined;
  let most = LEAST_APART;
  colours.forEach((one, i) => {
    colours.slice(i + 1).forEach((other, j) => {
      if (Math.min(one.share, other.share) < 0.1) return;
      const apart = Math.hypot(one.lab.l - other.lab.l, one.lab.a - other.lab.a, one.lab.b - other.lab.b);
      if (apart <= most) return;
      most = apart;
      best = [i, i + 1 + j];
    });
  });
  return best;
}

/** Where each pixel stands between the two colours: 0 at the one, 1 at the other. */
function axis({ scales, colours }: Sight, [from, to]: readonly [number, number]): Plane {
  const { l, a, b } = planesAt(scales, MAP_LEVEL);
  const [one, other] = [colours[from]!.lab, colours[to]!.lab];
  const [dl, da, db] = [other.l - one.l, other.a - one.a, other.b - one.b];
  const squared = dl * dl + da * da + db * db;
  return {
    ...l,
    data: l.data.map(
      (value, i) => ((value - one.l) * dl + (a.data[i]! - one.a) * da + (b.data[i]! - one.b) * db) / squared,
    ),
  };
}

/** The borders between the two colours: where the way between them is half done, followed up and down its slope. */
function bordersOf(along: Plane, { face, scales }: Sight): Border[] {
  const { width, height, data } = along;
  const { step } = scales.l[MAP_LEVEL]!;
  const margin = Math.ceil((0.03 * face.barWidth) / step);
  const places: number[] = [];
  for (let y = margin; y < height - margin; y++)
    for (let x = margin; x < width - margin; x++) {
      const i = y * width + x;
      const sign = data[i]! < 0.5;
      if (!face.inside[y * step * face.width + x * step]) continue;
      if (sign !== data[i + 1]! < 0.5 || sign !== data[i + width]! < 0.5) places.push(i);
    }
  const every = Math.max(1, Math.ceil(places.length / MOST_BORDERS));
  const reach = Math.round((REACH * face.barWidth) / step);
  return places.filter((_, k) => k % every === 0).map(at => followed(along, at, reach));
}

function followed(along: Plane, at: number, reach: number): Border {
  const { width, data } = along;
  const x = at % width;
  const y = (at - x) / width;
  const gx = data[at + 2]! - data[at - 2]!;
  const gy = data[at + 2 * width]! - data[at - 2 * width]!;
  const length = Math.hypot(gx, gy) || 1;
  const profile = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    sample(along, x + (gx / length) * (k - reach), y + (gy / length) * (k - reach)),
  );
  let to = reach;
  while (to < 2 * reach && profile[to + 1]! > profile[to]! - 0.004) to++;
  let from = reach;
  while (from > 0 && profile[from - 1]! < profile[from]! + 0.004) from--;
  const [low, high] = [profile[from]!, profile[to]!];
  const crossing = (level: number) => {
    const k = profile.findIndex((value, i) => i > from && i <= to && value >= level);
    if (k < 1) return from;
    return k - (profile[k]! - level) / (profile[k]! - profile[k - 1]! || 1);
  };
  return {
    at,
    width: crossing(low + 0.9 * (high - low)) - crossing(low + 0.1 * (high - low)),
    rise: high - low,
  };
}
