import type { Lab } from '../../engine/colour/spectra/cielab.ts';
import { median } from '../pixels/quantile.ts';
import type { Face } from '../scene/face.ts';
import { boxRound, rectangleOn } from './region.ts';
import { type Found, insideAt, MAP_LEVEL, planesAt, type Sight } from './sight.ts';

/** What soda ash looks like by itself (L*, a*, b*): near white. */
const ASH: Lab = { l: 94, a: 0, b: 2 };
/** Least cover (0 to 1) of a film that can be told from a trick of the light. */
const LEAST_COVER = 0.13;
/** A layer thicker than this share of the bar's height was poured. */
const THICKEST = 0.28;
/** The share of the top edge that must bear it, or of the face. */
const LEAST_EDGE = 0.55;
const LEAST_AREA = 0.05;
/** Least chroma of a ground on which white can be told from light. */
const LEAST_CHROMA = 7;
/** A film thins out over at least this share of the bar's width; poured colours meet more sharply. */
const SOFTEST_DESIGN = 0.02;
/** Ash is mottled: its patches' outline is this many times the root of their area. Colour that ran keeps a plain one (5). */
const LEAST_CONTOUR = 6.5;

/**
 * A film, and what it explains: a speck or line at a place of the face whose colour is `off` (0 to 1, a sine) the way
 * from ground to white is an island or an edge of it.
 */
export type FilmSeen = {
  readonly found: readonly Found[];
  veils(x: number, y: number, off: number): boolean;
};

/** A contrast that leaves the way from a colour to white by more than this sine is not the film's doing. */
const OFF_THE_MIXTURE = 0.5;

/** How far (a sine, 0 to 1) a contrast is from the way between its ground and white. */
export function offWhite(
  contrast: readonly [number, number, number],
  ground: readonly [number, number, number],
): number {
  const way = [ASH.l - ground[0], ASH.a - ground[1], ASH.b - ground[2]];
  const along = way.reduce((sum, value, d) => sum + value * contrast[d]!, 0);
  const cosine = along / (Math.hypot(...way) * Math.hypot(...contrast) || 1);
  return Math.sqrt(Math.max(0, 1 - cosine * cosine));
}

type View = {
  readonly width: number;
  readonly height: number;
  readonly l: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  readonly inside: Uint8Array;
};

/** How much white lies over a ground colour, 0 to 1, and how far the colour is from any such mixture. */
type Cover = { readonly share: number; readonly off: number };

/** A pale layer of low chroma, along the top edge or in patches over the face. */
export function filmFinding(sight: Sight): FilmSeen {
  const { face, scales } = sight;
  const { l, a, b } = planesAt(scales, MAP_LEVEL);
  const view: View = {
    width: l.width,
    height: l.height,
    l: l.data,
    a: a.data,
    b: b.data,
    inside: insideAt(face, scales.l[MAP_LEVEL]!),
  };
  const top = topFilm(view, false);
  if (top && top.share >= LEAST_EDGE && (topFilm(view, true)?.share ?? 0) < 0.5 * top.share) {
    const outline = rectangleOn(face, 0.01, 0.01, 0.99, 0.01 + top.thickness);
    const seen = found(outline, face, { ...top, area: top.thickness * top.share, onTop: 1 });
    const edge = (1.7 * top.thickness + 0.04) * face.height;
    return { found: [seen], veils: (_x, y) => y < edge };
  }
  const patches = faceFilm(view, sight);
  return { found: patches, veils: patches.length > 0 ? veiledAll : veiledNone };
}

const veiledAll = (_x: number, _y: number, off: number) => off < OFF_THE_MIXTURE;
const veiledNone = () => false;

function found(
  outline: ReturnType<typeof rectangleOn>,
  face: Face,
  measures: { cover: number; thickness: number; area: number; share: number; onTop: number },
): Found {
  const { cover, area, share } = measures;
  return {
    id: 'powdery-film',
    strength: Math.min(1, cover * (0.4 + 2 * area)),
    clarity: Math.min(1, 0.45 + 1.2 * cover) * Math.min(1, 0.4 + share),
    size: 0.05 * face.width,
    region: { box: boxRound([outline]), outlines: [outline] },
    measures,
  };
}

function coverOf(l: number, a: number, b: number, ground: Lab): Cover {
  const [wl, wa, wb] = [ASH.l - ground.l, ASH.a - ground.a, ASH.b - ground.b];
  const [dl, da, db] = [l - ground.l, a - ground.a, b - ground.b];
  const share = (dl * wl + da * wa + db * wb) / (wl * wl + wa * wa + wb * wb);
  return { share, off: Math.hypot(dl - share * wl, da - share * wa, db - share * wb) };
}

/** Chroma over lightness falls under white and stays in mere light: only what it has lost counts as cover. */
function whitened(l: number, a: number, b: number, ground: Lab): number {
  const { share, off } = coverOf(l, a, b, ground);
  const chroma = Math.hypot(ground.a, ground.b);
  const lost = 1 - (Math.hypot(a, b) / (l + 16)) * ((ground.l + 16) / Math.max(chroma, 1));
  return off < 4 + 0.25 * Math.hypot(l - ground.l, a - ground.a, b - ground.b) ? Math.min(share, lost) : 0;
}

