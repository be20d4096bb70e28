import type { Origin } from '../../origin.ts';
import type { JarBelief } from '../calibration/joint/jar-parameters.ts';
import type { Spectrum } from '../spectra/spectrum.ts';

/**
 * What a colourant does to light in soap: absorption `k` and scattering `s` added per gram of colourant
 * per 100 g of batter, in units of the scattering of plain ungelled soap (whose S is 1).
 */
export type Optics = {
  /** The catalogue's id of the colourant, or the member's own. */
  readonly id: string;
  readonly k: Spectrum;
  readonly s: Spectrum;
  /** Light given back by a fluorescent pigment; outside Kubelka-Munk, hence an empirical term. */
  readonly emission?: Emission;
  /** Pearlescent: the look depends on the angle, which one colour cannot tell. */
  readonly pearl: boolean;
  /** Error of the kind's own colour at full dose beyond what its jars differ by, stated CIEDE2000: nine in ten are nearer. */
  readonly plusMinus: number;
  /** A full dose of the kind, grams per 100 g of batter: what the trade calls full, against which dirt is told. */
  readonly full: number;
  /** Where something is known of this very jar: its kind, and how it differs from that. Else any jar of the kind. */
  readonly belief?: JarBelief & { readonly kind: Optics };
  readonly origin: Origin;
};

/** Fluorescence: a share of the light the pigment absorbs below `below` nm comes back as `shape`. */
export type Emission = {
  /** Share of absorbed light given back, 0 to 1. */
  readonly yield: number;
  readonly below: number;
  /** Sums to 1 over the bands. */
  readonly shape: Spectrum;
};

/** Absorption and scattering of soap before any colourant. */
export type BaseOptics = { readonly k: Spectrum; readonly s: Spectrum; readonly plusMinus: number };

/** One colourant of a mix: grams per 100 g of batter. */
export type MixPart = { readonly optics: Optics; readonly grams: number };
