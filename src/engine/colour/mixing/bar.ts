import { ifDull } from '../calibration/joint/dull-jar.ts';
import { jarOptics } from '../calibration/joint/jar-model.ts';
import {
  AS_ITS_KIND,
  independent,
  type JarBelief,
  type JarParameters,
  USUAL_SPREAD,
} from '../calibration/joint/jar-parameters.ts';
import { axisSpread, carried, isotropic, plus, statedRadius } from '../calibration/joint/stated-error.ts';
import { type ColourWord, nearestWord } from '../reading/plain-words.ts';
import { colourDifference, hexOfLab, isOnScreen, type Lab, labOfReflectance } from '../spectra/cielab.ts';
import { BAND_COUNT, type Spectrum } from '../spectra/spectrum.ts';
import { SOAP_SURFACE } from './base-soap.ts';
import { glow } from './fluorescence.ts';
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
 * The cured colour of a mix in a base, with the error to expect: nine in ten bars are nearer, be their jars as usual or one of
 * them dull. It is that of the base, of the kinds as far as each moves the colour, and what jars of a kind differ by, or what
 * is left of that once bars spoke.
 */
export function predictBar(mix: readonly MixPart[], base: BaseOptics): BarPrediction {
  const lab = barLab(mix, base);
  const present = mix.filter(part => part.grams > 0);
  return {
    lab,
    hex: hexOfLab(lab),
    onScreen: isOnScreen(lab),
    plusMinus: plusMinusOf(present, base, lab),
    word: nearestWord(lab),
    pearl: present.some(part => part.optics.pearl),
    fluorescent: present.some(part => part.optics.emission !== undefined),
  };
}

const ANY_JAR: JarBelief = { parameters: AS_ITS_KIND, covariance: independent(USUAL_SPREAD) };

function plusMinusOf(mix: readonly MixPart[], base: BaseOptics, lab: Lab): number {
  const ofBase = isotropic(axisSpread(base.plusMinus) ** 2);
  const parts = mix.map((part, at) => errorOf(part, at, { mix, base, lab }));
  const without = (left: number) =>
    parts.reduce((sum, { usual }, at) => (at === left ? sum : plus(sum, usual)), ofBase);
  const usual = statedRadius(without(-1));
  const dull = parts.map(({ dull: { shift, covariance }, borneOut }, at) => {
    const stated = statedRadius(plus(without(at), covariance), shift);
    return usual + borneOut * (stated - usual);
  });
  return Math.max(usual, ...dull);
}

/** What one part leaves open about the colour of the whole, as a usual jar and as a dull one. */
function errorOf(
  { optics, grams }: MixPart,
  at: number,
  { mix, base, lab }: { mix: readonly MixPart[]; base: BaseOptics; lab: Lab },
) {
  const moved = colourDifference(lab, barLab(mix.toSpliced(at, 1), base));
  const ofKind = isotropic((axisSpread(optics.plusMinus) * Math.min(1, moved / WHOLE_EFFECT)) ** 2);
  const belief = optics.belief ?? ANY_JAR;
  const kind = optics.belief?.kind ?? optics;
  const withJar = (tried: readonly number[]) =>
    barLab(mix.with(at, { optics: jarOptics(kind, tried as unknown as JarParameters), grams }), base);
  const { belief: other, odds } = ifDull(kind, belief);
  const dull = carried(withJar, other.parameters, other.covariance, lab);
  return {
    usual: plus(ofKind, carried(withJar, belief.parameters, belief.covariance).covariance),
    dull: { ...dull, covariance: plus(ofKind, dull.covariance) },
    borneOut: Math.min(1, odds),
  };
}