/** Film along the top edge (or, `below`, the bottom one): columns that are whitened at the edge and not further in. */
function topFilm(view: View, below: boolean) {
  const { width, height, inside, l, a, b } = view;
  const at = (x: number, y: number) => (below ? height - 1 - y : y) * width + x;
  const covers: number[] = [];
  const thicknesses: number[] = [];
  let columns = 0;
  for (let x = Math.floor(width * 0.06); x < width * 0.94; x += 2) {
    let y0 = 0;
    while (y0 < height / 3 && !inside[at(x, y0)]) y0++;
    if (y0 >= height / 3) continue;
    const deep = Array.from({ length: 9 }, (_, k) => at(x, Math.floor(y0 + height * (0.36 + 0.03 * k))));
    const ground = {
      l: median(deep.map(i => l[i]!)),
      a: median(deep.map(i => a[i]!)),
      b: median(deep.map(i => b[i]!)),
    };
    columns++;
    if (Math.hypot(ground.a, ground.b) < LEAST_CHROMA) continue;
    const here = (y: number) => whitened(l[at(x, y)]!, a[at(x, y)]!, b[at(x, y)]!, ground);
    const edge = median([1, 2, 3, 4].map(k => here(y0 + k)));
    if (edge < LEAST_COVER) continue;
    let y = y0;
    while (y < height * 0.5 && here(y) > 0.5 * edge) y++;
    if (y - y0 > THICKEST * height) continue;
    covers.push(edge);
    thicknesses.push((y - y0) / height);
  }
  if (covers.length === 0) return undefined;
  return { share: covers.length / columns, cover: median(covers), thickness: median(thicknesses) };
}

/** Patches of white over the strongest of the main colours, their edges soft. */
function faceFilm(view: View, { face, colours }: Sight): Found[] {
  const chromaOf = ({ a, b }: Lab) => Math.hypot(a, b);
  const ground = colours
    .filter(({ share }) => share >= 0.15)
    .map(({ lab }) => lab)
    .toSorted((one, other) => chromaOf(other) / (other.l + 16) - chromaOf(one) / (one.l + 16))[0];
  if (!ground || chromaOf(ground) < LEAST_CHROMA) return [];
  // Another colour that is no thin white over this one makes it a design: patches of it are meant.
  const design = colours.some(({ lab, share }) => {
    const { share: cover, off } = coverOf(lab.l, lab.a, lab.b, ground);
    return share > 0.06 && (cover > 0.85 || off > 9);
  });
  if (design) return [];
  const cover = new Float32Array(view.l.length);
  let all = 0;
  const patches: number[] = [];
  for (let i = 0; i < cover.length; i++) {
    if (!view.inside[i]) continue;
    all++;
    cover[i] = whitened(view.l[i]!, view.a[i]!, view.b[i]!, ground);
    if (cover[i]! > LEAST_COVER) patches.push(i);
  }
  const area = patches.length / all;
  const typical = median(patches.map(i => cover[i]!));
  if (area < LEAST_AREA || typical < LEAST_COVER * 1.3) return [];
  if (contour(cover, view, typical / 2) < LEAST_CONTOUR * Math.sqrt(area)) return [];
  const edge = softness(cover, view, patches, typical) / view.width;
  if (edge < SOFTEST_DESIGN) return [];
  const outline = patchBox(patches, view, face);
  return [
    found(outline, face, { cover: typical, thickness: edge, area, share: Math.min(1, 0.5 + area), onTop: 0 }),
  ];
}

/** The length of the outline of what is covered more than `level`, in widths of the view. */
function contour(cover: Float32Array, { width, height, inside }: View, level: number): number {
  let length = 0;
  for (let i = 0; i < (height - 1) * width; i++) {
    if (!inside[i]) continue;
    const covered = cover[i]! > level;
    if (inside[i + 1] && covered !== cover[i + 1]! > level) length++;
    if (inside[i + width] && covered !== cover[i + width]! > level) length++;
  }
  return length / width;
}

/** Over how many pixels a patch's cover comes and goes: its height over its slope where it is half there. */
function softness(
  cover: Float32Array,
  { width, height }: View,
  patches: readonly number[],
  typical: number,
): number {
  const widths: number[] = [];
  for (const i of patches) {
    const x = i % width;
    const y = (i - x) / width;
    if (x < 2 || y < 2 || x > width - 3 || y > height - 3) continue;
    if (Math.abs(cover[i]! - typical / 2) > 0.15 * typical) continue;
    const slope =
      Math.hypot(cover[i + 2]! - cover[i - 2]!, cover[i + 2 * width]! - cover[i - 2 * width]!) / 4;
    if (slope > 0) widths.push(typical / slope);
  }
  return median(widths);
}

function patchBox(patches: readonly number[], { width, height }: View, face: Face) {
  const xs = patches.map(i => (i % width) / width).toSorted((one, other) => one - other);
  const ys = patches.map(i => Math.floor(i / width) / height).toSorted((one, other) => one - other);
  const end = (values: readonly number[], share: number) =>
    values[Math.floor(share * (values.length - 1))] ?? 0;
  return rectangleOn(face, end(xs, 0.02), end(ys, 0.02), end(xs, 0.98), end(ys, 0.98));
}
