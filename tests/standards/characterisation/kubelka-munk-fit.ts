import { ratioOfReflectance } from '../../../src/engine/colour/mixing/kubelka-munk.ts';
import { inverseSaunderson, saundersonReflectance } from '../../../src/engine/colour/mixing/saunderson.ts';
import type { BorderedSolution, BorderedSystem } from './bordered-cholesky.ts';
import { filmReflectance } from './film-optics.ts';
import { type Film, hidingReflectanceOfFilm } from './films.ts';
import type { CharacteriseSettings } from './settings.ts';

/** The unknowns, all as natural logarithms so that none can turn negative. */
export type FilmFit = {
  /** Band by band: ln K of every pigment, then ln S of every pigment. */
  readonly optics: Float64Array;
  /** ln thickness of every film. */
  readonly thickness: Float64Array;
};

/** One side of one film: what was seen over which backing. */
type Side = {
  readonly film: number;
  /** Cube root of the reading, one a band. */
  readonly seen: Float64Array;
  readonly backing: Float64Array;
};

/** A weak prior: ln K about 0.4 of the white's S, ln S about a third. */
const USUAL = { absorption: -1, scattering: -1.2, absorptionSpread: 6, scatteringSpread: 2 } as const;
const FIXED = 1e4;
const NUDGE = 1e-5;
/** No step moves a logarithm further than this. */
const LONGEST_STEP = 1.5;

/** The least-squares problem behind `characterise`: misfit, its derivatives, and the prior (Tikhonov's regularisation). */
export class KubelkaMunkFit {
  readonly #films: readonly Film[];
  readonly #pigments: readonly string[];
  readonly #sides: readonly Side[];
  readonly #shares: readonly (readonly { pigment: number; share: number }[])[];
  readonly #bands: number;
  readonly #white: number;
  /** ln S of the reference white, one a band. */
  readonly #whiteLine: Float64Array;
  readonly #settings: CharacteriseSettings;

  constructor(
    films: readonly Film[],
    wavelengths: readonly number[],
    referenceWhite: string | undefined,
    settings: CharacteriseSettings,
  ) {
    this.#films = films;
    this.#settings = settings;
    this.#bands = wavelengths.length;
    this.#pigments = [...new Set(films.flatMap(film => [...film.shares.keys()]))].sort();
    this.#white = referenceWhite === undefined ? -1 : this.#pigments.indexOf(referenceWhite);
    this.#whiteLine = Float64Array.from(wavelengths, nm => -settings.whitePower * Math.log(nm / 550));
    this.#shares = films.map(film =>
      [...film.shares].map(([name, share]) => ({ pigment: this.#pigments.indexOf(name), share })),
    );
    this.#sides = films.flatMap((film, at) => [
      ...this.#side(at, film.overWhite, film.white),
      ...this.#side(at, film.overBlack, film.black),
    ]);
  }

  #side(film: number, seen: readonly number[] | undefined, backing: readonly number[]): Side[] {
    if (seen === undefined) return [];
    const within = (value: number) => inverseSaunderson(value, this.#settings.surface, 1e-3);
    return [{ film, seen: Float64Array.from(seen, Math.cbrt), backing: Float64Array.from(backing, within) }];
  }

