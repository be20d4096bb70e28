import type { Oil } from '../../batch/oils/oil.ts';
import { labOfHex } from '../spectra/cielab.ts';
import { reflectanceOfLab } from '../spectra/reconstruct.ts';
import { mapSpectrum, type Spectrum, spectrum } from '../spectra/spectrum.ts';
import { ratioOfReflectance } from './kubelka-munk.ts';
import type { BaseOptics } from './optics.ts';
import { inverseSaunderson, type SaundersonSurface } from './saunderson.ts';

/** The cast of an uncoloured cured bar. */
export type BaseShade = 'white' | 'cream' | 'yellow' | 'green' | 'deep';

/**
 * Soap seen off the glare: refractive index about 1.46 to 1.5, and a dull cut face whose own reflection
 * of about 0.03 is what keeps a black bar from looking blacker than L* 20.
 */
export const SOAP_SURFACE: SaundersonSurface = { outside: 0.03, inside: 0.6 };

/**
 * Uncoloured cured bars by their oils. From memory: typical bars of lard and coconut, palm, sunflower, virgin olive, unrefined palm.
 */
const LOOKS: Readonly<Record<BaseShade, string>> = {
  white: '#f3efe4',
  cream: '#ece3cb',
  yellow: '#e6d6a2',
  green: '#d5d3a4',
  deep: '#c9a765',
};

/** A gelled bar is more translucent: less is scattered, so the same colour looks deeper. From memory. */
const GELLED_SCATTERING = 0.75;
/** Soap is translucent, where the theory is least sure, and no two bases are alike. */
const BASE_PLUS_MINUS = 3;

/** K/S of the uncoloured bars; S of plain soap is 1, so this is K. */
const ABSORPTION: Readonly<Record<BaseShade, Spectrum>> = {
  white: absorptionOf(LOOKS.white),
  cream: absorptionOf(LOOKS.cream),
  yellow: absorptionOf(LOOKS.yellow),
  green: absorptionOf(LOOKS.green),
  deep: absorptionOf(LOOKS.deep),
};

function absorptionOf(look: string): Spectrum {
  const seen = reflectanceOfLab(labOfHex(look), SOAP_SURFACE.outside);
  return mapSpectrum(seen, value => ratioOfReflectance(inverseSaunderson(value, SOAP_SURFACE)));
}

/** Shares of the oils by the cast they give, any unit; they are brought to a sum of 1. */
export type ShadeShare = { readonly shade: BaseShade; readonly share: number };

/** The cast an oil gives: olive is the green one, the others go by their yellowness. */
export function shadeOfOil(oil: Pick<Oil, 'id' | 'yellowness'>): BaseShade {
  return oil.id.startsWith('olive') ? 'green' : oil.yellowness;
}

/** Soap of these oils before any colourant: what the oils absorb adds up by share. */
export function baseSoap(shades: readonly ShadeShare[], gelled: boolean): BaseOptics {
  const total = shades.reduce((sum, { share }) => sum + share, 0);
  const k = spectrum(band =>
    shades.reduce((sum, { shade, share }) => sum + (share / total) * (ABSORPTION[shade][band] ?? 0), 0),
  );
  return { k, s: spectrum(() => (gelled ? GELLED_SCATTERING : 1)), plusMinus: BASE_PLUS_MINUS };
}

/**
 * Soap of one cast: it scatters less once it gelled.
 * @example plainBase('white', true).s[0] < plainBase('white', false).s[0] // true
 */
export function plainBase(shade: BaseShade, gelled: boolean): BaseOptics {
  return baseSoap([{ shade, share: 1 }], gelled);
}
