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
