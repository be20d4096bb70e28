import type { SaundersonSurface } from '../../../src/engine/colour/mixing/saunderson.ts';

/** Refractive index 1.5: oil, soap, most binders. */
export const ORDINARY_SURFACE: SaundersonSurface = { outside: 0.04, inside: 0.6 };

/** The prior of the fit, its Tikhonov weights written as spreads (one standard deviation). */
export type CharacteriseSettings = {
  readonly surface: SaundersonSurface;
  /** Of a reading, in the cube root of reflectance (0.03 is about three units of L*). */
  readonly noise: number;
  /** Of the change of ln S from band to band: scattering runs smoothly over wavelength. */
  readonly scatteringStep: number;
  /** Of the change of ln K from band to band: absorption may turn sharply. */
  readonly absorptionStep: number;
  /** Of ln thickness of a film about the common one. */
  readonly thickness: number;
  /** The common thickness, in units in which the reference white has S = 1 at 550 nm. */
  readonly commonThickness: number;
  /** S of the reference white falls with this power of wavelength. */
  readonly whitePower: number;
};

/** Chosen by cross-validation over pigments left out whole; the outcome is flat about these values. */
export const CHARACTERISE_SETTINGS: CharacteriseSettings = {
  surface: ORDINARY_SURFACE,
  noise: 0.03,
  scatteringStep: 0.15,
  absorptionStep: 0.5,
  thickness: 0.35,
  commonThickness: 10,
  whitePower: 1,
};
