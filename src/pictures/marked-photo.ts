/** A place as fractions of the picture's width and height, origin top left. */
export type Spot = { readonly x: number; readonly y: number };

/** What to draw round; a circle's radius is a fraction of the picture's width. */
export type MarkOutline =
  | { readonly kind: 'circle'; readonly at: Spot; readonly radius: number }
  | { readonly kind: 'path'; readonly points: readonly Spot[]; readonly closed: boolean };

/** One numbered thing on the photo and its line in the legend. */
export type Mark = {
  readonly number: number;
  readonly outlines: readonly MarkOutline[];
  readonly label: string;
};

export type MarkedPhoto = {
  /** The photo as JPEG or PNG bytes, upright, with its size in pixels. */
  readonly photo: { readonly bytes: Uint8Array; readonly width: number; readonly height: number };
  readonly title: string;
  /** The bar's outline, drawn thin and without a number. */
  readonly bars: readonly (readonly Spot[])[];
  readonly marks: readonly Mark[];
};

/** Draws outlines and numbers over a photo, the legend as text under it. Returns a PNG. */
export function drawMarkedPhoto(_given: MarkedPhoto): Uint8Array {
  throw new Error('not built yet');
}
