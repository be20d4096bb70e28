import { D65_AT_BANDS, xyzOfReflectance } from '../spectra/observer.ts';
import {
  BAND_COUNT,
  FIRST_NANOMETRE,
  NANOMETRES_PER_BAND,
  type Spectrum,
  spectrum,
} from '../spectra/spectrum.ts';
import { reflectanceOfRatio } from './kubelka-munk.ts';
import type { BaseOptics, Emission, MixPart } from './optics.ts';

/** A bell of emitted light about a peak (nm), `width` its standard deviation. */
export function emission(peak: number, width: number, share: number): Emission {
  const bell = spectrum((_, nm) => Math.exp(-(((nm - peak) / width) ** 2) / 2));
  const total = bell.reduce((sum, value) => sum + value, 0);
  return { yield: share, below: peak, shape: bell.map(value => value / total) };
}

/**
 * Daylight a fluorescent part gives back: of the light that the whole mix absorbs below the emission's peak, the
 * part takes the share its K has in the mix, and gives `yield` of that back. An empirical term: what is absorbed and
 * scattered again on the way out is in `yield`.
 */
function givenBack(
  { yield: share, below }: Emission,
  part: MixPart,
  mix: readonly MixPart[],
  base: BaseOptics,
) {
  let absorbed = 0;
  for (let band = 0; band < BAND_COUNT; band++) {
    if (FIRST_NANOMETRE + NANOMETRES_PER_BAND * band >= below) break;
    let k = base.k[band]!;
    let s = base.s[band]!;
    for (const { optics, grams } of mix) {
      k += grams * optics.k[band]!;
      s += grams * optics.s[band]!;
    }
    if (k <= 0) continue;
    const taken = (part.grams * part.optics.k[band]!) / k;
    absorbed += D65_AT_BANDS[band]! * taken * (1 - reflectanceOfRatio(k / s));
  }
  return share * absorbed;
}

/** The shape of an emission as reflectance: emitted light by the light that falls on the same band. */
const asReflectance = ({ shape }: Emission): Spectrum => shape.map((value, b) => value / D65_AT_BANDS[b]!);

/** What the fluorescent parts of a mix add to the reflectance of the bar under D65. */
export function glow(mix: readonly MixPart[], base: BaseOptics): Spectrum {
  const total = new Float64Array(BAND_COUNT);
  for (const part of mix) {
    const { emission: light } = part.optics;
    if (light === undefined || part.grams <= 0) continue;
    const strength = givenBack(light, part, mix, base);
    asReflectance(light).forEach((value, band) => {
      total[band]! += strength * value;
    });
  }
  return total;
}

/** Adds the same, as tristimulus values, onto `xyz`. */
export function glowXyz(mix: readonly MixPart[], base: BaseOptics, xyz: Float64Array): void {
  if (!mix.some(({ optics, grams }) => optics.emission !== undefined && grams > 0)) return;
  const { x, y, z } = xyzOfReflectance(glow(mix, base));
  xyz[0]! += x;
  xyz[1]! += y;
  xyz[2]! += z;
}
