import type { CarrierAdvice } from '../../dispersion/advice.ts';
import { BOILING_C } from '../../heat/estimate.ts';
import { type AdditiveEffect, additiveById } from '../additives/additives.ts';
import { isPaste } from '../bar-kind.ts';
import { lyeSteps } from '../lye-steps.ts';
import { portionCalled } from '../portions/portion-name.ts';
import type { Filled } from '../portions/portions.ts';
import type { PlanRequest, Swirl } from '../request.ts';
import { afterPour } from './after-pour.ts';
import { at, type TimelineStep, type Trace, type Wetting } from './prep-step.ts';
import type { TimelineFacts } from './timeline-facts.ts';

/** How thick the batter should be when it is split, by what is done with it (common practice). */
export const TRACE_FOR: Readonly<Record<Swirl, Trace>> = {
  'in-the-pot': 'light',
  drop: 'light',
  layered: 'medium',
  hanger: 'light',
  single: 'light',
};

/** Lye in a frozen liquid is kept below that, C (common practice). */
const COLD_LYE_C = 40;
/** Minutes (common practice). */
const GEAR_LEAD = 5;
const SOAK_BEFORE_LYE = 10;
const OILS_LEAD = 40;
const QUICK_WETTING_LEAD = 20;
const BLENDING = 6;
const PER_PORTION = 2;
/** Minutes: a liquid is boiled and frozen the day before. */
const DAY_BEFORE = 24 * 60;
/** Tap water, C, and the slowness with which a jug of 500 g of lye water comes down to the room, minutes to 1/e. */
const TAP_C = 20;
/** What a jug keeps of the heat of dissolving while it is stirred (common practice: 33 % lye reaches 90 C and more). */
const KEPT = 0.85;
const JUG_COOLING = 60;
const JUG_GRAMS = 500;
/** Lye water is "down" when it is this near the pouring temperature, K, and never sooner than this many minutes. */
const NEAR = 5;
const SHORTEST_COOLING = 30;

/** How hot lye water gets from tap water, C, less what the jug loses meanwhile. */
function hottestLye(riseK: number): number {
  return TAP_C + KEPT * riseK;
}

/**
 * Minutes for lye water to cool from its hottest to near the start temperature in a room: a lumped jug whose slowness
 * grows with the cube root of its mass. An estimate: a cold water bath halves it.
 */
export function lyeCoolingMinutes(
  solutionGrams: number,
  riseK: number,
  setting: { readonly startC: number; readonly roomC: number },
): number {
  const hottest = hottestLye(riseK);
  const goal = Math.max(setting.startC, setting.roomC) + NEAR;
  const slowness = JUG_COOLING * Math.cbrt(solutionGrams / JUG_GRAMS);
  const minutes =
    hottest <= goal ? 0 : slowness * Math.log((hottest - setting.roomC) / (goal - setting.roomC));
  return Math.max(SHORTEST_COOLING, Math.ceil(minutes / 5) * 5);
}

/**
 * The whole pour in order, each step with its minutes before pouring (negative: after): what wants time first (soaking,
 * lye that cools), then oils and quick wetting, last the minutes in which batter thickens. Portions that are only
 * whisked are coloured before those that are stick-blended, which thicken (common practice).
 */
export function timelineOf(
  request: PlanRequest,
  filled: Filled,
  facts: TimelineFacts,
): readonly TimelineStep[] {
  const last = fromSplitting(request, filled, facts.kohShare);
  const blendAt =
    last.reduce((most, { minutesBeforePour }) => Math.max(most, minutesBeforePour), 0) + BLENDING;
  const steps = [
    ...beforeBlending(request, filled, facts, blendAt),
    ...blending(request, facts, blendAt),
    ...last,
    ...afterPour(request, facts),
  ];
  // A stable sort: steps of the same minute stay in the order they were thought of.
  return steps.sort((a, b) => b.minutesBeforePour - a.minutesBeforePour);
}

type ColourStep = {
  readonly wet: CarrierAdvice['wet'];
  readonly values: Wetting;
};

/** What each dry colour needs before it meets batter; bought dispersions need nothing. */
function colourSteps(request: PlanRequest, filled: Filled): readonly ColourStep[] {
  return request.portions.flatMap((portion, which) =>
    (filled.portions[which]?.doses ?? []).flatMap((dose, index) => {
      const { asked, carrier: wished } = portion.colours[index]!;
      const { choice: carrier, spoons: carrierSpoons, wet } = dose.carrier;
      const values: Wetting = {
        colour: asked.colourant.names,
        spoons: dose.spoons,
        carrier,
        carrierSpoons,
        oil: wished?.oil?.names,
        dipped: wished?.dipped === true,
      };
      return asked.premix === undefined ? [{ wet, values }] : [];
    }),
  );
}

