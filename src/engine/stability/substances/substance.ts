import type { AlkaliBehaviour, Carrier } from '../../colourants/colourant.ts';
import type { Origin } from '../../origin.ts';
import type { Confidence, PowderKind, Role } from '../report.ts';

/** One ingredient that lists name, and what raw soap does to it. */
export type Substance = {
  /** Kebab case, stable for ever: `ferric-ferrocyanide`. */
  readonly id: string;
  readonly role: Role;
  /** What a powder is when this is what colours it; undefined where it colours nothing. */
  readonly kind?: PowderKind;
  /** The name labels print first, then what else lists write, any language. */
  readonly names: readonly [string, ...string[]];
  /** Colour Index numbers, digits only. */
  readonly ci: readonly string[];
  /** E numbers, without the E: `172`. */
  readonly e?: readonly string[];
  /** Sections of 21 CFR that list it; `none` where the lists are known to leave it out. */
  readonly us?: readonly string[] | 'none';
  readonly alkali: { readonly behaviour: AlkaliBehaviour; readonly towards?: string; readonly on?: string };
  /** `holds` unless said. */
  readonly light?: 'holds' | 'fades-slowly' | 'fades';
  /** True for a family whose members lists name apart: a label repeats what the list wrote. */
  readonly family?: true;
  readonly confidence: Confidence;
  readonly source: Origin;
  /** The liquid it is, when a list that holds it is a ready dispersion. */
  readonly liquid?: Carrier;
  /** The catalogue entry with the same dose, wetting and weight. */
  readonly like?: string;
};

/** Names over as many lines as they take; the first is the label's. */
export const named = (names: string): readonly [string, ...string[]] => {
  const [first = '', ...others] = names.split(/;\s*/).map(name => name.trim());
  return [first, ...others];
};
