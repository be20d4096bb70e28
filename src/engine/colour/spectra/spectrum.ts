/**
 * A quantity at the 36 wavelengths 380, 390 ... 730 nm: reflectance as a fraction, or K or S.
 * Spectra are plain typed arrays, so they cross to a worker thread as they are.
 */
export type Spectrum = Float64Array;

export const BAND_COUNT = 36;
export const FIRST_NANOMETRE = 380;
export const NANOMETRES_PER_BAND = 10;

/** A spectrum from a rule of band number and wavelength in nm. */
export function spectrum(value: (band: number, nanometres: number) => number): Spectrum {
  return Float64Array.from({ length: BAND_COUNT }, (_, band) =>
    value(band, FIRST_NANOMETRE + NANOMETRES_PER_BAND * band),
  );
}

/** The same spectrum band by band under `change`. */
export function mapSpectrum(of: Spectrum, change: (value: number, band: number) => number): Spectrum {
  return Float64Array.from(of, change);
}

/**
 * Samples at rising wavelengths (nm) brought to our bands: straight lines between samples,
 * the outermost value held where the instrument saw nothing.
 */
export function resample(wavelengths: readonly number[], values: readonly number[]): Spectrum {
  return spectrum((_, nanometres) => {
    const above = wavelengths.findIndex(w => w >= nanometres);
    if (above === -1) return values.at(-1) ?? 0;
    const high = values[above] ?? 0;
    const highAt = wavelengths[above] ?? 0;
    const low = values[above - 1] ?? high;
    const lowAt = wavelengths[above - 1] ?? highAt - 1;
    return nanometres <= lowAt ? low : low + ((high - low) * (nanometres - lowAt)) / (highAt - lowAt);
  });
}
