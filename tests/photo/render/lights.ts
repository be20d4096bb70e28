import { Matrix, solve } from 'ml-matrix';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { D65_AT_BANDS } from '../../../src/engine/colour/spectra/observer.ts';
import { reflectanceOfLab } from '../../../src/engine/colour/spectra/reconstruct.ts';
import { type Spectrum, spectrum } from '../../../src/engine/colour/spectra/spectrum.ts';
import { type Linear, linear } from './canvas.ts';

export { labOfHex };

/** A light by its relative power in each band. */
export type Light = { readonly name: string; readonly power: Spectrum };

/** Planck's law, relative: `c2` is the second radiation constant in nm K. */
const planck = (kelvin: number, c2: number) => (_: number, nanometres: number) =>
  (560 / nanometres) ** 5 / (Math.exp(c2 / (nanometres * kelvin)) - 1);

/** Daylight, filament lamps (illuminant A by its formula in CIE 015:2018; a warmer one), and the open shade of a blue sky. */
export const LIGHTS: readonly Light[] = [
  { name: 'daylight (D65)', power: D65_AT_BANDS },
  { name: 'lamp (A)', power: spectrum(planck(2848, 1.435e7)) },
  { name: 'lamp (2700 K)', power: spectrum(planck(2700, 1.4388e7)) },
  { name: 'shade (9000 K)', power: spectrum(planck(9000, 1.4388e7)) },
];

/** A phone's sensor: bell-shaped sensitivities that are not the eye's. Peaks and widths (nm) are typical, from memory. */
const SENSOR = [
  [600, 38],
  [535, 40],
  [460, 27],
].map(([peak = 0, width = 1]) =>
  spectrum((_, nanometres) => Math.exp(-((nanometres - peak) ** 2) / (2 * width * width))),
);

/** How much of a light's colour the phone's own balance takes out. */
const OWN_BALANCE = 0.75;
/** Exposure: what the sensor makes of a perfect white. */
const EXPOSURE = 0.85;

const raw = (reflectance: Spectrum, { power }: Light) =>
  SENSOR.map(sensitivity =>
    sensitivity.reduce((sum, s, band) => sum + s * power[band]! * reflectance[band]!, 0),
  );

/** Balanced by `share` of the light's own colour; green decides the exposure. */
function balanced(reflectance: Spectrum, light: Light, share: number): number[] {
  const white = raw(
    spectrum(() => 1),
    light,
  );
  const daylight = raw(
    spectrum(() => 1),
    LIGHTS[0]!,
  );
  return raw(reflectance, light).map((value, c) => {
    const own = value / white[c]!;
    // Left unbalanced, a channel keeps the light's excess over daylight.
    const excess = white[c]! / white[1]! / (daylight[c]! / daylight[1]!);
    return own * excess ** (1 - share);
  });
}

/** Reds, yellows, greens, blues, purples and greys that the phone's maker fitted its colour matrix to. */
const FITTED_TO = [
  '#a03c32',
  '#d8b23a',
  '#3f8f4a',
  '#2f5fa8',
  '#7a4a9a',
  '#f2f2f2',
  '#808080',
  '#c88a6a',
  '#4aa8a8',
  '#303030',
];

/** Least squares from the sensor to linear sRGB in daylight. */
const MATRIX = (() => {
  const rows = FITTED_TO.map(hex => balanced(reflectanceOfLab(labOfHex(hex), 0), LIGHTS[0]!, 1));
  return solve(new Matrix(rows), new Matrix(FITTED_TO.map(hex => [...linear(hex)])));
})();

const known = new Map<string, Linear>();

/** How that phone sees `#rrggbb` (as it is in daylight) under a light: linear sRGB, its cast left in. */
export const seenUnder =
  (light: Light) =>
  (hex: string): Linear => {
    const key = light.name + hex;
    const before = known.get(key);
    if (before) return before;
    const sensed = new Matrix([balanced(reflectanceOfLab(labOfHex(hex), 0), light, OWN_BALANCE)]);
    const out = sensed
      .mmul(MATRIX)
      .to1DArray()
      .map(value => Math.max(0, EXPOSURE * value)) as unknown as Linear;
    known.set(key, out);
    return out;
  };
