import type { LyeTopic } from '../lye/topics/topic.ts';
import type { Technique } from '../technique/topic.ts';
import type { Aspect } from './aspects/aspect.ts';
import type { Laid, Ran } from './before.ts';
import type { Slots } from './turn/slots.ts';

/** What a turn that leans on nothing that is kept lacks: what is asked back for. */
export type Lack =
  | 'amount-of'
  | 'lye-over'
  | 'name-for'
  | 'of-what'
  | 'what-happened'
  | 'whole-recipe'
  | 'which-thing';

/** How a turn is read that leans on the one before. */
export type Lean =
  /** A command with what was changed; of two either may be meant. `unit`: how its amounts are to be told. */
  | { readonly kind: 'runs'; readonly readings: readonly Laid[]; readonly unit?: Slots['unit'] }
  /** More of the answer before, by what was asked of it; `behind`: of the flaw that was spoken of before an aside. */
  | { readonly kind: 'part'; readonly of: Aspect; readonly behind?: Ran }
  /** "Lye?" after spoons of a colour. */
  | { readonly kind: 'matter'; readonly id: LyeTopic }
  /** The same once more, in the language that was asked for. */
  | { readonly kind: 'again' }
  /** What is said of working with colour. */
  | { readonly kind: 'technique'; readonly id: Technique; readonly words?: string }
  /** How much scent goes with so many grams of oils. */
  | { readonly kind: 'scent'; readonly grams: number }
  /** More of the group’s contest. */
  | { readonly kind: 'contest' }
  /** "Ok": nothing is asked. */
  | { readonly kind: 'fine' }
  | { readonly kind: 'asks'; readonly lacks: Lack; readonly slots?: Slots };

/** Near lye what is unclear is asked for whole. */
export const ASKS_RECIPE: Lean = { kind: 'asks', lacks: 'whole-recipe' };

/** A command run as it stands. */
export const run = ({ job, command, given, wish, asked, scaled }: Laid): Lean => ({
  kind: 'runs',
  readings: [
    {
      job,
      command,
      given,
      ...(wish !== undefined && { wish }),
      ...(asked && { asked }),
      ...(scaled !== undefined && { scaled }),
    },
  ],
});
