import type { Carrier, Colourant } from '../../colourants/colourant.ts';
import type { Measured } from '../../quantities/spoons.ts';
import type { AdditiveId } from '../additives/additive.ts';
import type { LyePart } from '../lye/lye.ts';
import type { PortionName } from '../portions/portion-name.ts';

type Names = Colourant['names'];
type Weighed = { readonly additive: AdditiveId; readonly grams: number };
type Alkalis = readonly { readonly alkali: LyePart['alkali']; readonly grams: number }[];
export type Trace = 'emulsion' | 'light' | 'medium';

/** A colour and the liquid it is wetted in; `oil` where the member named one, `dipped` where it is the batch's own. */
export type Wetting = {
  readonly colour: Names;
  readonly spoons: Measured;
  readonly carrier: Carrier;
  readonly carrierSpoons: Measured;
  readonly oil: Names | undefined;
  readonly dipped: boolean;
};

/** A cup that is coloured: its colours, and what each is called without the brackets that tell its kind apart. */
export type StirredIn = {
  readonly name: PortionName;
  readonly colours: readonly Names[];
  readonly called: readonly Names[];
};

/** Every step of a pour, with the values its sentence needs. */
export interface PrepSteps {
  'gear-on': Record<never, never>;
  'soak-colour': Wetting;
  'boil-off': { additive: AdditiveId; percent: number };
  'freeze-liquid': Weighed;
  'mix-lye': {
    lye: Alkalis;
    waterGrams: number;
    /** Cold liquids and ice that are in the jug with the water. */
    liquids: readonly Weighed[];
    holdBackGrams: number;
    hottestC: number;
    /** Liquids in it that are sour: they heat and spit with lye. */
    sour: boolean;
  };
  'mix-lye-frozen': {
    lye: Alkalis;
    waterGrams: number;
    liquids: readonly Weighed[];
    holdBackGrams: number;
  };
  'pour-solution': {
    alkali: LyePart['alkali'];
    percent: number;
    grams: number;
    waterGrams: number;
    holdBackGrams: number;
  };
  'dissolve-acid': Weighed;
  'acid-into-oils': Weighed;
  'liquid-into-oils': Weighed;
  'weigh-oils': { grams: number };
  'melt-oils': { startC: number };
  'dip-oil': { grams: number };
  'froth-colour': Wetting;
  'stir-colour': Wetting;
  'stir-in-passing': { count: number };
  'line-mould': Record<never, never>;
  'ready-tub': Record<never, never>;
  'warm-oven': { ovenC: number };
  /** `coldLye`: it was stirred into a frozen liquid and is not warmed. */
  'check-temperatures': { startC: number; coldLye: boolean };
  'lye-into-oils': { trace: Trace };
  'add-additive': { additive: AdditiveId; grams: number };
  split: { portions: readonly { readonly name: PortionName; readonly millilitres: number }[] };
  'whisk-portion': StirredIn;
  'stick-blend-portion': StirredIn & { carrier: Carrier };
  'scent-portion': { name: PortionName; grams: number };
  'pour-in-the-pot': Record<never, never>;
  'pour-drop': Record<never, never>;
  'pour-layered': { order: readonly PortionName[] };
  'pour-hanger': Record<never, never>;
  'pour-single': Record<never, never>;
  /** A paste is poured into no mould. */
  'into-tub': Record<never, never>;
  'leave-open': Record<never, never>;
  'keep-cool': Record<never, never>;
  wrap: Record<never, never>;
  /** Asked to be kept warm, it would overheat. */
  'too-hot-to-wrap': { peakC: number };
  'into-oven': { ovenC: number };
  'into-fridge': Record<never, never>;
  'watch-heat': { hours: number; peakC: number };
  'stays-cool': { peakC: number };
  'clean-up': Record<never, never>;
  unmould: { hours: number };
  /** Salt in percent of the oils. */
  'cut-salt-bar': { percent: number; fromHours: number; toHours: number };
  'keep-paste': Record<never, never>;
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

/** A step so many minutes before the pour. */
export function at<Id extends PrepStepId>(
  minutesBeforePour: number,
  step: Id,
  values: PrepSteps[Id],
): TimelineStep {
  return { minutesBeforePour, step, values } as TimelineStep;
}
