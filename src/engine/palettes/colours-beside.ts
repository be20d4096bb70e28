import { clampChroma, converter, formatHex } from 'culori';
import type { Lab } from '../colour/spectra/cielab.ts';
import { hueOfLab } from './hue-schemes.ts';

/** A colour under this chroma (OKLCh) has no hue worth the name: anything goes with it. */
const LEAST_CHROMA = 0.04;
/** The opposite is quieted so that it does not outshout (common practice, no source). */
const QUIETED = 0.5;
/** Turns of the hue circle, degrees: neighbours and the opposite (J. Itten, Kunst der Farbe, 1961). */
const NEIGHBOUR = 30;
const OPPOSITE = 180;

const toRgb = converter('rgb');

/**
 * What stands well beside a colour, `#rrggbb`: its two neighbours on the hue circle and its quieted opposite, as light as it is, inside
 * sRGB. Empty for greys. Pure.
 * @example coloursBeside(labOfHex('#b39ddb')).length // 3
 */
export function coloursBeside(lab: Lab): readonly string[] {
  const { hue, chroma, lightness } = hueOfLab(lab);
  if (chroma < LEAST_CHROMA) return [];
  const turned = (turn: number, share = 1) =>
    formatHex(
      toRgb(
        clampChroma({ mode: 'oklch', l: lightness, c: share * chroma, h: (hue + turn + 360) % 360 }, 'oklch'),
      ),
    );
  return [turned(-NEIGHBOUR), turned(NEIGHBOUR), turned(OPPOSITE, QUIETED)];
}
