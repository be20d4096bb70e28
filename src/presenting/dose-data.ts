import type { TimelineStep } from '../engine/batch/planning/prep-step.ts';
import type { Caution } from '../engine/dosing/cautions.ts';
import type { Dose, DoseAnswer } from '../engine/dosing/request.ts';
import { printMixed } from '../engine/quantities/number.ts';
import type { Measured, PracticalSpoons } from '../engine/quantities/spoons.ts';
import { printStrength } from '../engine/quantities/strength.ts';
import { wordsIn } from '../words/index.ts';

/*
 * Doses as a reply's `data`: the engine's values, and beside them the same in one fixed writing whatever the reader's
 * language, `1/4 tsp + 1/16 tsp`, which the amounts of a command read back.
 */

/** Spoons in the fixed writing. */
export const spoonsData = (measured: Measured): string => wordsIn('en').quantities.measure(measured);

const withText = (spoons: PracticalSpoons) => ({ ...spoons, text: spoonsData(spoons) });

export const doseData = ({ strength, spoons, carrier, premix, ...dose }: Dose) => ({
  ...dose,
  strength: printStrength(strength),
  spoons: spoonsData(spoons),
  practical: withText(spoons),
  carrier: { ...carrier, spoons: spoonsData(carrier.spoons), practical: withText(carrier.spoons) },
  ...(premix && {
    premix: { ...premix, spoons: spoonsData(premix.spoons), practical: withText(premix.spoons) },
  }),
});

/** Teaspoons of a caution in the fixed writing, beside the numbers. */
export const cautionData = ({ id, values }: Caution) => ({
  id,
  values: {
    ...values,
    ...('askedTeaspoons' in values && { asked: `${printMixed(values.askedTeaspoons)} tsp` }),
    ...('ceilingTeaspoons' in values && { ceiling: `${printMixed(values.ceilingTeaspoons)} tsp` }),
  },
});

/** An answer of `/dose` as it is told to programs. */
export const doseAnswerData = (answer: DoseAnswer) => ({
  ...answer,
  doses: answer.doses.map(doseData),
  cautions: answer.cautions.map(cautionData),
});
export type DoseAnswerData = ReturnType<typeof doseAnswerData>;

/** A step with the spoons of its colour in the fixed writing. */
export const stepData = ({ values, ...step }: TimelineStep) => ({
  ...step,
  values:
    'carrierSpoons' in values
      ? { ...values, spoons: spoonsData(values.spoons), carrierSpoons: spoonsData(values.carrierSpoons) }
      : values,
});
