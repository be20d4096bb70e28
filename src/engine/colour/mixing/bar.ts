import { type ColourWord, nearestWord } from '../reading/plain-words.ts';
import { colourDifference, hexOfLab, isOnScreen, type Lab, labOfReflectance } from '../spectra/cielab.ts';
import { glow } from '../spectra/fluorescence.ts';
import { BAND_COUNT, type Spectrum } from '../spectra/spectrum.ts';
import { SOAP_SURFACE } from './base-soap.ts';
import { reflectanceOfRatio } from './kubelka-munk.ts';
import type { BaseOptics, MixPart } from './optics.ts';
import { saundersonReflectance } from './saunderson.ts';

/** What a cured bar is expected to look like. */
export type BarPrediction = {
  readonly lab: Lab;
  readonly hex: string;
  /** False where a screen cannot show the colour (`hex` is then the nearest it can, hue and lightness kept). */
  readonly onScreen: boolean;
  /** CIEDE2000. */
  readonly plusMinus: number;
  readonly word: ColourWord;
  /** The look depends on the angle. */
  readonly pearl: boolean;
  /** Glows under daylight; outside the theory. */
  readonly fluorescent: boolean;
};

/** A part that moves the colour this far (CIEDE2000) brings its whole error with it. */
const WHOLE_EFFECT = 20;

/** Reflectance of a bar, fluorescence included, so that it may pass 1. Cured, seen off the glare. */
export function barReflectance(mix: readonly MixPart[], base: BaseOptics): Spectrum {
  const seen = new Float64Array(BAND_COUNT);
  for (let band = 0; band < BAND_COUNT; band++) {
    let k = base.k[band]!;
    let s = base.s[band]!;
    for (const { optics, grams } of mix) {
      k += grams * optics.k[band]!;
      s += grams * optics.s[band]!;
    }
    seen[band] = saundersonReflectance(reflectanceOfRatio(k / s), SOAP_SURFACE);
  }
  if (!mix.some(({ optics }) => optics.emission !== undefined)) return seen;
  const light = glow(mix, base);
  return seen.map((value, band) => value + light[band]!);
}

/** CIELAB of a bar under D65. */
export function barLab(mix: readonly MixPart[], base: BaseOptics): Lab {
  return labOfReflectance(barReflectance(mix, base));
}

/**
 * The cured colour of a mix in a base, with the error to expect: that of the base, and of every colourant
 * as far as it moves the colour (independent errors, root of the sum of squares).
 */
export function predictBar(mix: readonly MixPart[], base: BaseOptics): BarPrediction {
  const lab = barLab(mix, base);
  const errors = mix.map((part, at) => {
    const moved = colourDifference(lab, barLab(mix.toSpliced(at, 1), base));
    return part.optics.plusMinus * Math.min(1, moved / WHOLE_EFFECT);
  });
  const present = mix.filter(part => part.grams > 0);
  return {
    lab,
    hex: hexOfLab(lab),
    onScreen: isOnScreen(lab),
    plusMinus: Math.hypot(base.plusMinus, ...errors),
    word: nearestWord(lab),
    pearl: present.some(part => part.optics.pearl),
    fluorescent: present.some(part => part.optics.emission !== undefined),
  };
}
