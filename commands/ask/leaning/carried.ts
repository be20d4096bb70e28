import { z } from 'zod';
import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import { asOneText, isOfLye, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import { isAsked, putInPlace, turnsToAnother } from '../../../src/engine/questions/leaning/carried.ts';
import { isStillHurt } from '../../../src/engine/questions/leaning/points-back.ts';
import { colourantOf } from '../../../src/engine/questions/leaning/subject.ts';
import { thingOf } from '../../../src/engine/questions/leaning/things.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import { askedOfBench } from '../../../src/engine/questions/technique/asked/read.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { shownAsReply } from '../run-reading.ts';
import { answeredTo } from '../technique/technique-answer.ts';
import { isNothing } from './leaned-back.ts';
import { partReply } from './leaned-part.ts';
import { leanedRun } from './leaned-run.ts';
import { leansOnTalk } from './leans-on-talk.ts';

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 18;

type Turn = {
  readonly question: string;
  /** What the turn is answered with by itself. */
  readonly alone: Reply;
  readonly talk: Talk;
  readonly context: Context;
  readonly readAnew: (text: string) => Promise<Reply>;
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
): Promise<Reply | undefined> {
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

const understoodBy = z.object({
  understood: z.object({
    command: z.string().optional(),
    job: z.string().optional(),
    technique: z.string().optional(),
    named: z.string().optional(),
    lye: z.string().optional(),
    chance: z.number().optional(),
    given: z.record(z.string(), z.string()).optional(),
  }),
});
const understoodOf = ({ data }: Reply) => understoodBy.safeParse(data).data?.understood ?? {};
const causesOf = z.object({
  doNotUse: z.boolean(),
  causes: z.tuple([z.object({ id: z.string(), probability: z.number() })], z.unknown()),
});
const foundIn = ({ data }: Reply) => causesOf.safeParse(data).data;
const likeliest = (reply: Reply): number => foundIn(reply)?.causes[0].probability ?? 0;

/** From here on one cause is likelier than all the others. */
const HALF = 0.5;
/** Learned near lye and less sure than this, a turn may be of what came before as well. */
const SURE_NEAR_LYE = 0.8;

/** Nothing is known of the turn by itself, or hardly. */
function isWeak({ question, alone, context }: Turn): boolean {
  if (isNothing(alone, question, context) || 'problem' in alone.data || 'lacking' in alone.data) return true;
  const { command, job, lye, chance, technique, given = {} } = understoodOf(alone);
  if (lye !== undefined) return lye === 'unsure' || (chance !== undefined && chance < SURE_NEAR_LYE);
  if (technique !== undefined) return false;
  if (command === 'diagnose') return likeliest(alone) < HALF;
  return (
    command === 'shelf list' ||
    command === 'shelf add' ||
    (command === 'help' && job === 'help' && Object.keys(given).length === 0)
  );
}

/** What the turn asks, of a thing that the turn before named. */
function onBench({ question, talk, context }: Turn): Reply | undefined {
  if (lyeTopicIn(question) !== undefined) return undefined;
  const asked = askedOfBench(question, talk.words);
  return asked && answeredTo(asked.technique, asked.to, context);
}

/** A flaw with one more sign that is told of it, where both together are no less sure than the turn alone. */
async function oneMoreSign(turn: Turn): Promise<Reply | undefined> {
  const { question, alone, talk, context } = turn;
  const { last } = talk;
  if (last.kind !== 'command' || last.command !== 'diagnose') return undefined;
  const { command, technique } = understoodOf(alone);
  const isDiagnosed = command === 'diagnose';
  if (isAsked(question))
    return isDiagnosed && isWeak(turn) ? await partReply('points', last, { question, context }) : undefined;
  if (askedOfBench(question) || (!isDiagnosed && technique === undefined && !isWeak(turn))) return undefined;
  if (!isDiagnosed && !diagnose(question).findings.some(({ present }) => present)) return undefined;
  const words = asOneText(last.given.words ?? '', question);
  const joint = shownAsReply(await context.run('diagnose', { words }), context);
  const [found, before] = [foundIn(joint), foundIn(alone)];
  if (!found || (before?.doNotUse && !found.doNotUse)) return undefined;
  const least = isDiagnosed ? likeliest(alone) : technique === undefined ? HALF : SURE_NEAR_LYE;
  if (found.causes[0].probability < least) return undefined;
  return {
    ...joint,
    data: { ...joint.data, understood: { job: 'diagnose', command: 'diagnose', given: { words } } },
  };
}

/** The one colourant that a talk is about, where no recipe was reckoned last. */
function colourantIn({ last, subject }: Talk): string | undefined {
  if (last.kind === 'command' && (isOfLye(last) || last.command === 'diagnose')) return undefined;
  return (last.kind === 'command' ? thingOf(last) : undefined) ?? colourantOf(subject);
}

/** So much batter and no colourant: of the one that was spoken of. */
async function itsDose({ alone, talk, context }: Turn): Promise<Reply | undefined> {
  const { command, job, given = {} } = understoodOf(alone);
  const isWetted = job === 'wet' && 'lacking' in alone.data;
  // What is wetted is the powder that was spoken of, by a flaw too.
  const colourant = colourantIn(talk) ?? (isWetted ? colourantOf(talk.subject) : undefined);
  if (command !== 'dose' || given.colourant !== undefined || colourant === undefined) return undefined;
  if (given.portion === undefined && !isWetted) return undefined;
  const asked = { job: isWetted ? ('wet' as const) : ('dose' as const), command: 'dose' };
  return await leanedRun([{ ...asked, given: { ...given, colourant } }], { context });
}

/** Options of which one at most may be another. */
const THING: ReadonlySet<string> = new Set(['colourant', 'item', 'target', 'mix']);

/** The question before and the turn read as one: the same command of the same thing, with one option more or other. */
async function withOneChange({ question, talk, context, readAnew }: Turn): Promise<Reply | undefined> {
  const { last, words } = talk;
  if (!words || last.kind !== 'command' || !/^(?:dose|match|preview)$/u.test(last.command)) return undefined;
  const reply = await readAnew(asOneText(words, question));
  const { command, given = {} } = understoodOf(reply);
  if (command !== last.command || isNothing(reply, question, context)) return undefined;
  const names = new Set([...Object.keys(given), ...Object.keys(last.given)]);
  const changed = [...names].filter(name => given[name] !== last.given[name]);
  return changed.length === 1 && !THING.has(changed[0]!) ? reply : undefined;
}

/** Commands that answer what is asked of a colourant. */
const OF_A_COLOURANT = /^(?:colourant check|dose)$/u;

/** The turn with the thing that was spoken of in the place of its pronoun. */
async function inItsPlace(turn: Turn): Promise<Reply | undefined> {
  const { question, alone, talk, context, readAnew } = turn;
  const isOfFlaw = talk.last.kind === 'command' && talk.last.command === 'diagnose';
  const isHardly = isWeak(turn) || (isOfFlaw && understoodOf(alone).command === 'colourant check');
  if (!isHardly || !isAsked(question)) return undefined;
  const subject = isOfFlaw ? await flawNamed(turn) : colourantIn(talk);
  const text = subject && putInPlace(question, subject);
  if (!text || (!isOfFlaw && colourantsMeant(subject).length === 0)) return undefined;
  const reply = await readAnew(text);
  const { command, technique, lye, chance } = understoodOf(reply);
  if (isNothing(reply, text, context) || chance !== undefined) return undefined;
  if (technique !== undefined) return reply;
  if (lye !== undefined) return lye === 'stopped' || lye === 'unsure' ? undefined : reply;
  const isOfIt = command !== undefined && OF_A_COLOURANT.test(command);
  return isOfIt && !isOfFlaw && !('lacking' in reply.data) ? reply : undefined;
}

/** The trade’s name of what was surely found to be wrong. */
async function flawNamed({ talk, context }: Turn): Promise<string | undefined> {
  const { last } = talk;
  if (last.kind !== 'command') return undefined;
  const told = shownAsReply(await context.run('diagnose', { words: last.given.words ?? '' }), context);
  const [cause] = foundIn(told)?.causes ?? [];
  const causes: Readonly<Record<string, { readonly name: string }>> = context.say.flaws.causes;
  return cause && cause.probability >= HALF ? causes[cause.id]?.name.replace(/ \(.*\)$/u, '') : undefined;
}
