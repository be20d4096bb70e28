import type { Plane } from './plane.ts';

/** The two curvatures of a picture at a pixel and the way across the sharper one. */
export type Curvature = {
  /** The curvature that is larger in size: positive across a dark line, negative across a light one. */
  readonly across: number;
  readonly along: number;
  readonly dx: number;
  readonly dy: number;
};

/** The eigenvalues of the Hessian at pixel `i`, by finite differences over a smoothed plane. */
export function curvature({ width, data }: Plane, i: number): Curvature {
  const here = 2 * data[i]!;
  const xx = data[i - 1]! + data[i + 1]! - here;
  const yy = data[i - width]! + data[i + width]! - here;
  const xy = (data[i - width - 1]! + data[i + width + 1]! - data[i - width + 1]! - data[i + width - 1]!) / 4;
  const middle = (xx + yy) / 2;
  const spread = Math.sqrt(((xx - yy) / 2) ** 2 + xy * xy);
  const across = middle >= 0 ? middle + spread : middle - spread;
  const along = 2 * middle - across;
  // The eigenvector of `across`, from whichever row of the matrix is better placed.
  const [ux, uy] = Math.abs(across - xx) > Math.abs(across - yy) ? [xy, across - xx] : [across - yy, xy];
  const length = Math.hypot(ux, uy) || 1;
  return { across, along, dx: ux / length, dy: uy / length };
}

/**
 * How much a pixel is on a line rather than a blob or noise, 0 to 1: the vesselness of A. F. Frangi and others,
 * "Multiscale vessel enhancement filtering", MICCAI 1998, in two dimensions, with beta 0.5. `contrast` is the size of
 * second-order structure that counts as half seen (their c), in the units of `sigma` squared times curvature.
 */
export function vesselness({ across, along }: Curvature, sigma: number, contrast: number): number {
  if (across === 0) return 0;
  const blobness = along / across;
  const structure = sigma * sigma * Math.hypot(across, along);
  return (
    Math.exp(-2 * blobness * blobness) * (1 - Math.exp(-(structure * structure) / (2 * contrast * contrast)))
  );
}
