import { barLab } from '../colour/mixing/bar.ts';
import { baseSoap, type ShadeShare, SOAP_SURFACE } from '../colour/mixing/base-soap.ts';
import { ratioOfReflectance } from '../colour/mixing/kubelka-munk.ts';
import { inverseSaunderson } from '../colour/mixing/saunderson.ts';
import { colourDifference, hexOfLab, type Lab } from '../colour/spectra/cielab.ts';
import { reflectanceOfLab } from '../colour/spectra/reconstruct.ts';
import { spectrum } from '../colour/spectra/spectrum.ts';
import type { Origin } from '../origin.ts';

/** How a plant is soaked in oil. */
export const INFUSING = {
  /** Dried plant to oil, by weight. */
  plantToOil: { low: 1 / 10, high: 1 / 5 },
  cold: { weeksLow: 4, weeksHigh: 6 },
  warm: { celsius: 60, hoursLow: 2, hoursHigh: 4 },
  origin: { trust: 'common practice', source: 'dried plants in a closed jar of oil' } as Origin,
} as const;

export type InfusedAsk = {
  /** A cured bar of the same infused oil: its share of the recipe's oils, 0 to 1, and its colour. */
  readonly bar: { readonly share: number; readonly lab: Lab };
  readonly target: Lab;
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
};

export type InfusedAnswer = {
  /** Share of the recipe's oils to infuse, 0 to 1. */
  readonly share: number;
  readonly lab: Lab;
  readonly hex: string;
  /** CIEDE2000 from what is wanted. */
  readonly deltaE: number;
  /** Even all of the oils infused would not be deep enough. */
  readonly tooWeak: boolean;
  /** What this plant gives does not lead near the colour at any share. */
  readonly otherColour: boolean;
};

const STEPS = 400;
/** Further off than this (CIEDE2000) it is a related colour at best. */
const NEAR = 6;

/**
 * How much of the oils to infuse for a colour, from one test bar. What the plant left in the bar is absorption alone (it is dissolved,
 * so it scatters nothing): K of the bar less that of the plain soap, in proportion to the share of infused oil (Beer's law within
 * Kubelka and Munk). The share whose bar is nearest to what is wanted, from none to all of the oils.
 */
export function infusedShare({ bar, target, shades, gelled }: InfusedAsk): InfusedAnswer {
  const base = baseSoap(shades, gelled);
  const seen = reflectanceOfLab(bar.lab, SOAP_SURFACE.outside);
  const perShare = spectrum(band => {
    const ratio = ratioOfReflectance(inverseSaunderson(Math.min(seen[band]!, 0.999), SOAP_SURFACE));
    return Math.max(0, ratio * base.s[band]! - base.k[band]!) / bar.share;
  });
  const at = (share: number): Lab =>
    barLab([], { ...base, k: spectrum(band => base.k[band]! + share * perShare[band]!) });
  const tries = Array.from({ length: STEPS + 1 }, (_, step) => {
    const share = step / STEPS;
    const lab = at(share);
    return { share, lab, deltaE: colourDifference(lab, target) };
  });
  const best = tries.reduce((least, one) => (one.deltaE < least.deltaE ? one : least));
  const isFar = best.deltaE > NEAR;
  return {
    ...best,
    hex: hexOfLab(best.lab),
    tooWeak: isFar && best.share === 1,
    otherColour: isFar && best.share < 1,
  };
}
