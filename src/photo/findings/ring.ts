import type { Outline } from '../reading.ts';
import type { Face } from '../scene/face.ts';
import type { Broad } from './broad.ts';
import { boxRound } from './region.ts';
import type { Found } from './sight.ts';

const BINS = 40;
const SECTORS = 8;
/** Least difference in L* between centre and rim. */
const LEAST_STEP = 2.8;
/** The share of all variation of lightness that one step must explain. */
const LEAST_EXPLAINED = 0.45;
/** A border of gel shows over less than this share of the radius; the fall of light to the corners is wider. */
const WIDEST_BORDER = 0.18;
/** Centres are rounded rectangles as the heat in a loaf makes them: this power of the superellipse. */
const POWER = 2.5;

/** A centre that is darker or lighter than its rim with a border between: the radial profile of evenly lit L*. */
export function ringFinding(view: Broad, face: Face): Found[] {
  const rings = byRadius(view);
  const step = bestStep(rings.mean, rings.count);
  if (!step) return [];
  const { at, inner, outer, explained } = step;
  const difference = inner - outer;
  const border = borderWidth(rings.mean, at, inner, outer);
  const agreeing = sectorsAgreeing(view, (at + 0.5) / BINS, Math.sign(difference));
  if (Math.abs(difference) < LEAST_STEP || explained < LEAST_EXPLAINED) return [];
  if (border > WIDEST_BORDER || agreeing < SECTORS - 1) return [];
  if (hueShift(view, (at + 0.5) / BINS) > 4 + 0.4 * Math.abs(difference)) return [];
  const radius = (at + 1) / BINS;
  const outline = ellipse(face, radius);
  return [
    {
      id: difference < 0 ? 'dark-centre-ring' : 'light-centre-ring',
      strength: Math.min(1, Math.abs(difference) / 14),
      clarity: Math.min(1, 0.35 + explained * 0.6) * Math.min(1, 0.4 + Math.abs(difference) / 6),
      size: radius * face.width,
      region: { box: boxRound([outline]), outlines: [outline] },
      measures: { difference, radius, border, explained },
    },
  ];
}

function radiusOf(i: number, { width, height }: Broad): number {
  const u = Math.abs(((i % width) + 0.5) / width - 0.5) * 2;
  const v = Math.abs((Math.floor(i / width) + 0.5) / height - 0.5) * 2;
  return (u ** POWER + v ** POWER) ** (1 / POWER);
}

function byRadius(view: Broad): { mean: number[]; count: number[] } {
  const sums = new Array<number>(BINS).fill(0);
  const count = new Array<number>(BINS).fill(0);
  for (let i = 0; i < view.level.length; i++) {
    if (!view.inside[i]) continue;
    const bin = Math.floor(radiusOf(i, view) * BINS);
    if (bin >= BINS) continue;
    sums[bin]! += view.level[i]!;
    count[bin]! += 1;
  }
  return { mean: sums.map((sum, bin) => sum / Math.max(1, count[bin]!)), count };
}

/** The radius that parts centre from rim best: Otsu's criterion over the profile, whose share of variance it tells. */
function bestStep(mean: readonly number[], count: readonly number[]) {
  const part = (from: number, to: number) => {
    let n = 0;
    let sum = 0;
    for (let bin = from; bin < to; bin++) {
      n += count[bin]!;
      sum += mean[bin]! * count[bin]!;
    }
    return { n, mean: sum / Math.max(1, n) };
  };
  const whole = part(0, BINS);
  const variance = mean.reduce((sum, value, bin) => sum + count[bin]! * (value - whole.mean) ** 2, 0);
  let best: { at: number; inner: number; outer: number; explained: number } | undefined;
  for (let at = Math.floor(0.36 * BINS); at < 0.86 * BINS; at++) {
    const inner = part(0, at + 1);
    const outer = part(at + 1, BINS);
    const between = (inner.n * outer.n * (inner.mean - outer.mean) ** 2) / whole.n;
    const explained = between / Math.max(variance, 1e-6);
    if (!best || explained > best.explained) best = { at, inner: inner.mean, outer: outer.mean, explained };
  }
  return best;
}

/** How wide the border is, from a fifth to four fifths of the step, as a share of the radius. */
function borderWidth(mean: readonly number[], at: number, inner: number, outer: number): number {
  const done = (bin: number) => ((mean[bin] ?? outer) - inner) / (outer - inner || 1);
  let from = at;
  while (from > 0 && done(from) > 0.2) from--;
  let to = at;
  while (to < BINS - 1 && done(to) < 0.8) to++;
  return (to - from) / BINS;
}

function sectorsAgreeing(view: Broad, radius: number, sign: number): number {
  const { width, height } = view;
  const sums = Array.from({ length: SECTORS }, () => ({
    inner: 0,
    insideCount: 0,
    outer: 0,
    outsideCount: 0,
  }));
  for (let i = 0; i < view.level.length; i++) {
    if (!view.inside[i]) continue;
    const u = ((i % width) + 0.5) / width - 0.5;
    const v = (Math.floor(i / width) + 0.5) / height - 0.5;
    const sector = sums[Math.floor(((Math.atan2(v, u) / Math.PI + 1) / 2) * SECTORS) % SECTORS]!;
    const at = radiusOf(i, view);
    if (at < radius - 0.05) {
      sector.inner += view.level[i]!;
      sector.insideCount++;
    } else if (at > radius + 0.05) {
      sector.outer += view.level[i]!;
      sector.outsideCount++;
    }
  }
  return sums.filter(
    ({ inner, insideCount, outer, outsideCount }) =>
      sign * (inner / Math.max(1, insideCount) - outer / Math.max(1, outsideCount)) > 0.4 * LEAST_STEP,
  ).length;
}

/** How far the centre's colour is from the rim's seen in less or more light: gel changes light, a design changes hue. */
function hueShift(view: Broad, radius: number): number {
  const sums = { inner: [0, 0, 0, 0], outer: [0, 0, 0, 0] };
  for (let i = 0; i < view.level.length; i++) {
    if (!view.inside[i]) continue;
    const side = radiusOf(i, view) < radius ? sums.inner : sums.outer;
    [view.l[i]!, view.a[i]!, view.b[i]!, 1].forEach((value, d) => {
      side[d]! += value;
    });
  }
  const mean = ([l = 0, a = 0, b = 0, n = 1]: readonly number[]) => ({ l: l / n, a: a / n, b: b / n });
  const [inner, outer] = [mean(sums.inner), mean(sums.outer)];
  const share = (inner.l + 16) / (outer.l + 16);
  return Math.hypot(inner.a - outer.a * share, inner.b - outer.b * share);
}

function ellipse(face: Face, radius: number): Outline {
  const points = Array.from({ length: 28 }, (_, k) => {
    const angle = (2 * Math.PI * k) / 28;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const reach = (radius / (Math.abs(cos) ** POWER + Math.abs(sin) ** POWER) ** (1 / POWER)) * 0.5;
    return face.place((0.5 + cos * reach) * face.width, (0.5 + sin * reach) * face.height);
  });
  return { kind: 'path', points, closed: true };
}
