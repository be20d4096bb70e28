import type { Context } from '../../../src/conversation/context.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { asOneText, isOfLye, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import {
  isOfAmount,
  onlyTells,
  tellsWhatItBecame,
} from '../../../src/engine/questions/leaning/behind/said-since.ts';
import { thingOf } from '../../../src/engine/questions/leaning/subject/things.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import type { Answerer, Turn } from '../asked.ts';
import { ranCommand } from '../reading/ran-command.ts';
import { type AskReply, HALF, leansOnTalk, likeliestCause, type Ran, saidNearLye } from '../understood.ts';
import { isNothing } from './leaned-back.ts';
import { partReply } from './leaned-part.ts';
import { leanedRun } from './leaned-run.ts';

/**
 * The question before once more, with what was told since: "bars feel scratchy, why" that nobody understood, and "paprika" behind it. Undefined
 * where the turn asks for something, or both together are no better understood. Lye is never reckoned from two halves.
 */
async function clarifiedReply(
  question: string,
  context: Context,
  readAnew: (both: string) => Promise<AskReply>,
): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk?.words || !onlyTells(question)) return undefined;
  const became = await whatBecame(question, talk, context);
  if (became) return became;
  const both = asOneText(talk.words, question);
  if (talk.last.kind === 'command' && talk.last.command === 'diagnose')
    return await diagnosedWith(question, talk, context);
  if (talk.last.kind !== 'open' || talk.subject?.isFresh) return undefined;
  const { amount, weighed } = lyeAskedIn(both);
  if (amount || weighed) return undefined;
  const reply = await readAnew(both);
  const { understood, short } = reply;
  const lye = saidNearLye(understood);
  const isPlan = understood.kind === 'command' && understood.command === 'plan';
  if (isPlan || lye === 'unsure' || lye === 'stopped' || (short && 'problem' in short)) return undefined;
  if (isNothing(reply, both, context)) return undefined;
  return leansOnTalk(reply);
}

/** "Went blue grey", after how alkanet is wetted: what becomes of it in soap. */
async function whatBecame(question: string, { last }: Talk, context: Context): Promise<AskReply | undefined> {
  if (last.kind !== 'command' || isOfLye(last) || !tellsWhatItBecame(question)) return undefined;
  const item = thingOf(last);
  const isOfColour = item !== undefined && (last.command === 'dose' || last.command === 'colourant check');
  if (!isOfColour || colourantsMeant(item).length !== 1) return undefined;
  return await leanedRun([{ job: 'survives-lye', command: 'colourant check', given: { item } }], { context });
}

const likeliest = (reply: Ran): number => likeliestCause(reply)?.probability ?? 0;

/** A flaw of which nothing was decided, with one more thing that is known of it; undefined where that decides nothing. */
async function diagnosedWith(
  question: string,
  { last }: Talk,
  context: Context,
): Promise<AskReply | undefined> {
  // An amount is no sign of a flaw, and a colourant that is named alone is asked of for itself.
  if (isOfAmount(question)) return undefined;
  if (last.kind !== 'command' || colourantsMeant(question).length > 0) return undefined;
  const before = await ranCommand('diagnose', { words: last.given.words ?? '' }, context);
  if (!before.flaw || likeliest(before) >= HALF) return undefined;
  const part = await partReply('points', last, { question, context });
  return part && likeliest(part) >= HALF ? part : undefined;
}

/** One thing more is told of what was asked before. */
export const clarified: Answerer<Turn> = {
  id: 'clarified',
  answer: ({ question, context, readAnew }) => clarifiedReply(question, context, readAnew),
};
