import type { Context } from '../../../src/conversation/context.ts';
import type { Choice } from '../../../src/conversation/reply.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import type { LyeMatter } from '../../../src/engine/questions/lye/topics/lye-matter.ts';
import { asksAmountOfLye } from '../../../src/engine/questions/lye/topics/nearest/general.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import type { NearMatter } from '../../../src/engine/questions/lye/topics/nearest/read.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import type { Asked } from '../asked.ts';
import { askFollowUps } from '../follow-ups.ts';
import type { AskReply } from '../understood.ts';
import { topicReply } from './matter.ts';

/** Where nothing speaks of soap, none of the matters is offered from this chance on that none is meant. */
const ELSEWHERE = 0.5;

/**
 * Where nothing better was found: the answer of the matter of lye that the question is surely about, else `reply` with
 * the matters that it may be about to choose from. An amount that is asked for is never answered by a matter, nor is what
 * tells of somebody hurt; a photo is of a bar, and no matter of lye.
 */
export async function orNearest(
  reply: AskReply,
  { question, context, photo }: Pick<Asked, 'question' | 'context' | 'photo'>,
  { isOfSoap }: { readonly isOfSoap: boolean } = { isOfSoap: true },
): Promise<AskReply> {
  if (photo) return reply;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed || tellsOfHurt(question)) return reply;
  // Most questions never come this far, and the weights are large.
  const { MOST_OFFERED, nearestMatters } = await import(
    '../../../src/engine/questions/lye/topics/nearest/read.ts'
  );
  const { sure, offered, nothing } = nearestMatters(question);
  // Stearic acid is a fat: what acid does to ultramarine it does not.
  const isWithoutAcid = sure?.topic === 'ultramarine-acid' && acidIn(question) === undefined;
  const told = asksAmountOfLye(question) || isWithoutAcid ? undefined : sure;
  const near = sure && !told ? [sure.topic, ...offered] : offered;
  const may = isOfSoap || nothing < ELSEWHERE ? near.slice(0, MOST_OFFERED) : [];
  const choices = [...may.map(topic => meant(topic, context)), ...(reply.choices ?? [])];
  if (!told) return { ...reply, choices };
  return { ...nearReply(told, context), choices };
}

/** The answer of a matter that was learned rather than found by its words, with the matter told as it was understood. */
export function nearReply({ topic, chance }: NearMatter, context: Context): AskReply {
  const { say } = context;
  const answer = topicReply(topic, context);
  return {
    ...answer,
    understood: { kind: 'lye', lye: topic, chance: Number(chance.toFixed(2)) },
    blocks: [
      { kind: 'text', text: say.ask.understood({ line: say.lyeQuestions.matters[topic] }) },
      ...answer.blocks,
    ],
  };
}

const meant = (topic: LyeMatter, { say }: Context): Choice => ({
  kind: 'button',
  label: say.ask.ratherThat({ job: say.lyeQuestions.matters[topic] }),
  follow: askFollowUps.matter.with({ topic }),
});
