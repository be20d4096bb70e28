import type { Context } from '../../../src/conversation/context.ts';
import { asOneText, type Before, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import {
  mayNeedContext,
  sameLyeMatter,
  techniqueInContext,
} from '../../../src/engine/questions/leaning/in-context.ts';
import { isStillHurt } from '../../../src/engine/questions/leaning/subject/points-back.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import { askedOfBench } from '../../../src/engine/questions/technique/asked/read.ts';
import { outrightIn } from '../../../src/engine/questions/technique/outright/read.ts';
import { NEAR_LYE } from '../../../src/engine/questions/technique/stands-before.ts';
import type { Technique } from '../../../src/engine/questions/technique/topic.ts';
import type { Answerer, Turn } from '../asked.ts';
import { answeredTo, techniqueAnswer } from '../technique/technique-answer.ts';
import { type AskReply, leansOnTalk } from '../understood.ts';
import { partReply } from './leaned-part.ts';

/** What a short turn asks behind the question before it, where both together tell that plainly; undefined where it stands alone. */
async function inContextReply(question: string, context: Context): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk?.words || !mayNeedContext(question) || !mayGoOn(talk) || outrightIn(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed || tellsOfHurt(question) || isStillHurt(question)) return undefined;
  const isNearLye = lyeTopicIn(question) !== undefined;
  const ofBench = isNearLye || askedOfBench(question) ? undefined : askedOfBench(question, talk.words);
  if (ofBench) return leansOnTalk(answeredTo(ofBench.technique, ofBench.to, context));
  const both = asOneText(talk.words, question);
  const technique = isNearLye ? undefined : await techniqueOf(question, both, talk);
  if (technique !== undefined)
    return await techniqueTold(technique, { question, both, last: talk.last, context });
  const { nearestMatters } = await import('../../../src/engine/questions/lye/topics/nearest/read.ts');
  const topic = sameLyeMatter(question, {
    alone: nearestMatters(question).sure,
    joint: nearestMatters(both).sure,
    last: talk.last,
  });
  return topic && (await partReply('goes-on', talk.last, { question, context }));
}

/** What is done with a shelf, a contest or first aid has turns of its own. */
const mayGoOn = ({ last }: Talk): boolean =>
  last.kind === 'technique' ||
  last.kind === 'matter' ||
  last.kind === 'open' ||
  (last.kind === 'command' && !last.command.startsWith('shelf') && last.command !== 'plan');

async function techniqueOf(question: string, both: string, { last }: Talk): Promise<Technique | undefined> {
  // The weights are large, and nobody needs them before a question in words is asked.
  const { mattersOf } = await import('../../../src/engine/questions/technique/read.ts');
  const joint = mattersOf(both);
  const technique = techniqueInContext(question, { alone: mattersOf(question), joint, last });
  if (technique === undefined) return undefined;
  // Near lye what the turn says by itself is found by patterns, and stands first.
  const isNearLye = NEAR_LYE.has(technique) || lyeTopicIn(question) !== undefined;
  return isNearLye && joint.near[0]!.chance < SURELY ? undefined : technique;
}
/** Near lye both together have to be so sure. */
const SURELY = 0.9;

type Asked = {
  readonly question: string;
  readonly both: string;
  readonly last: Before;
  readonly context: Context;
};

/** The answer of a matter; of the one that was told before, the part of it that is asked on. */
async function techniqueTold(
  technique: Technique,
  { question, both, last, context }: Asked,
): Promise<AskReply> {
  const isSame = last.kind === 'technique' && last.id === technique;
  const part = isSame ? await partReply('goes-on', last, { question, context }) : undefined;
  const answer = part ?? techniqueAnswer(technique, both, context);
  return leansOnTalk(answer);
}

/** A short turn that is of a matter together with the question before it. */
export const inContext: Answerer<Turn> = {
  id: 'in-context',
  answer: ({ question, context }) => inContextReply(question, context),
};
