import type { Carrier, Colourant } from '../../colourants/colourant.ts';
import type { AdditiveId } from '../request.ts';
import type { LyePart } from './plan-answer.ts';

type Names = Colourant['names'];
export type Trace = 'emulsion' | 'light' | 'medium';

/** A colour and the liquid it is wetted in; `oil` where the member named one, `dipped` where it is the batch's own. */
export type Wetting = {
  readonly colour: Names;
  readonly spoons: string;
  readonly carrier: Carrier;
  readonly carrierSpoons: string;
  readonly oil: Names | undefined;
  readonly dipped: boolean;
};

/** Every step of a pour, with the values its sentence needs. */
export interface PrepSteps {
  'gear-on': Record<never, never>;
  'soak-colour': Wetting;
  'mix-lye': {
    lye: readonly { readonly alkali: LyePart['alkali']; readonly grams: number }[];
    waterGrams: number;
    holdBackGrams: number;
    hottestC: number;
  };
  'dissolve-acid': { additive: AdditiveId; grams: number };
  'milk-lye': { additive: AdditiveId; grams: number };
  'weigh-oils': { grams: number };
  'melt-oils': { startC: number };
  'dip-oil': { grams: number };
  'froth-colour': Wetting;
  'stir-colour': Wetting;
  'stir-in-passing': { count: number };
  'line-mould': Record<never, never>;
  'warm-oven': { ovenC: number };
  'check-temperatures': { startC: number };
  'lye-into-oils': { trace: Trace };
  'add-additive': { additive: AdditiveId; grams: number };
  split: { portions: readonly { readonly name: string; readonly millilitres: number }[] };
  'whisk-portion': { name: string; colours: readonly Names[] };
  'stick-blend-portion': { name: string; colours: readonly Names[]; carrier: Carrier };
  'scent-portion': { name: string; grams: number };
  'pour-in-the-pot': Record<never, never>;
  'pour-drop': Record<never, never>;
  'pour-layered': { order: readonly string[] };
  'pour-hanger': Record<never, never>;
  'pour-single': Record<never, never>;
  'leave-open': Record<never, never>;
  'keep-cool': Record<never, never>;
  wrap: Record<never, never>;
  'into-oven': { ovenC: number };
  'into-fridge': Record<never, never>;
  'watch-heat': { hours: number; peakC: number };
  'clean-up': Record<never, never>;
  unmould: { hours: number };
}
export type PrepStepId = keyof PrepSteps;

/** One thing to do, counted back from the pour; negative minutes come after it. */
export type TimelineStep = {
  [Id in PrepStepId]: {
    readonly minutesBeforePour: number;
    readonly step: Id;
    readonly values: PrepSteps[Id];
  };
}[PrepStepId];
