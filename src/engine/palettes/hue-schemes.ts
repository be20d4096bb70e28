import { converter } from 'culori';
import type { Lab } from '../colour/spectra/cielab.ts';

/**
 * Hues that hold together, as turns from the first, degrees: J. Itten, Kunst der Farbe (1961), accords of two, three and four
 * hues of the twelve-part circle (opposites, triangles, square), and neighbours. The circle here is that of OKLCh (B. Ottosson,
 * "A perceptual color space for image processing", 2020).
 */
export const HUE_SCHEMES = {
  analogous: [0, 30, 330],
  complementary: [0, 180],
  'split-complementary': [0, 150, 210],
  triadic: [0, 120, 240],
  tetradic: [0, 90, 180, 270],
} as const satisfies Readonly<Record<string, readonly number[]>>;

export type HueScheme = keyof typeof HUE_SCHEMES;

/** Half a step of the twelve-part circle: beyond it a hue is its neighbour's. */
export const MOST_OFF = 15;
/** A colour under this chroma (OKLCh) has no hue worth the name. */
const LEAST_CHROMA = 0.04;
/** Lightness of one palette lies this far apart at most (OKLCh, 0 to 1), or one colour outweighs the others. */
const LIGHTNESS_APART = 0.25;

export type Hue = { readonly hue: number; readonly chroma: number; readonly lightness: number };

const toOklch = converter('oklch');

/** OKLCh of a colour: hue in degrees, chroma, lightness 0 to 1. */
export function hueOfLab({ l, a, b }: Lab): Hue {
  const { l: lightness, c: chroma, h: hue = 0 } = toOklch({ mode: 'lab65', l, a, b });
  return { hue, chroma, lightness };
}

/** Degrees between two hues, 0 to 180. */
export function hueApart(one: number, other: number): number {
  const apart = Math.abs(one - other) % 360;
  return apart > 180 ? 360 - apart : apart;
}

/** Places of the colours of a palette in the list, the greatest error of a hue (degrees), and how lively it is. */
export type SchemeFound = {
  readonly scheme: HueScheme;
  readonly places: readonly number[];
  readonly off: number;
  readonly chroma: number;
};

/**
 * The liveliest palette of a scheme among the colours there are: every colour once the first, to each turn the colour whose hue
 * is nearest, lightness alike. Undefined where some hue is more than half a step of the circle off, whichever begins.
 */
export function paletteOf(scheme: HueScheme, colours: readonly Lab[]): SchemeFound | undefined {
  const hues = colours.map(hueOfLab);
  let best: SchemeFound | undefined;
  hues.forEach((first, at) => {
    if (first.chroma < LEAST_CHROMA) return;
    const found = completed(scheme, { at, first, hues });
    if (found && merit(found) > (best ? merit(best) : Number.NEGATIVE_INFINITY)) best = found;
  });
  return best;
}

/** A degree off weighs as much as a thousandth of chroma. */
const merit = ({ chroma, off }: SchemeFound): number => chroma - off / 1000;

function completed(
  scheme: HueScheme,
  { at, first, hues }: { readonly at: number; readonly first: Hue; readonly hues: readonly Hue[] },
): SchemeFound | undefined {
  const places = [at];
  let off = 0;
  for (const turn of HUE_SCHEMES[scheme].slice(1)) {
    let best = { place: -1, cost: Number.POSITIVE_INFINITY };
    hues.forEach((one, place) => {
      if (one.chroma < LEAST_CHROMA || places.includes(place)) return;
      if (Math.abs(one.lightness - first.lightness) > LIGHTNESS_APART) return;
      const cost = hueApart(one.hue, first.hue + turn) - 100 * one.chroma;
      if (hueApart(one.hue, first.hue + turn) <= MOST_OFF && cost < best.cost) best = { place, cost };
    });
    if (best.place < 0) return undefined;
    places.push(best.place);
    off = Math.max(off, hueApart(hues[best.place]!.hue, first.hue + turn));
  }
  const chroma = places.reduce((sum, place) => sum + hues[place]!.chroma, 0) / places.length;
  return { scheme, places, off, chroma };
}
