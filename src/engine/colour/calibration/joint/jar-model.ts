import type { Optics } from '../../mixing/optics.ts';
import { BAND_COUNT, type Spectrum } from '../../spectra/spectrum.ts';
import type { JarBelief, JarParameters } from './jar-parameters.ts';

/** Grey that a usual jar brings, as a share of its mean K. */
const USUAL_GREY = 0.1;
const BAND_NM = 10;

/** Grey over that of the kind, as a share of the mean K: none at 0, and growing ever faster. */
export const greyShare = (dust: number): number => USUAL_GREY * (Math.exp(dust) - 1);

/** The dust that brings so much grey, the reverse of {@link greyShare}. */
export const dustOf = (grey: number): number => Math.log(1 + grey / USUAL_GREY);

/** The optics of a jar of a kind. */
export function jarOptics(kind: Optics, [strength, covering, hue, dust]: JarParameters): Optics {
  const [times, cover] = [Math.exp(strength), Math.exp(covering)];
  const mean = kind.k.reduce((sum, value) => sum + value, 0) / BAND_COUNT;
  const grey = greyShare(dust) * mean;
  const k = shifted(kind.k, (hue * 10) / BAND_NM).map(value => Math.max(0, times * (value + grey)));
  return { ...kind, k, s: kind.s.map(value => value * cover) };
}

/** A spectrum that far along, in bands; held at its ends. */
function shifted(spectrum: Spectrum, bands: number): Float64Array {
  return Float64Array.from({ length: BAND_COUNT }, (_, band) => {
    const place = Math.min(Math.max(band - bands, 0), BAND_COUNT - 1);
    const below = Math.min(Math.floor(place), BAND_COUNT - 2);
    const part = place - below;
    return spectrum[below]! * (1 - part) + spectrum[below + 1]! * part;
  });
}

/** What the theory in translucent soap and the base are off beyond the jars, stated, CIEDE2000. */
export const LEAST_STATED = 2.5;

/** The optics of a jar as it is believed to be, and how sure that is. */
export function believedOptics(kind: Optics, belief: JarBelief, plusMinus = LEAST_STATED): Optics {
  return {
    ...jarOptics(kind, belief.parameters),
    plusMinus: Math.max(Math.min(plusMinus, kind.plusMinus), belief.unexplained ?? 0),
    belief: { ...belief, kind },
  };
}
