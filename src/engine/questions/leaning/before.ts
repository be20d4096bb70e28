import type { EmergencyId } from '../../hazards/index.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { Job } from '../jobs/jobs.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import type { NamedAnswer } from '../technique/named-answers.ts';
import type { Technique } from '../technique/topic.ts';
import type { Danger } from './danger/danger-kind.ts';
import type { Subject } from './subject/talk-subject.ts';

/** A command that a question was answered with, and its options as texts. */
export type Ran = {
  readonly kind: 'command';
  /** Undefined where the command was typed as such. */
  readonly job: Job | undefined;
  readonly command: string;
  readonly given: Readonly<Record<string, string>>;
  /** The colour that the question wished for beside them, in its own words. */
  readonly wish?: string | undefined;
  /** What was asked of its thing, where its answer says that first. */
  readonly asked?: AskedOfIt | undefined;
  /** How many times the recipe that was told this one is, or that it was brought to another size: what takes the scaling back is of the first. */
  readonly scaled?: number | 'to-size' | undefined;
  /** A flaw that was surely found to be lye in the bar. */
  readonly burns?: true;
};

/** What of a colourant is told in a sentence of its own: whether it wanders, whether light takes it. */
export const ASKED_OF_IT = ['bleeds', 'fades'] as const;
export type AskedOfIt = (typeof ASKED_OF_IT)[number];

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
  | { readonly kind: 'matter'; readonly id: LyeTopic; readonly words?: string | undefined }
  | { readonly kind: 'emergency'; readonly ids: readonly EmergencyId[] }
  /** Of the group’s contest. */
  | { readonly kind: 'contest' }
  /** A recipe was asked for: what was told of one before (`hadOne`) no longer stands. */
  | { readonly kind: 'recipe'; readonly hadOne?: true }
  /** It was not understood, but named what it is about. */
  | { readonly kind: 'open' };

/** A command with what was changed in it, as it is run. */
export type Laid = Omit<Ran, 'kind'>;

/** What is done with a recipe: whichever command says so, lye is at hand. */
export const isOfLye = ({ command, given }: Laid): boolean => command === 'plan' && given.oils !== undefined;

/** What a talk holds: what was understood last, and the last command in it, which a matter in between leaves as it was. */
export type Talk = {
  readonly last: Before;
  readonly ran: Ran | undefined;
  readonly subject?: Subject | undefined;
  /** What may hurt in what it is about, until something else is asked. */
  readonly danger?: Danger | undefined;
  /** What was asked, behind the question that it leant on where it was short. */
  readonly words?: string | undefined;
};

const OF_LIGHT =
  /(?<!\p{L})(?:fade\p{L}*|sunlight|sun|windowsill|over time|sol|la luz|con el tiempo|destin\p{L}*|desvanec\p{L}*|decolor\p{L}*)(?!\p{L})/u;
const OF_BLEEDING =
  /(?<!\p{L})(?:bleed\p{L}*|stain\p{L}*|facecloth|washcloth|flannel|sangra\p{L}*|migra\p{L}*|mancha\p{L}*)(?!\p{L})/u;

/** Whether it is light or bleeding that a question about a colourant asks of; undefined for lye and all else. Pure. */
export function askedIn(question: string): AskedOfIt | undefined {
  const text = unaccented(question);
  if (/(?<!\p{L})(?:lye|sosa|soda|lejia)(?!\p{L})/u.test(text)) return undefined;
  return OF_BLEEDING.test(text) ? 'bleeds' : OF_LIGHT.test(text) ? 'fades' : undefined;
}

/** What was asked before and the turn that goes on from it, as one text: a sentence each. Pure. */
export const asOneText = (before: string, turn: string): string => `${before}. ${turn}`;
