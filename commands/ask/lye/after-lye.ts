import type { Context } from '../../../src/conversation/context.ts';
import { ofLyeBefore } from '../../../src/engine/questions/leaning/behind/after-lye.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { NEAR_LYE } from '../../../src/engine/questions/technique/stands-before.ts';
import type { Technique } from '../../../src/engine/questions/technique/topic.ts';
import { askFollowUps } from '../follow-ups.ts';
import type { AskReply } from '../understood.ts';
import { topicReply } from './matter.ts';

/**
 * What goes on from a matter of lye and names nothing new is about that lye, whatever else its words may mean: grains at the bottom of a jug
 * of lye are no mica that sank. The matter is told again, and the other reading is one press away; undefined where nothing came before.
 */
export function afterLyeReply(
  question: string,
  { facts }: QuestionRead,
  { technique, context }: { readonly technique: Technique; readonly context: Context },
): AskReply | undefined {
  // What is told of lye in any case has its own answer.
  const of = NEAR_LYE.has(technique)
    ? undefined
    : ofLyeBefore(question, facts, context.lately?.before(context));
  if (!of) return undefined;
  if (of.kind === 'unsure') return topicReply('unsure', context);
  const { say } = context;
  const reply = topicReply(of.topic, context);
  return {
    ...reply,
    blocks: [{ kind: 'text', text: say.leaning.onBefore }, ...reply.blocks],
    choices: [
      {
        kind: 'button',
        label: say.ask.ratherThat({ job: say.technique.matters[technique] }),
        follow: askFollowUps.technique.with({ technique }),
      },
    ],
  };
}
