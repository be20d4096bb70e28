import type { Colourant } from '../../colourants/colourant.ts';
import { TYPICAL_BATTER } from '../../dispersion/batter.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../quantities/units.ts';
import { barLab } from '../mixing/bar.ts';
import { plainBase, SOAP_SURFACE } from '../mixing/base-soap.ts';
import { ratioOfReflectance } from '../mixing/kubelka-munk.ts';
import type { Optics } from '../mixing/optics.ts';
import { inverseSaunderson } from '../mixing/saunderson.ts';
import { chromaOf, colourDifference, labOfHex } from '../spectra/cielab.ts';
import { reflectanceOfLab } from '../spectra/reconstruct.ts';
import { mapSpectrum } from '../spectra/spectrum.ts';
import { CHANGED_PLUS_MINUS, KIND_LOOKS, LOOK_ORIGIN, lookAfterLye, NEON_GLOW } from './colourant-looks.ts';
import { MEASURED_OPTICS, type MeasuredOptics } from './measured-optics.ts';

/** Grams per 100 g of batter of so many level US teaspoons to the US cup of batter. */
export function gramsPerHundred(
  tspPerCup: number,
  gramsPerTeaspoon: number,
  gramsPerMillilitre = TYPICAL_BATTER.gramsPerMillilitre,
): number {
  return (100 * tspPerCup * gramsPerTeaspoon) / (US_CUP_ML * gramsPerMillilitre);
}

/** What a level US teaspoon of the kind usually weighs, grams. */
export function usualTeaspoon({ bulkDensity }: Pick<Colourant, 'bulkDensity'>): number {
  return bulkDensity.typical * US_TEASPOON_ML;
}

/** Grams per 100 g of typical batter at the full dose of the trade. */
export function fullDose(colourant: Pick<Colourant, 'bulkDensity' | 'dose'>): number {
  return gramsPerHundred(colourant.dose.fullTspPerCup, usualTeaspoon(colourant));
}

/** The bar in which a full dose shows its own colour: white, not gelled. */
const SHOW_BASE = plainBase('white', false);
/** CIELAB chroma above which a bar is called colourful rather than grey or brown. */
const VIVID = 24;
/** Measured spectra, whose strength in soap is still a guess. */
const MEASURED_PLUS_MINUS = 5;

const known = new WeakMap<Colourant, Optics>();

/**
 * What a catalogue colourant does in soap. From published spectra where there are any (their shape; the strength
 * is set so that the trade's full dose gives the usual colour), else from the smoothest reflectance of that
 * colour. A colour that lye changes is that of the cured bar. Every strength is an estimate until calibrated.
 * @example opticsOf(findColourant('gold mica')).pearl // true
 */
export function opticsOf(colourant: Colourant): Optics {
  const found = known.get(colourant);
  if (found !== undefined) return found;
  const changed = lookAfterLye(colourant);
  const measured = MEASURED_OPTICS[colourant.gradeOf ?? colourant.id] ?? MEASURED_OPTICS[colourant.id];
  const optics =
    measured === undefined || changed !== undefined
      ? fromLook(colourant, changed)
      : fromSpectra(colourant, measured);
  known.set(colourant, optics);
  return optics;
}

function fromLook(colourant: Colourant, changed: string | undefined): Optics {
  const { scattering, mostRatio, plusMinus } = KIND_LOOKS[colourant.kind];
  const grams = fullDose(colourant);
  const seen = reflectanceOfLab(labOfHex(changed ?? colourant.hex), SOAP_SURFACE.outside);
  const k = mapSpectrum(seen, (value, band) => {
    const masstone = ratioOfReflectance(inverseSaunderson(Math.min(value, 0.999), SOAP_SURFACE, 0.004));
    const ratio = (masstone * mostRatio) / (masstone + mostRatio);
    return Math.max(ratio * (1 + scattering) - SHOW_BASE.k[band]!, 0) / grams;
  });
  const glow = NEON_GLOW[colourant.id];
  return stillGrowing(grams, {
    id: colourant.id,
    k,
    s: mapSpectrum(seen, () => scattering / grams),
    ...(glow && { emission: glow }),
    pearl: colourant.kind === 'mica',
    full: grams,
    plusMinus: changed === undefined ? plusMinus : CHANGED_PLUS_MINUS,
    origin: LOOK_ORIGIN,
  });
}

/** Weakens a vivid colourant until a full dose is no duller than half of it: full is where colour is fullest. */
function stillGrowing(grams: number, optics: Optics): Optics {
  let k = optics.k;
  const chroma = (share: number) =>
    chromaOf(barLab([{ optics: { ...optics, k }, grams: grams * share }], SHOW_BASE));
  if (chroma(1) < VIVID) return optics;
  for (let step = 0; step < 20 && chroma(1) < chroma(0.7) - 0.2; step++)
    k = mapSpectrum(k, value => value * 0.92);
  return { ...optics, k };
}

function fromSpectra(colourant: Colourant, { k, s, origin }: MeasuredOptics): Optics {
  const grams = fullDose(colourant);
  const strength =
    colourant.kind === 'white'
      ? KIND_LOOKS.white.scattering / (s[17] ?? 1)
      : strengthThatShows(colourant, { k, s });
  return {
    id: colourant.id,
    k: Float64Array.from(k, value => (value * strength) / grams),
    s: Float64Array.from(s, value => (value * strength) / grams),
    pearl: false,
    full: grams,
    plusMinus: MEASURED_PLUS_MINUS,
    origin,
  };
}

/**
 * The strength at which the bar comes nearest to the usual full-dose colour, but no further than where its chroma
 * is greatest or a band's K/S is (makers call full the dose beyond which colour hardly grows).
 */
function strengthThatShows({ hex, kind }: Colourant, { k, s }: Pick<MeasuredOptics, 'k' | 's'>): number {
  const target = labOfHex(hex);
  const { mostRatio } = KIND_LOOKS[kind];
  const shape = { k: Float64Array.from(k), s: Float64Array.from(s) };
  let best = { strength: 0, difference: Number.POSITIVE_INFINITY };
  let mostChroma = 0;
  for (let step = 0; step <= 160; step++) {
    const strength = 10 ** (-2 + step / 40);
    const lab = barLab([{ optics: { ...PLAIN, ...shape }, grams: strength }], SHOW_BASE);
    const chroma = chromaOf(lab);
    const deepest = Math.max(
      ...shape.k.map((value, band) => (value * strength) / (1 + shape.s[band]! * strength)),
    );
    if (deepest > mostRatio || (mostChroma > VIVID && chroma < mostChroma)) break;
    mostChroma = Math.max(mostChroma, chroma);
    const difference = colourDifference(lab, target);
    if (difference < best.difference) best = { strength, difference };
  }
  return best.strength;
}

const PLAIN = { id: '', pearl: false, full: 1, plusMinus: 0, origin: LOOK_ORIGIN } as const;
