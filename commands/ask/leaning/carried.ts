import type { Context } from '../../../src/conversation/context.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import { asOneText, isOfLye, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import { isAsked, putInPlace, turnsToAnother } from '../../../src/engine/questions/leaning/carried.ts';
import { isStillHurt } from '../../../src/engine/questions/leaning/subject/points-back.ts';
import { colourantOf } from '../../../src/engine/questions/leaning/subject/subject.ts';
import { thingOf } from '../../../src/engine/questions/leaning/subject/things.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import { askedOfBench } from '../../../src/engine/questions/technique/asked/read.ts';
import type { Technique } from '../../../src/engine/questions/technique/topic.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { ranCommand } from '../reading/ran-command.ts';
import { answeredTo } from '../technique/technique-answer.ts';
import {
  type AskReply,
  HALF,
  leansOnTalk,
  likeliestCause,
  type Ran,
  type Understood,
} from '../understood.ts';
import { isNothing } from './leaned-back.ts';
import { partReply } from './leaned-part.ts';
import { leanedRun } from './leaned-run.ts';

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 18;

type Turn = {
  readonly question: string;
  /** What the turn is answered with by itself. */
  readonly alone: AskReply;
  readonly talk: Talk;
  readonly context: Context;
  readonly readAnew: (text: string) => Promise<AskReply>;
};

/**
 * A turn that says too little by itself, with what the talk is about put in: what is asked of a thing that the turn before named, one more sign
 * of a flaw, a dose without its colourant, a pronoun in whose place its subject stands. Whichever is then surely understood is the answer;
 * undefined where none is, so that nothing is guessed. Near lye nothing is put in that a figure hangs on.
 */
export async function carriedReply(
  question: string,
  { alone, readAnew }: Pick<Turn, 'alone' | 'readAnew'>,
  context: Context,
): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk?.words || question.startsWith('/') || wordCount(question) > MOST_WORDS) return undefined;
  if (!MAY_CARRY.has(talk.last.kind) || turnsToAnother(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed || tellsOfHurt(question) || isStillHurt(question)) return undefined;
  const turn: Turn = { question, alone, talk, context, readAnew };
  const reply =
    (isWeak(turn) ? onBench(turn) : undefined) ??
    (await oneMoreSign(turn)) ??
    (isWeak(turn) ? ((await itsDose(turn)) ?? (await withOneChange(turn))) : undefined) ??
    (await inItsPlace(turn));
  return reply && leansOnTalk(reply);
}
/** After first aid, a contest and a recipe that is asked for a turn has ways of its own. */
const MAY_CARRY: ReadonlySet<Talk['last']['kind']> = new Set(['command', 'technique', 'matter', 'open']);

const likeliest = (reply: Ran): number => likeliestCause(reply)?.probability ?? 0;

/** Learned near lye and less sure than this, a turn may be of what came before as well. */
const SURE_NEAR_LYE = 0.8;

/** Nothing is known of the turn by itself, or hardly. */
function isWeak({ question, alone, context }: Turn): boolean {
  if (isNothing(alone, question, context) || alone.short) return true;
  const { understood } = alone;
  if (understood.kind === 'lye') return understood.lye === 'unsure' || isUnsureOfLye(understood);
  if (understood.kind !== 'command') return false;
  const { command, job, given = {} } = understood;
  if (command === 'diagnose') return likeliest(alone) < HALF;
  return (
    command === 'shelf list' ||
    command === 'shelf add' ||
    (command === 'help' && job === 'help' && Object.keys(given).length === 0)
  );
}
const isUnsureOfLye = ({ chance }: { readonly chance?: number }): boolean =>
  chance !== undefined && chance < SURE_NEAR_LYE;

/** What the turn asks, of a thing that the turn before named. */
function onBench({ question, talk, context }: Turn): AskReply | undefined {
  if (lyeTopicIn(question) !== undefined) return undefined;
  const asked = askedOfBench(question, talk.words);
  return asked && answeredTo(asked.technique, asked.to, context);
}

/** A flaw with one more sign that is told of it, where both together are no less sure than the turn alone, or sure. */
async function oneMoreSign(turn: Turn): Promise<AskReply | undefined> {
  const { question, alone, talk, context } = turn;
  const { last } = talk;
  if (last.kind !== 'command' || last.command !== 'diagnose') return undefined;
  const { understood } = alone;
  const isDiagnosed = understood.kind === 'command' && understood.command === 'diagnose';
  const technique = techniqueOf(understood);
  if (isAsked(question))
    return isDiagnosed && isWeak(turn) ? await partReply('points', last, { question, context }) : undefined;
  if (askedOfBench(question) || (!isDiagnosed && technique === undefined && !isWeak(turn))) return undefined;
  if (!isDiagnosed && !diagnose(question).findings.some(({ present }) => present)) return undefined;
  const words = asOneText(last.given.words ?? '', question);
  const joint = await ranCommand('diagnose', { words }, context);
  const cause = likeliestCause(joint);
  if (!cause || (alone.flaw?.doNotUse && !joint.flaw?.doNotUse)) return undefined;
  const least = isDiagnosed
    ? Math.min(likeliest(alone), SURE_NEAR_LYE)
    : technique === undefined
      ? HALF
      : SURE_NEAR_LYE;
  if (cause.probability < least) return undefined;
  return {
    ...joint,
    understood: { kind: 'command', job: 'diagnose', command: 'diagnose', given: { words } },
  };
}

