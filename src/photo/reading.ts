import type { Lab } from '../engine/colour/spectra/cielab.ts';
import type { PhotoFindingId } from './findings/ids.ts';

/** A place in the upright picture, as fractions of its width and height, origin top left. */
export type Point = { readonly x: number; readonly y: number };

/** A rectangle in the upright picture, as fractions of its width and height. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Something to draw round what was seen; a circle's `radius` is a fraction of the picture's width. */
export type Outline =
  | { readonly kind: 'circle'; readonly at: Point; readonly radius: number }
  | { readonly kind: 'path'; readonly points: readonly Point[]; readonly closed: boolean };

/** Where a finding is: the box round all of it, and outlines of at most the 60 clearest places. */
export type Region = { readonly box: Box; readonly outlines: readonly Outline[] };

/** A bar, or the cut face of a loaf. `outline` is its upright rectangle's corners, clockwise from the top left one. */
export type Bar = { readonly box: Box; readonly outline: readonly Point[]; readonly rectangularity: number };

/**
 * A main colour of the bar: CIELAB under D65 (2 degree observer), its nearest sRGB, its share of the bar's area,
 * and how far it may be off in CIEDE2000.
 */
export type MainColour = {
  readonly lab: Lab;
  readonly hex: string;
  readonly share: number;
  readonly plusMinus: number;
};

/** White paper or card in view; `lab` is how the camera saw it before balancing, `clipped` where it was overexposed. */
export type WhiteReference = {
  readonly box: Box;
  readonly outline: readonly Point[];
  readonly lab: Lab;
  readonly clipped: boolean;
};

/**
 * One thing seen on the bar. `strength` 0 to 1 is how much of it there is, `confidence` 0 to 1 how sure the reading is
 * (it falls with blur, noise, glare and low resolution). `measures` are the numbers behind it; lengths in them are
 * fractions of the bar's width, areas of the bar's area, contrasts in CIELAB units.
 */
export type PhotoFinding = {
  readonly id: PhotoFindingId;
  readonly strength: number;
  readonly confidence: number;
  readonly region: Region;
  /** Index into `colours` of the colour it lies in, where it keeps to one. */
  readonly inColour?: number;
  readonly measures: Readonly<Record<string, number>>;
};

/**
 * How good the picture is: `blur` is the standard deviation of the blur as a fraction of the bar's width, `noise` the
 * standard deviation of lightness at reading size (CIELAB L*), `glare` the share of the bar that is blown out,
 * `resolution` the bar's longer side in pixels at reading size.
 */
export type PhotoQuality = {
  readonly blur: number;
  readonly noise: number;
  readonly glare: number;
  readonly resolution: number;
};

/** What a photo shows. No bar seen: `bars`, `colours` and `findings` are empty, never a guess. */
export type PhotoReading = {
  readonly width: number;
  readonly height: number;
  readonly bars: readonly Bar[];
  readonly whiteReference: WhiteReference | undefined;
  readonly colours: readonly MainColour[];
  readonly findings: readonly PhotoFinding[];
  readonly quality: PhotoQuality;
};

/** The bar's colours alone. Without a white reference the light is unknown and `plusMinus` says so. */
export type PhotoColours = {
  readonly colours: readonly MainColour[];
  readonly whiteReference: boolean;
};