function beforeBlending(
  request: PlanRequest,
  filled: Filled,
  facts: TimelineFacts,
  blendAt: number,
): TimelineStep[] {
  const { heat } = request;
  const { jug } = facts;
  const lyeAt = blendAt + lyeCoolingMinutes(jug.lyeGrams + jug.waterInJugGrams, facts.lyeRise, heat);
  const colours = colourSteps(request, filled);
  const soaking = colours.filter(({ wet }) => wet === 'soak');
  const dippedGrams = filled.taken.dipped.reduce((sum, { grams }) => sum + grams, 0);
  const oilsAt = blendAt + OILS_LEAD;
  const soakAt = dippedGrams > 0 ? oilsAt - 10 : lyeAt + SOAK_BEFORE_LYE;
  const quickAt = blendAt + QUICK_WETTING_LEAD;
  const doing = (effect: AdditiveEffect) =>
    facts.additives.filter(({ id }) => additiveById(id).effects.includes(effect));
  return [
    at(lyeAt + SOAK_BEFORE_LYE + GEAR_LEAD, 'gear-on', {}),
    ...soaking.map(({ values }) => at(soakAt, 'soak-colour', values)),
    ...lyeSteps(facts, {
      lyeAt,
      dayBefore: lyeAt + DAY_BEFORE,
      intoOilsAt: blendAt + 1,
      hottestC: hottestLye(facts.lyeRise),
      acids: doing('eats-lye').filter(({ id }) => additiveById(id).liquid === undefined),
    }),
    at(oilsAt, 'weigh-oils', { grams: facts.oilGrams }),
    at(oilsAt, 'melt-oils', { startC: heat.startC }),
    ...(dippedGrams > 0 ? [at(oilsAt - 5, 'dip-oil', { grams: dippedGrams })] : []),
    ...(soaking.length > 0 ? [at(quickAt, 'stir-in-passing', { count: soaking.length })] : []),
    ...colours
      .filter(({ wet }) => wet !== 'soak')
      .map(({ wet, values }) => at(quickAt, wet === 'froth' ? 'froth-colour' : 'stir-colour', values)),
    at(blendAt + 10, isPaste(facts.kohShare) ? 'ready-tub' : 'line-mould', {}),
    ...(heat.process === 'oven' && facts.peakCoreC < BOILING_C
      ? [at(blendAt + 10, 'warm-oven', { ovenC: facts.ovenC })]
      : []),
    at(blendAt + 3, 'check-temperatures', {
      startC: heat.startC,
      coldLye: jug.method === 'frozen' && heat.startC > COLD_LYE_C,
    }),
  ];
}

function blending(request: PlanRequest, facts: TimelineFacts, blendAt: number): TimelineStep[] {
  const stirredIn = facts.additives.filter(
    ({ id }) => !additiveById(id).effects.includes('eats-lye') && additiveById(id).liquid === undefined,
  );
  return [
    at(blendAt, 'lye-into-oils', { trace: TRACE_FOR[request.swirl] }),
    ...stirredIn.map(({ id, grams }) => at(blendAt - 2, 'add-additive', { additive: id, grams })),
  ];
}

/** From the split to the pour: whisked portions, then stick-blended ones, scent last of all in each. */
function fromSplitting(request: PlanRequest, filled: Filled, kohShare: number): TimelineStep[] {
  const portions = filled.portions.map((portion, which) => ({
    portion,
    asked: (request.portions[which]?.colours ?? []).map(({ asked }) => asked.colourant),
    stickBlended: portion.doses.find(({ carrier }) => carrier.blend === 'stick-blend'),
  }));
  const coloured = portions.filter(({ asked }) => asked.length > 0);
  const order = [
    ...coloured.filter(({ stickBlended }) => stickBlended === undefined),
    ...coloured.filter(({ stickBlended }) => stickBlended !== undefined),
  ];
  const scented = filled.portions.filter(({ fragranceGrams }) => fragranceGrams > 0);
  const scentAt = scented.length > 0 ? PER_PORTION : 0;
  const steps = order.map(({ portion, asked, stickBlended }, place) => {
    const into = {
      name: portionCalled(portion.name),
      colours: asked.map(({ names }) => names),
      called: asked.map(({ names, called }) => called ?? names),
    };
    const minutes = scentAt + PER_PORTION * (order.length - place);
    return stickBlended === undefined
      ? at(minutes, 'whisk-portion', into)
      : at(minutes, 'stick-blend-portion', { ...into, carrier: stickBlended.carrier.choice });
  });
  const splitAt = scentAt + PER_PORTION * (order.length + 1);
  const cups = filled.portions.map(({ name, millilitres }) => ({
    name: portionCalled(name),
    millilitres,
  }));
  return [
    ...(cups.length > 1 ? [at(splitAt, 'split', { portions: cups })] : []),
    ...steps,
    ...scented.map(({ name, fragranceGrams }) =>
      at(scentAt, 'scent-portion', { name: portionCalled(name), grams: fragranceGrams }),
    ),
    isPaste(kohShare) ? at(0, 'into-tub', {}) : pouring(request.swirl, filled),
  ];
}

function pouring(swirl: Swirl, filled: Filled): TimelineStep {
  const order = filled.portions.map(({ name }) => portionCalled(name));
  // One pot is poured as it is: there is nothing to pour back into it, or to draw through it.
  if (filled.portions.length < 2) return at(0, 'pour-single', {});
  return swirl === 'layered' ? at(0, 'pour-layered', { order }) : at(0, `pour-${swirl}`, {});
}
