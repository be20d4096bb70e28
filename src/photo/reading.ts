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
 * One thing seen on the bar, or possibly. `confidence` 0 to 1 is the calibrated chance that it is there, measured on
 * drawn bars of kinds that the network had not been trained on, `ratio` how much oftener this answer was given there
 * where the finding was than where it was not. `strength` 0 to 1 is the share of the bar it covers. Of `measures`,
 * `share` is the same, `count` the number of places, and `size` their middle diameter in bar widths.
 */
export type PhotoFinding = {
  readonly id: PhotoFindingId;
  readonly answer: 'seen' | 'possibly';
  readonly strength: number;
  readonly confidence: number;
  readonly ratio: number;
  readonly region: Region;
  readonly measures: Readonly<Record<'share' | 'count' | 'size', number>>;
};

/**
 * How good the picture is: `blur` is the standard deviation of the blur as a fraction of the bar's width, `noise` the
 * standard deviation of lightness at reading size (CIELAB L*), `glare` the share of the bar that is blown out,
 * `light` how bright the brightest twentieth of the picture is (0 to 1), `resolution` the bar's longer side in pixels
 * at reading size.
 */
export type PhotoQuality = {
  readonly blur: number;
  readonly noise: number;
  readonly glare: number;
  readonly light: number;
  readonly resolution: number;
};

/** Why a picture is not read: no soap in view, too dark, too blurred. */
export type Unread = 'no-soap' | 'dark' | 'blur';

/**
 * What a photo shows. Where `unread` is given, `findings` are empty, never a guess; where no bar is seen, `bars` and
 * `colours` as well.
 */
export type PhotoReading = {
  readonly width: number;
  readonly height: number;
  readonly unread: Unread | undefined;
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
