import { converter, differenceCie94, differenceCiede2000, formatHex, inGamut, toGamut } from 'culori';
import { WHITE_POINT, type Xyz, xyzOfReflectance } from './observer.ts';
import type { Spectrum } from './spectrum.ts';

/** CIELAB under D65, 2 degree observer. */
export type Lab = { readonly l: number; readonly a: number; readonly b: number };

/** CIE 15: below (6/29)^3 the cube root gives way to a straight line. */
const LINEAR_BELOW = 216 / 24389;
const LINEAR_SLOPE = 24389 / 27;

/** The compressed response of CIELAB, 1 for white. */
export function labResponse(ratio: number): number {
  return ratio > LINEAR_BELOW ? Math.cbrt(ratio) : (LINEAR_SLOPE * ratio + 16) / 116;
}

/** Slope of {@link labResponse}. */
export function labResponseSlope(ratio: number): number {
  if (ratio <= LINEAR_BELOW) return LINEAR_SLOPE / 116;
  const root = Math.cbrt(ratio);
  return 1 / (3 * root * root);
}

/** CIELAB of tristimulus values under D65. */
export function labOfXyz({ x, y, z }: Xyz): Lab {
  const fx = labResponse(x / WHITE_POINT.x);
  const fy = labResponse(y / WHITE_POINT.y);
  const fz = labResponse(z / WHITE_POINT.z);
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** CIELAB of a reflectance spectrum under D65. */
export function labOfReflectance(reflectance: Spectrum): Lab {
  return labOfXyz(xyzOfReflectance(reflectance));
}

const ciede2000 = differenceCiede2000();
/** culori's plain `lab` is D50 and adapts in silence: D65 is `lab65`. */
const lab65 = ({ l, a, b }: Lab) => ({ mode: 'lab65' as const, l, a, b });

/** CIEDE2000 between two colours, kL = kC = kH = 1. */
export function colourDifference(one: Lab, other: Lab): number {
  return ciede2000(lab65(one), lab65(other));
}

const cie94 = differenceCie94();

/**
 * CIE94 of a colour from the one that was wanted (CIE 116-1995), for colours that lie far apart. CIEDE2000 holds up to 5
 * (CIE 142-2001): its rotation term for blues has magenta nearer to a grey than to a violet. CIE94 has none.
 */
export function differenceFrom(wanted: Lab, other: Lab): number {
  return cie94(lab65(wanted), lab65(other));
}

const toLab65 = converter('lab65');
const intoSrgb = toGamut('rgb', 'oklch', null, 0);

/** `#rrggbb` of a colour; one that no screen can show is brought in with its hue and lightness kept. */
export function hexOfLab(lab: Lab): string {
  return formatHex(intoSrgb(lab65(lab)));
}

const screenCanShow = inGamut('rgb');

/** Whether an sRGB screen can show the colour as it is. */
export function isOnScreen(lab: Lab): boolean {
  return screenCanShow(lab65(lab));
}

/**
 * CIELAB of `#rrggbb` in sRGB. Throws RangeError for any other text: members' own words go through `parseColour`.
 * @example Math.round(labOfHex('#ffffff').l) // 100
 */
export function labOfHex(hex: string): Lab {
  const colour = /^#[\da-f]{6}$/i.test(hex) ? toLab65(hex) : undefined;
  if (colour === undefined) throw new RangeError(`not #rrggbb: ${hex}`);
  return { l: colour.l, a: colour.a, b: colour.b };
}

/** CIELAB chroma. */
export function chromaOf({ a, b }: Lab): number {
  return Math.hypot(a, b);
}

/** CIELAB hue angle, degrees from 0 up to 360. */
export function hueOf({ a, b }: Lab): number {
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}
