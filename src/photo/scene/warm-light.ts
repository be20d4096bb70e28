/*
 * What an adaptation by the white alone leaves of a filament lamp's light. It makes the paper neutral; but a red that
 * sends back much of a light rich in red still looks too light, and a blue too dark: which of the light a thing sends back
 * is lost in three numbers. On the mean over plausible reflectances that error is linear, so most of it can be taken out.
 */

const D65 = [0.95047, 1, 1.08883] as const;
/** Mired (1e6 / K) of D65 and of illuminant A, 2,856 K (CIE 015:2018). */
const DAYLIGHT_MIRED = 1e6 / 6504;
const LAMP_MIRED = 1e6 / 2856;
/** Beyond the lamp that the matrix was fitted for. */
const MOST = 1.1;
/**
 * A phone has taken out part of the light's colour by itself. Chosen: half. Those that took out more are corrected less
 * than they need, hardly any more.
 */
const LEFT_BY_PHONE = 0.5;

/**
 * Linear least squares from X, Y, Z under illuminant A, brought to D65 by the linear Bradford adaptation, to X, Y, Z under
 * D65 (each over D65's white), less the identity: over 270 smooth reflectances round the hue circle, errors weighed by
 * 1 / Y, neutral kept neutral. The 2 degree observer. After G. D. Finlayson and M. S. Drew, "White-point preserving color
 * correction", 5th Color Imaging Conference (1997) 258-261. `tests/photo/warm-light.test.ts` fits it again.
 */
const LAMP = [-0.315, 0.281, 0.034, -0.231, 0.18, 0.051, 0.076, -0.064, -0.012] as const;

/**
 * Correlated colour temperature in mired of X, Y, Z over D65's white (C. S. McCamy, Color Research and Application 17
 * (1992) 142-144); daylight's where it is none that the formula is for.
 */
export function miredOf(overWhite: readonly [number, number, number]): number {
  const [x, y, z] = overWhite.map((value, i) => value * D65[i]!) as [number, number, number];
  const sum = x + y + z;
  const n = (x / sum - 0.332) / (0.1858 - y / sum);
  const kelvin = 449 * n ** 3 + 3525 * n ** 2 + 6823.3 * n + 5520.33;
  return kelvin > 1000 && kelvin < 50_000 ? 1e6 / kelvin : DAYLIGHT_MIRED;
}

/** How much of a filament lamp the light is, 0 daylight, 1 illuminant A, by how white paper was seen after the phone's own balance. */
export function lampShare(paper: readonly [number, number, number]): number {
  const seen = (miredOf(paper) - DAYLIGHT_MIRED) / (LAMP_MIRED - DAYLIGHT_MIRED);
  return Math.min(MOST, Math.max(0, seen / LEFT_BY_PHONE));
}

/** The nine numbers, row by row, that take the lamp's part out of adapted X, Y, Z over white. */
export const withoutLamp = (share: number): readonly number[] =>
  LAMP.map((value, i) => (i % 4 === 0 ? 1 : 0) + share * value);
