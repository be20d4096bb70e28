import type { Carrier, Colourant, ColourantKind } from '../colourants/colourant.ts';
import type { CarrierAdvice, DishTest } from '../dispersion/advice.ts';
import type { Batter } from '../dispersion/batter.ts';
import type { Band } from '../origin.ts';
import type { Portion } from '../quantities/amount.ts';
import type { PracticalSpoons } from '../quantities/spoons.ts';
import type { Strength } from '../quantities/strength.ts';
import type { Measures } from '../quantities/units.ts';
import type { Caution } from './cautions.ts';

/**
 * A colourant that is already wet. `percent`: its pigment by weight is known. `spoons`: the member's own paste, one
 * spoon of powder in so much carrier. `unknown`: bought, and the label does not say.
 */
export type Premix =
  | { readonly by: 'percent'; readonly pigmentShare: number; readonly carrier: Carrier }
  | {
      readonly by: 'spoons';
      readonly powderMillilitres: number;
      readonly carrierMillilitres: number;
      readonly carrier: Carrier;
    }
  | { readonly by: 'unknown'; readonly carrier: Carrier };

/** One colourant asked for, with what the member's own jar of it is known to do. */
export type DoseAsked = {
  readonly colourant: Colourant;
  readonly strength: Strength;
  /** What one level teaspoon of this jar weighs, grams; else the kind's bulk density speaks. */
  readonly gramsPerTeaspoon?: number;
  readonly dishTest?: DishTest;
  /** How strong this jar is over its kind, 1 as usual: a strength by name is a depth of colour, so it takes the less. */
  readonly timesKind?: number;
  readonly premix?: Premix;
  /** The carrier the member wants, or that the premix is in. */
  readonly carrier?: Carrier;
};

export type DoseRequest = {
  readonly portion: Portion;
  /** One to five colourants. */
  readonly colourants: readonly DoseAsked[];
  /** The recipe's own batter; a typical one unless given. */
  readonly batter?: Batter;
  readonly measures?: Measures;
};

/** How much of a paste or bought dispersion holds the dose. */
export type PremixUse = {
  /** Share of the member's own paste; may exceed 1 (make that many). Absent where there is no paste to share. */
  readonly share?: number;
  /** Of the wet premix. */
  readonly grams: Band;
  readonly teaspoons: number;
  readonly spoons: PracticalSpoons;
};

export type Dose = {
  readonly colourant: { readonly id: string; readonly kind: ColourantKind };
  readonly strength: Strength;
  /** Of dry colourant, in the member's own teaspoons. */
  readonly teaspoons: number;
  readonly spoons: PracticalSpoons;
  readonly millilitres: number;
  readonly grams: Band;
  /** True when the member's own weighing of a level spoon gave the grams; else offer to narrow them. */
  readonly weighedSpoon: boolean;
  readonly ceilingTeaspoons: number;
  /** `teaspoons / ceilingTeaspoons`, 0 to 1. */
  readonly ceilingShare: number;
  readonly perCup: number;
  readonly perPoundOfOils: number;
  /** Teaspoons asked for, when more than this answer gives. */
  readonly askedTeaspoons?: number;
  /** How strong the jar is over its kind, where that changed the dose. */
  readonly timesKind?: number;
  /** The same, whether it changed the dose or the dose was said in spoons. */
  readonly overKind?: number;
  readonly carrier: CarrierAdvice & { readonly spoons: PracticalSpoons };
  /** Present when the colourant comes already wet: spoon this, not the dry powder. */
  readonly premix?: PremixUse;
};

/** Before and after, in percent, in that portion alone. */
export type Shift = { readonly fromPercent: number; readonly toPercent: number };

export type DoseAnswer = {
  readonly portion: {
    readonly millilitres: number;
    readonly cups: number;
    readonly grams: number;
    readonly oilsGrams: number;
    /** True when a typical batter stood in for the recipe's own. */
    readonly typicalBatter: boolean;
  };
  readonly doses: readonly Dose[];
  readonly superfatShift?: Shift;
  readonly lyeShift?: Shift;
  readonly cautions: readonly Caution[];
};
