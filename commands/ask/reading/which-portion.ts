import type { Context } from '../../../src/conversation/context.ts';
import { textsOf } from '../../../src/conversation/question.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { parsePortionRange } from '../../../src/engine/quantities/told/portion.ts';
import { OF_PORTION, type QuestionRead, type Reading } from '../../../src/engine/questions/read.ts';
import type { Answerer } from '../asked.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import type { AskReply } from '../understood.ts';

/** Asks which portion is meant where the words fit several; undefined where they fit one. */
async function whichPortionReply(
  { job, command, given }: Reading,
  { facts }: QuestionRead,
  context: Context,
): Promise<AskReply | undefined> {
  const { ask } = context.say;
  const { unclear } = facts;
  if (!OF_PORTION.has(job) || given.portion === undefined || unclear.length < 2) return undefined;
  const portions = unclear.map(text => parsePortionRange(text).low);
  await keepLines(
    unclear.map(portion => lineOf(command, { ...given, portion })),
    context,
  );
  const { portion: _, ...rest } = given;
  return {
    kind: 'reply',
    headline: ask.whichPortion({ portions }),
    data: {},
    understood: { kind: 'command', job, command, given: textsOf(rest), facts },
    blocks: [],
    cautions: [],
    choices: [
      ...portions.map((portion, at) => ({
        kind: 'button' as const,
        label: ask.portion(portion),
        follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
      })),
      {
        kind: 'button',
        label: ask.change,
        follow: askFollowUps.change.with({ line: context.idempotencyKey }),
      },
    ],
  };
}

/** The words fit several portions. */
export const whichPortion: Answerer = {
  id: 'which-portion',
  async answer({ read, context, reading }) {
    const first = await reading();
    return first && (await whichPortionReply(first, read, context));
  },
};
