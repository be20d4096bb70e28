import type { AlkaliBehaviour } from '../../../../src/engine/colourants/colourant.ts';
import type { PowderKind } from '../../../../src/engine/stability/report.ts';

/** One ingredient list of an invented product, and what a reader of labels says about it. */
export type ListCase = {
  readonly product: string;
  readonly list: string;
  /** Ids of the components, in any order. */
  readonly ids: readonly string[];
  readonly kind: PowderKind;
  readonly verdict: AlkaliBehaviour;
  /** Entries nobody could place, as written. */
  readonly unknown: readonly string[];
};