/** The one colourant that a talk is about, where no recipe was reckoned last. */
function colourantIn({ last, subject }: Talk): string | undefined {
  if (last.kind === 'command' && (isOfLye(last) || last.command === 'diagnose')) return undefined;
  return (last.kind === 'command' ? thingOf(last) : undefined) ?? colourantOf(subject);
}

/** So much batter and no colourant: of the one that was spoken of. */
async function itsDose({ alone, talk, context }: Turn): Promise<AskReply | undefined> {
  const { understood, short } = alone;
  if (understood.kind !== 'command' || understood.command !== 'dose') return undefined;
  const { job, given = {} } = understood;
  const isWetted = job === 'wet' && short !== undefined && 'lacking' in short;
  // What is wetted is the powder that was spoken of, by a flaw too.
  const colourant = colourantIn(talk) ?? (isWetted ? colourantOf(talk.subject) : undefined);
  if (given.colourant !== undefined || colourant === undefined) return undefined;
  if (given.portion === undefined && !isWetted) return undefined;
  const asked = { job: isWetted ? ('wet' as const) : ('dose' as const), command: 'dose' };
  return await leanedRun([{ ...asked, given: { ...given, colourant } }], { context });
}

/** Options of which one at most may be another. */
const THING: ReadonlySet<string> = new Set(['colourant', 'item', 'target', 'mix']);

/** Commands of a colour, of which one option may be another. */
const OF_A_COLOUR: ReadonlySet<string> = new Set(['dose', 'match', 'preview']);

/** The question before and the turn read as one: the same command of the same thing, with one option more or other. */
async function withOneChange({ question, talk, context, readAnew }: Turn): Promise<AskReply | undefined> {
  const { last, words } = talk;
  if (!words || last.kind !== 'command' || !OF_A_COLOUR.has(last.command)) return undefined;
  const reply = await readAnew(asOneText(words, question));
  const { understood } = reply;
  if (understood.kind !== 'command' || understood.command !== last.command) return undefined;
  if (isNothing(reply, question, context)) return undefined;
  const { given = {} } = understood;
  const names = new Set([...Object.keys(given), ...Object.keys(last.given)]);
  const changed = [...names].filter(name => given[name] !== last.given[name]);
  return changed.length === 1 && !THING.has(changed[0]!) ? reply : undefined;
}

/** Commands that answer what is asked of a colourant. */
const CHECK: ReadonlySet<string> = new Set(['colourant check']);
const CHECK_OR_DOSE: ReadonlySet<string> = new Set([...CHECK, 'dose']);
/** Whether one of these commands tells of a colourant what was understood. */
const isOfAColourant = (understood: Understood, commands: ReadonlySet<string>): boolean =>
  (understood.kind === 'command' || understood.kind === 'technique') && commands.has(understood.command);
/** The technique that was understood, or as which a matter of lye was asked. */
const techniqueOf = (understood: Understood): Technique | undefined =>
  understood.kind === 'technique' || understood.kind === 'lye' ? understood.technique : undefined;

/** The turn with the thing that was spoken of in the place of its pronoun. */
async function inItsPlace(turn: Turn): Promise<AskReply | undefined> {
  const { question, alone, talk, context, readAnew } = turn;
  const isOfFlaw = talk.last.kind === 'command' && talk.last.command === 'diagnose';
  const isHardly = isWeak(turn) || (isOfFlaw && isOfAColourant(alone.understood, CHECK));
  if (!isHardly || !isAsked(question)) return undefined;
  const subject = isOfFlaw ? await flawNamed(turn) : colourantIn(talk);
  const text = subject && putInPlace(question, subject);
  if (!text || (!isOfFlaw && colourantsMeant(subject).length === 0)) return undefined;
  const reply = await readAnew(text);
  const { understood, short } = reply;
  if (isNothing(reply, text, context)) return undefined;
  if (understood.kind === 'lye' && understood.chance !== undefined) return undefined;
  if (techniqueOf(understood) !== undefined) return reply;
  if (understood.kind === 'lye')
    return understood.lye === 'stopped' || understood.lye === 'unsure' ? undefined : reply;
  const isAnswered = isOfAColourant(understood, CHECK_OR_DOSE) && !(short && 'lacking' in short);
  return isAnswered && !isOfFlaw ? reply : undefined;
}

/** The trade’s name of what was surely found to be wrong. */
async function flawNamed({ talk, context }: Turn): Promise<string | undefined> {
  const { last } = talk;
  if (last.kind !== 'command') return undefined;
  const told = await ranCommand('diagnose', { words: last.given.words ?? '' }, context);
  const cause = likeliestCause(told);
  const causes: Readonly<Record<string, { readonly plain: string }>> = context.say.flaws.causes;
  return cause && cause.probability >= HALF ? causes[cause.id]?.plain : undefined;
}
