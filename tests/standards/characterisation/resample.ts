import { type Spectrum, spectrum } from '../../../src/engine/colour/spectra/spectrum.ts';

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
