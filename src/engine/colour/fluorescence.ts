import { reflectanceOfRatio } from './kubelka.ts';
import { D65_AT_BANDS } from './observer.ts';
import type { BaseOptics, Emission, MixPart, Optics } from './optics.ts';
import { BAND_COUNT, FIRST_NANOMETRE, NANOMETRES_PER_BAND, type Spectrum, spectrum } from './spectrum.ts';

/** A bell of emitted light about a peak (nm), `width` its standard deviation. */
export function emission(peak: number, width: number, share: number): Emission {
  const bell = spectrum((_, nm) => Math.exp(-(((nm - peak) / width) ** 2) / 2));
  const total = bell.reduce((sum, value) => sum + value, 0);
  return { yield: share, below: peak, shape: bell.map(value => value / total) };
}

/**
 * What a fluorescent pigment adds to the reflectance of the bar under D65: of the light that the whole mix
 * absorbs below the emission's peak, the pigment takes the share its K has in the mix, and gives `yield` of it
 * back over the emission's shape. An empirical term: re-absorption and scattering on the way out are in `yield`.
 */
export function emitted(
  { yield: share, below, shape }: Emission,
  pigment: Optics,
  grams: number,
  mix: readonly MixPart[],
  base: BaseOptics,
): Spectrum {
  let absorbed = 0;
  for (let band = 0; band < BAND_COUNT; band++) {
    if (FIRST_NANOMETRE + NANOMETRES_PER_BAND * band >= below) break;
    let k = base.k[band]!;
    let s = base.s[band]!;
    for (const part of mix) {
      k += part.grams * part.optics.k[band]!;
      s += part.grams * part.optics.s[band]!;
    }
    if (k <= 0) continue;
    const taken = (grams * pigment.k[band]!) / k;
    absorbed += D65_AT_BANDS[band]! * taken * (1 - reflectanceOfRatio(k / s));
  }
  return shape.map((value, band) => (share * absorbed * value) / D65_AT_BANDS[band]!);
}
