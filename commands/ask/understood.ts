import type { Reply } from '../../src/conversation/reply.ts';
import type { Diagnosis } from '../../src/engine/flaws/diagnosis.ts';
import type { RiskyScent } from '../../src/engine/hazards/index.ts';
import type { Courtesy } from '../../src/engine/questions/fields/courtesy.ts';
import type { Outside } from '../../src/engine/questions/fields/scope.ts';
import type { SmallTalk } from '../../src/engine/questions/fields/small-talk.ts';
import type { Facts } from '../../src/engine/questions/found/facts.ts';
import type { Correction } from '../../src/engine/questions/found/words-of.ts';
import type { Job } from '../../src/engine/questions/jobs/jobs.ts';
import type { PlainRequest } from '../../src/engine/questions/jobs/plain-requests.ts';
import type { AskedOfIt, Laid } from '../../src/engine/questions/leaning/before.ts';
import type { Lack } from '../../src/engine/questions/leaning/lean-kinds.ts';
import type { WeighedLye } from '../../src/engine/questions/lye/sums/check.ts';
import type { LyeTopic } from '../../src/engine/questions/lye/topics/topic.ts';
import type { NamedAnswer } from '../../src/engine/questions/technique/named-answers.ts';
import type { Technique } from '../../src/engine/questions/technique/topic.ts';
import type { DoseAnswerData } from '../../src/presenting/dose-data.ts';

/* What a question was understood as, carried beside its answer; at the door it becomes a part of what the answer tells programs. */

/** Options of a command as texts. */
type Texts = Readonly<Record<string, string>>;

/** What a question tells, or that part of it that an answer goes on from. */
type FactsTold = Partial<Omit<Facts, 'target'>> & { readonly target?: { readonly text: string } | undefined };

/** A command that was run, or that would be. */
type OfCommand = {
  readonly kind: 'command';
  readonly command: string;
  readonly job: Job | PlainRequest['kind'];
  readonly given?: Texts;
  readonly facts?: FactsTold;
  readonly corrections?: readonly Correction[];
  /** What of a colourant was told first. */
  readonly asked?: AskedOfIt;
  /** How a recipe was scaled by a turn before. */
  readonly scaled?: Laid['scaled'];
  readonly hue?: string;
  /** One command for each jar. */
  readonly lines?: readonly string[];
};

/** What was said near lye: a matter of handling, or what was reckoned or not understood of weights. */
export type SaidNearLye = LyeTopic | 'sums' | 'in-passing' | 'stopped' | 'weighed' | 'oils-for-lye';

type OfLye = {
  readonly kind: 'lye';
  readonly lye: SaidNearLye;
  /** How surely, 0 to 1, where the matter was learned and not found by patterns. */
  readonly chance?: number;
  /** The technique that it was asked as. */
  readonly technique?: Technique;
  readonly job?: 'lye';
  readonly weighed?: WeighedLye;
  readonly given?: Texts;
};

/** How coloured batter is worked with; `job` and `facts` where it is the colour of a thing that is named. */
type OfTechnique = {
  readonly kind: 'technique';
  readonly technique: Technique;
  readonly named?: NamedAnswer;
  readonly command: string;
  readonly given: Texts;
  readonly job?: Job;
  readonly facts?: FactsTold;
};

/** Another field; `chat`: a courtesy, or talk to pass the time. */
type OfAnotherField = {
  readonly kind: 'outside';
  readonly outside: Outside;
  readonly chat?: Courtesy | SmallTalk;
};

/** Something is asked back; what is known by then is kept. */
type AskedBack = {
  readonly kind: 'asked-back';
  readonly command: 'ask' | 'help' | 'dose';
  readonly job?: Job;
  readonly given: Texts;
  readonly lacks?: Lack;
  readonly colour?: string;
};

/** What was understood of a question. `leans`: together with the turn before. */
export type Understood = (
  | OfCommand
  | OfLye
  | OfTechnique
  | OfAnotherField
  | AskedBack
  | { readonly kind: 'nothing'; readonly facts: Facts }
  /** An earlier answer is called into question. */
  | { readonly kind: 'doubt'; readonly facts: Facts }
  | { readonly kind: 'scents'; readonly scents: readonly RiskyScent[] }
  /** First aid, of which its own data tells. */
  | { readonly kind: 'first-aid' }
  /** A "no" alone. */
  | { readonly kind: 'refused' }
) & { readonly leans?: true };

/** Why an answer is none: the Refusal that it tells, or what its command lacks. */
export type Shortfall = { readonly problem: string } | { readonly lacking: readonly string[] };

/** A command's answer with what of it a talk goes on from. */
export type Ran = Reply & {
  readonly short?: Shortfall;
  /** Causes of a flaw, the likeliest first. */
  readonly flaw?: Pick<Diagnosis, 'causes' | 'doNotUse'>;
  readonly doses?: DoseAnswerData['doses'];
};

/** An answer beside what its question was understood as. */
export type AskReply = Ran & { readonly understood: Understood };

/** The answer as it is shown: what was understood, and why it is none, are told to programs. */
export function shown({ understood, short, flaw: _flaw, doses: _doses, ...reply }: AskReply): Reply {
  return { ...reply, data: { ...reply.data, ...short, ...dataOf(understood) } };
}

function dataOf({ kind, ...told }: Understood): object {
  switch (kind) {
    case 'first-aid':
    case 'refused':
      return {};
    case 'asked-back':
      return { understood: { ...told, askedBack: true } };
    case 'nothing':
      return { understood: { ...told, nothing: true } };
    case 'doubt':
      return { understood: { ...told, job: 'doubt', command: 'help' } };
    default:
      return { understood: told };
  }
}

/** First aid, beside that it is. */
export const ofFirstAid = (reply: Reply): AskReply => ({ ...reply, understood: { kind: 'first-aid' } });

/** An answer that says of itself that it leans on the turn before. */
export const leansOnTalk = (reply: AskReply): AskReply => ({
  ...reply,
  understood: { ...reply.understood, leans: true },
});

/** The likeliest cause of the flaw that an answer tells of; undefined where it tells of none. */
export const likeliestCause = ({ flaw }: Pick<Ran, 'flaw'>): Diagnosis['causes'][number] | undefined =>
  flaw?.causes[0];

/** What was said near lye, where that was understood. */
export const saidNearLye = (understood: Understood): SaidNearLye | undefined =>
  understood.kind === 'lye' ? understood.lye : undefined;

/** From here on one cause is likelier than all the others. */
export const HALF = 0.5;
