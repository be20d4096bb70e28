import { barLab, predictBar } from '../mixing/bar.ts';
import { plainBase } from '../mixing/base-soap.ts';
import type { BaseOptics, Optics } from '../mixing/optics.ts';
import { chromaOf, colourDifference, hexOfLab, hueOf, type Lab } from '../spectra/cielab.ts';
import { BAND_COUNT } from '../spectra/spectrum.ts';
import { type ColourJar, opticsOfJar } from './jar.ts';

/** A jar to compare. Spoons are teaspoons to the US cup, of what is in it. */
export type ComparedJar = {
  readonly jar: ColourJar;
  readonly gramsPerTeaspoon: number;
  readonly fullTspPerCup: number;
  readonly ceilingTspPerCup: number;
  readonly white: boolean;
};

/** Where one colour lies from another, in the one or two directions that tell most. */
export type HueTurn =
  | 'redder'
  | 'greener'
  | 'yellower'
  | 'bluer'
  | 'lighter'
  | 'darker'
  | 'livelier'
  | 'duller';

export type JarComparison = {
  /** Teaspoons to the cup of the first and of the other that are as deep as one another. */
  readonly teaspoons: readonly [number, number];
  /** Grams of pigment to the cup, likewise. */
  readonly grams: readonly [number, number];
  /** How many spoons of the other stand for one spoon of the first. */
  readonly spoonsOfOther: number;
  readonly colours: readonly [SeenColour, SeenColour];
  /** CIEDE2000 between the two at the same depth. */
  readonly deltaE: number;
  /** What the other is beside the first, what tells most first; empty where no eye would tell. */
  readonly turns: readonly HueTurn[];
  /** CIEDE2000 stated of each at full dose. */
  readonly plusMinus: readonly [number, number];
  /** The other does not get as deep before its ceiling. */
  readonly outOfReach: boolean;
};

type SeenColour = { readonly lab: Lab; readonly hex: string };

/** Colours nearer than this (CIEDE2000) look alike beside one another. */
const ALIKE = 2;
const SHARE = 0.5;

/**
 * Two jars at the same depth of colour: that of the first at half its full dose. Depth is the sum of K/S over the spectrum above
 * that of the plain soap (the "K/S sum" of strength by reflectance; ISO 787-24 takes it at one wavelength; from memory); of whites,
 * the scattering added. Closed form: one more gram adds K and S in proportion, so depth rises with the dose.
 */
export function compareJars(one: ComparedJar, other: ComparedJar): JarComparison {
  const base = plainBase('cream', false);
  const statedOf = (optics: Optics, grams: number) => predictBar([{ optics, grams }], base).plusMinus;
  const jars = [opticsOfJar(one.jar), opticsOfJar(other.jar)] as const;
  const depth = one.white && other.white ? scatteringOf : depthOf;
  const first = SHARE * one.fullTspPerCup;
  const wanted = depth(jars[0], hundred(first, one), base);
  const highest = 4 * other.ceilingTspPerCup;
  const second = doseFor(tsp => depth(jars[1], hundred(tsp, other), base), wanted, highest);
  const labs = [
    barLab([{ optics: jars[0], grams: hundred(first, one) }], base),
    barLab([{ optics: jars[1], grams: hundred(second, other) }], base),
  ] as const;
  const deltaE = colourDifference(labs[0], labs[1]);
  return {
    teaspoons: [first, second],
    grams: [first * one.gramsPerTeaspoon, second * other.gramsPerTeaspoon],
    spoonsOfOther: second / first,
    colours: [seen(labs[0]), seen(labs[1])],
    deltaE,
    turns: deltaE < ALIKE ? [] : turnsOf(labs[0], labs[1]),
    plusMinus: [
      statedOf(jars[0], hundred(one.fullTspPerCup, one)),
      statedOf(jars[1], hundred(other.fullTspPerCup, other)),
    ],
    outOfReach: second > other.ceilingTspPerCup * (1 + 1e-6),
  };
}

/** Grams in a US cup of batter of 1 g/ml (`TYPICAL_BATTER`). */
const CUP_GRAMS = 236.5882365;

/** Pigment in 100 g of batter, grams. */
const hundred = (tspPerCup: number, { gramsPerTeaspoon }: ComparedJar): number =>
  (100 * tspPerCup * gramsPerTeaspoon) / CUP_GRAMS;

const seen = (lab: Lab): SeenColour => ({ lab, hex: hexOfLab(lab) });

function depthOf({ k, s }: Optics, grams: number, base: BaseOptics): number {
  let sum = 0;
  for (let band = 0; band < BAND_COUNT; band++) {
    const mixed = (base.k[band]! + grams * k[band]!) / (base.s[band]! + grams * s[band]!);
    sum += mixed - base.k[band]! / base.s[band]!;
  }
  return sum;
}

const scatteringOf = ({ s }: Optics, grams: number): number =>
  s.reduce((sum, value) => sum + grams * value, 0);

/** The dose that reaches a depth, by halving; the most looked at where none does. */
function doseFor(depth: (tspPerCup: number) => number, wanted: number, most: number): number {
  let [low, high] = [0, most];
  if (!(depth(high) >= wanted)) return most;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (depth(middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** The hue a circle comes to next, by quarters from the red axis of CIELAB: counterclockwise, and clockwise. */
const NEXT: readonly HueTurn[] = ['yellower', 'greener', 'bluer', 'redder'];
const BEFORE: readonly HueTurn[] = ['redder', 'yellower', 'greener', 'bluer'];

/**
 * Lightness, chroma and hue difference of CIELAB (ISO 11664-4), in words: a hue is told by the axis it turns towards. The greatest
 * first, at most two, none under a third of the first.
 */
function turnsOf(from: Lab, to: Lab): readonly HueTurn[] {
  const lightness = to.l - from.l;
  const chroma = chromaOf(to) - chromaOf(from);
  const turn = ((hueOf(to) - hueOf(from) + 540) % 360) - 180;
  const hue = 2 * Math.sqrt(chromaOf(from) * chromaOf(to)) * Math.sin((turn * Math.PI) / 360);
  const quarter = Math.min(Math.floor(hueOf(from) / 90), 3);
  const parts: readonly (readonly [number, HueTurn])[] = [
    [Math.abs(lightness), lightness > 0 ? 'lighter' : 'darker'],
    [Math.abs(chroma), chroma > 0 ? 'livelier' : 'duller'],
    [Math.abs(hue), (turn > 0 ? NEXT : BEFORE)[quarter]!],
  ];
  const ranked = parts.toSorted((a, b) => b[0] - a[0]);
  const [greatest] = ranked;
  return ranked
    .filter(([size]) => size > greatest![0] / 3)
    .slice(0, 2)
    .map(([, told]) => told);
}
