import type { Carrier } from '../colourants/colourant.ts';
import type { DoseAsked } from '../dosing/request.ts';
import type { HeatSetting } from '../heat/setting.ts';
import type { WantedStrength } from '../quantities/strength.ts';
import type { Measures } from '../quantities/units.ts';
import type { AdditiveAsk } from './additives/additive.ts';
import type { FragranceAsk } from './additives/fragrance.ts';
import type { OilBlend } from './oils/blend.ts';
import type { Oil } from './oils/oil.ts';

/** The inside of a mould, centimetres and millilitres. */
export type Mould =
  | { readonly shape: 'loaf'; readonly lengthCm: number; readonly widthCm: number; readonly heightCm: number }
  | { readonly shape: 'cylinder'; readonly diameterCm: number; readonly lengthCm: number }
  | { readonly shape: 'cavities'; readonly count: number; readonly eachMillilitres: number };

/** How big the batch is: grams of oils, volume or mass of batter, or a mould filled level. */
export type BatchSize =
  | { readonly by: 'oils'; readonly grams: number }
  | { readonly by: 'batter-volume'; readonly millilitres: number }
  | { readonly by: 'batter-mass'; readonly grams: number }
  | { readonly by: 'mould'; readonly mould: Mould };

/** The three ways makers write water; a bare percent is none of them. */
export type WaterAsk =
  | { readonly by: 'lye-strength'; readonly percent: number }
  | { readonly by: 'ratio'; readonly waterPerLye: number }
  | { readonly by: 'percent-of-oils'; readonly percent: number };

/** Which alkali; `both` says what share (0..1, of the saponification, by moles) potassium hydroxide does. */
export type LyeChoice = {
  readonly kind: 'NaOH' | 'KOH' | 'both';
  readonly kohShare?: number;
  /** Fraction of the weighed alkali that is alkali, 0..1. */
  readonly naohPurity?: number;
  readonly kohPurity?: number;
  /** The lye is dissolved already, in its own water: percent of alkali in that solution, by weight. */
  readonly solutionPercent?: number;
};

/** How much of the batter goes into one portion. */
export type PortionShare =
  | { readonly by: 'volume'; readonly millilitres: number }
  | { readonly by: 'mass'; readonly grams: number }
  | { readonly by: 'parts'; readonly parts: number }
  | { readonly by: 'percent'; readonly percent: number }
  | { readonly by: 'rest' };

/** The liquid a colour is wetted in: an oil of its own, or oil dipped from the batch before the lye. */
export type CarrierAsk = {
  readonly choice: Carrier;
  readonly millilitres: number | undefined;
  /** Undefined means the batch's own blend when dipped, else a light oil of the maker's choosing. */
  readonly oil: Oil | undefined;
  readonly dipped: boolean;
};

/** One colour as typed; the door finds the colourant, on the shelf or in the catalogue. */
export type ColourAsk = {
  readonly text: string;
  /** What is usual unless the member says otherwise. */
  readonly strength: WantedStrength;
  readonly carrier: CarrierAsk | undefined;
};
export type PortionAsk = {
  /** The label the member gave it, before a colon. */
  readonly name: string | undefined;
  readonly share: PortionShare;
  readonly colours: readonly ColourAsk[];
  readonly scented: boolean;
};

/** A colour whose colourant is known: what `/dose` is asked, and the liquid it is wetted in. */
export type PlannedColour = {
  readonly asked: Omit<DoseAsked, 'strength'> & { readonly strength: WantedStrength };
  readonly carrier: CarrierAsk | undefined;
};
export type PlannedPortion = Omit<PortionAsk, 'colours' | 'name'> & {
  readonly name: string;
  readonly colours: readonly PlannedColour[];
};

export type Swirl = 'in-the-pot' | 'drop' | 'layered' | 'hanger' | 'single';

/** Everything a plan is made from; plain data, so that a recipe record is one of these. */
export type PlanRequest = {
  readonly oils: OilBlend;
  readonly size: BatchSize;
  readonly superfatPercent: number;
  /** Where nobody named one, and it is the usual. */
  readonly isSuperfatUsual?: boolean;
  readonly lye: LyeChoice;
  readonly water: WaterAsk;
  readonly portions: readonly PlannedPortion[];
  readonly additives: readonly AdditiveAsk[];
  /** Liquids named in the place of water. */
  readonly liquids: readonly AdditiveAsk[];
  readonly fragrance: FragranceAsk | undefined;
  /** What the member's scale steps in, grams: 0.1 or 1. */
  readonly scaleStepGrams: number;
  /** Batter that clings to pot and cups, percent of the batter. */
  readonly reservePercent: number;
  readonly swirl: Swirl;
  readonly heat: HeatSetting;
  /** The member's own spoons and cups. */
  readonly measures: Measures;
};
