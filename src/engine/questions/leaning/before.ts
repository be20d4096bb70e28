import type { EmergencyId } from '../../hazards/index.ts';
import type { Job } from '../jobs.ts';
import type { LyeTopic } from '../lye/topic.ts';
import type { NamedAnswer } from '../technique/parts.ts';
import type { Technique } from '../technique/topic.ts';

/** A command that a question was answered with, and its options as texts. */
export type Ran = {
  readonly kind: 'command';
  /** Undefined where the command was typed as such. */
  readonly job: Job | undefined;
  readonly command: string;
  readonly given: Readonly<Record<string, string>>;
  /** The colour that the question wished for beside them, in its own words. */
  readonly wish?: string | undefined;
};

/** What the question before was understood as: all that a later one can lean on. */
export type Before =
  | Ran
  /** `named`: the part of it that was answered; `words`: what was asked. */
  | {
      readonly kind: 'technique';
      readonly id: Technique;
      readonly named?: NamedAnswer | undefined;
      readonly words?: string | undefined;
    }
  | { readonly kind: 'matter'; readonly id: LyeTopic }
  | { readonly kind: 'emergency'; readonly ids: readonly EmergencyId[] };

/** A command with what was changed in it, as it is run. */
export type Laid = Omit<Ran, 'kind'>;

/** What is done with a recipe: whichever command says so, lye is at hand. */
export const isOfLye = ({ command, given }: Laid): boolean => command === 'plan' && given.oils !== undefined;

/** What a talk holds: what was understood last, and the last command in it, which a matter in between leaves as it was. */
export type Talk = { readonly last: Before; readonly ran: Ran | undefined };
