import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';

const { one, whole } = numbersIn('en');
const pc = (percent: number) => `${one(percent)} %`;

type Warned = 'boils-over' | 'batch-large';

/** What a plan says where it comes near to what hurts. */
export const limits: {
  readonly warnings: { readonly [Id in Warned]: (values: PlanWarnings[Id]) => string };
  /** Weights that the member gave and that were made to fit, behind the first line. */
  readonly scaled: (v: { from: string; to: string; fills: boolean }) => string;
} = {
  warnings: {
    'boils-over': ({ peakC, startC, sweet }) => spaced`
      May erupt: the core may reach ${degrees(peakC)}, where its water boils, and throw hot, caustic batter
      out like a volcano.
      ${startC > 38 ? 'Pour cooler (start:“38 C”)' : 'Pour cooler'}${sweet ? ', with less honey, sugar or milk' : ''};
      no wrapping, no oven, a tray under the mould; watch it from a distance, goggles and gloves on.
    `,
    'batch-large': ({ kilograms, most }) => spaced`
      ${whole(kilograms)} kg of oils is beyond a household batch (about ${most} kg): the heat estimate
      is of one loaf and does not hold, a spill is an emergency, and so much lye needs the equipment and
      rules of a workplace. Make it in smaller batches.
    `,
  },
  scaled: ({ from, to, fills }) =>
    `Your ${from} of oils were scaled to ${to} to ${fills ? 'fill the mould' : 'make the size you gave'}.`,
};

export const portionSuperfat = (v: { portion: string; percent: number; lowest: number }) => spaced`
  ${v.portion} ends at ${pc(v.percent)} superfat, and may be lye-heavy (${pc(v.lowest)}) if the oils sit at
  the low end of their ranges. Raise the superfat, or use oil of its own for the colour instead of dipping
  it.
`;