  /** Where ln K of a pigment stands; ln S stands as many places later as there are pigments. */
  #at(band: number, pigment: number): number {
    return band * 2 * this.#pigments.length + pigment;
  }

  /** A first guess: the usual S, and K of every masstone from its hiding reflectance. */
  start(): FilmFit {
    const count = this.#pigments.length;
    const optics = new Float64Array(this.#bands * 2 * count);
    const masstones = this.#pigments.map(name => {
      const film = this.#films.find(({ shares }) => shares.size === 1 && shares.has(name));
      return film && hidingReflectanceOfFilm(film, this.#settings.surface);
    });
    for (let band = 0; band < this.#bands; band++) {
      for (let pigment = 0; pigment < count; pigment++) {
        const at = this.#at(band, pigment);
        const seen = masstones[pigment]?.[band];
        optics[at + count] = pigment === this.#white ? this.#whiteLine[band]! : USUAL.scattering;
        optics[at] =
          seen === undefined
            ? USUAL.absorption
            : USUAL.scattering + Math.log(Math.max(this.#ratio(seen), 1e-4));
      }
    }
    const thickness = new Float64Array(this.#films.length).fill(Math.log(this.#settings.commonThickness));
    return { optics, thickness };
  }

  #ratio(seen: number): number {
    const { surface } = this.#settings;
    return ratioOfReflectance(
      inverseSaunderson(Math.min(Math.max(seen, surface.outside + 1e-3), 0.99), surface),
    );
  }

  /** Cube root of what the side would show. */
  #shown(side: Side, band: number, absorption: number, scattering: number): number {
    const within = filmReflectance(absorption, scattering, side.backing[band]!);
    return Math.cbrt(saundersonReflectance(within, this.#settings.surface));
  }

  /** K and S of a film's mixture in a band. */
  #mixed(fit: FilmFit, film: number, band: number): { k: number; s: number } {
    const count = this.#pigments.length;
    let k = 0;
    let s = 0;
    for (const { pigment, share } of this.#shares[film]!) {
      const at = this.#at(band, pigment);
      k += share * Math.exp(fit.optics[at]!);
      s += share * Math.exp(fit.optics[at + count]!);
    }
    return { k, s };
  }

  /** Pseudo-Huber loss of the misfit plus the squared distance from the prior; the less the better. */
  cost(fit: FilmFit): number {
    let cost = 0;
    for (const side of this.#sides) {
      const depth = Math.exp(fit.thickness[side.film]!);
      for (let band = 0; band < this.#bands; band++) {
        const { k, s } = this.#mixed(fit, side.film, band);
        const residual =
          (this.#shown(side, band, k * depth, s * depth) - side.seen[band]!) / this.#settings.noise;
        // Huber's idea, smoothly (pseudo-Huber loss): an outlier pulls with its distance, not with its square.
        cost += 4 * (Math.sqrt(1 + (residual * residual) / 2) - 1);
      }
    }
    this.#eachTikhonovTerm(fit, (_at, weight, off) => {
      cost += weight * off * off;
    });
    for (const thickness of fit.thickness) cost += (this.#off(thickness) / this.#settings.thickness) ** 2;
    return cost;
  }

  #off(thickness: number): number {
    return thickness - Math.log(this.#settings.commonThickness);
  }

  /** Calls back with each Tikhonov term: where, its weight, how far off, and its other end if it is a difference. */
  #eachTikhonovTerm(
    fit: FilmFit,
    tell: (at: number, weight: number, off: number, from?: number) => void,
  ): void {
    const count = this.#pigments.length;
    const { absorptionStep, scatteringStep } = this.#settings;
    for (let band = 0; band < this.#bands; band++) {
      const line = this.#whiteLine[band]!;
      for (let pigment = 0; pigment < count; pigment++) {
        const k = this.#at(band, pigment);
        const s = k + count;
        tell(k, USUAL.absorptionSpread ** -2, fit.optics[k]! - USUAL.absorption);
        tell(s, 3 / this.#bands / USUAL.scatteringSpread ** 2, fit.optics[s]! - USUAL.scattering);
        if (pigment === this.#white) tell(s, FIXED, fit.optics[s]! - line);
        if (band === 0) continue;
        const fall = line - this.#whiteLine[band - 1]!;
        const before = 2 * count;
        tell(k, absorptionStep ** -2, fit.optics[k]! - fit.optics[k - before]!, k - before);
        tell(s, scatteringStep ** -2, fit.optics[s]! - fit.optics[s - before]! - fall, s - before);
      }
    }
  }

  /** The Gauss-Newton equations about a fit: banded over the optics, the thicknesses as border. */
  normalEquations(fit: FilmFit): BorderedSystem {
    const size = fit.optics.length;
    const reach = 2 * this.#pigments.length;
    const films = this.#films.length;
    const system = {
      band: new Float64Array(size * (reach + 1)),
      reach,
      border: new Float64Array(size * films),
      corner: new Float64Array(films).fill(this.#settings.thickness ** -2),
      right: new Float64Array(size),
      cornerRight: fit.thickness.map(value => -this.#off(value) / this.#settings.thickness ** 2),
    };
    for (const side of this.#sides) {
      for (let band = 0; band < this.#bands; band++) this.#addReading(system, fit, side, band);
    }
    const entry = (row: number, column: number) => row * (reach + 1) + reach - row + column;
    this.#eachTikhonovTerm(fit, (at, weight, off, from) => {
      system.band[entry(at, at)]! += weight;
      system.right[at]! -= weight * off;
      if (from === undefined) return;
      system.band[entry(from, from)]! += weight;
      system.band[entry(at, from)]! -= weight;
      system.right[from]! += weight * off;
    });
    return system;
  }

  /** Adds one reading's share to the normal equations. */
  #addReading(system: BorderedSystem, fit: FilmFit, side: Side, band: number): void {
    const { film } = side;
    const { noise } = this.#settings;
    const depth = Math.exp(fit.thickness[film]!);
    const { k, s } = this.#mixed(fit, film, band);
    const shown = this.#shown(side, band, k * depth, s * depth);
    const off = shown - side.seen[band]!;
    const byK = (this.#shown(side, band, k * depth * (1 + NUDGE), s * depth) - shown) / NUDGE;
    const byS = (this.#shown(side, band, k * depth, s * depth * (1 + NUDGE)) - shown) / NUDGE;
    const byDepth = byK + byS;
    const weight = 1 / Math.sqrt(1 + (off / noise) ** 2 / 2) / noise ** 2;
    const count = this.#pigments.length;
    const slopes = this.#shares[film]!.flatMap(({ pigment, share }) => {
      const at = this.#at(band, pigment);
      return [
        { at, slope: (byK * share * Math.exp(fit.optics[at]!)) / k },
        { at: at + count, slope: (byS * share * Math.exp(fit.optics[at + count]!)) / s },
      ];
    });
    const size = system.right.length;
    for (const { at, slope } of slopes) {
      system.right[at]! -= weight * slope * off;
      system.border[film * size + at]! += weight * slope * byDepth;
      for (const other of slopes) {
        if (other.at > at) continue;
        system.band[at * (system.reach + 1) + system.reach - at + other.at]! += weight * slope * other.slope;
      }
    }
    system.corner[film]! += weight * byDepth * byDepth;
    system.cornerRight[film]! -= weight * byDepth * off;
  }

  /** The fit after a step. */
  moved(fit: FilmFit, { inner, outer }: BorderedSolution): FilmFit {
    const step = (value: number) => Math.min(Math.max(value, -LONGEST_STEP), LONGEST_STEP);
    return {
      optics: fit.optics.map((value, at) => value + step(inner[at]!)),
      thickness: fit.thickness.map((value, at) => value + step(outer[at]!)),
    };
  }

  /** K and S of every pigment. */
  constants(fit: FilmFit) {
    const count = this.#pigments.length;
    const read = (offset: number) =>
      this.#pigments.map((_, pigment) =>
        Float64Array.from({ length: this.#bands }, (_, band) =>
          Math.exp(fit.optics[this.#at(band, pigment) + offset]!),
        ),
      );
    return { pigments: this.#pigments, absorption: read(0), scattering: read(count) };
  }
}
