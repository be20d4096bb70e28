import type { AlkaliBehaviour, Carrier, ColourantKind } from '../colourants/colourant.ts';
import type { Origin } from '../origin.ts';

/** What an ingredient does in the powder. */
export type Role =
  | 'substrate'
  | 'pigment'
  | 'lake'
  | 'dye'
  | 'resin'
  | 'metal'
  | 'glitter'
  | 'botanical'
  | 'carrier'
  | 'additive';

/** One ingredient of a list, recognised. */
export type Component = {
  /** As the list wrote it. */
  readonly as: string;
  /** Of the substance, kebab case: `ferric-ferrocyanide`. */
  readonly id: string;
  /** The Colour Index number it has, digits only (`77491, 77492, 77499` for a blend), or undefined. */
  readonly ci: string | undefined;
  readonly role: Role;
  readonly alkali: AlkaliBehaviour;
  /** The colour it goes to, an id such as `rust`, when it changes. */
  readonly towards?: string;
  /** What a `conditional` or `bleeds` depends on, an id such as `hot-strong-lye`. */
  readonly on?: string;
  readonly light: 'holds' | 'fades-slowly' | 'fades';
  /** True behind "may contain" or "+/-": the powder may hold it or not. */
  readonly ifPresent: boolean;
  /** Mass percent, when the list states it. */
  readonly percent?: number;
  readonly confidence: Confidence;
  /** Of the alkali behaviour. */
  readonly source: Origin;
};

/** How sure the chemistry is. */
export type Confidence = 'high' | 'medium' | 'low';

/** What the whole powder is; `glitter` is plastic or metal flake, `plain` has no colour of its own. */
export type PowderKind = ColourantKind | 'glitter' | 'metal' | 'plain' | 'unknown';

/** What an ingredient list says about a powder in raw soap. */
export type IngredientReport = {
  readonly components: readonly Component[];
  readonly kind: PowderKind;
  /** Of the weakest component that is certainly there. */
  readonly verdict: AlkaliBehaviour;
  /** Of the weakest component when those behind "may contain" are all there. */
  readonly verdictIfPresent: AlkaliBehaviour;
  readonly towards?: string;
  readonly carriers: readonly Carrier[];
  /** Level US teaspoons per US cup of raw batter; undefined where the powder must not be dosed or is unknown. */
  readonly dose: { readonly fullTspPerCup: number; readonly ceilingTspPerCup: number } | undefined;
  readonly light: 'holds' | 'fades-slowly' | 'fades';
  readonly confidence: Confidence;
  /** The id of the catalogue entry whose dose, wetting and weight it shares, or undefined. */
  readonly like: string | undefined;
  /** The liquid it is already dispersed in, when the list names one: then its strength is unknown. */
  readonly predispersedIn?: Carrier;
  /** True where the list has an ultramarine and an acid, which destroys it and frees hydrogen sulfide. */
  readonly acidMeetsUltramarine?: true;
  /** Entries of the list that were not recognised, as written. */
  readonly unknown: readonly string[];
};
