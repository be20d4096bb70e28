import type { Context } from '../../../src/conversation/context.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { jarsTold } from '../../../src/engine/questions/found/jars/jars-told.ts';
import type { Answerer } from '../asked.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import type { AskReply } from '../understood.ts';

/** More buttons than this fit under no answer. */
const MOST = 10;

/** Several jars at once: each is added by a press of its own, so that none is dropped. Undefined where it is one. */
async function severalJarsReply(
  question: string,
  facts: Facts,
  context: Context,
): Promise<AskReply | undefined> {
  const { named } = facts;
  if (named.length < 2) return undefined;
  const { ask } = context.say;
  const lines = jarsTold(question, named.slice(0, MOST)).map(jar => lineOf('shelf add', jar));
  await keepLines(lines, context);
  return {
    kind: 'reply',
    headline: ask.severalJars({ count: lines.length }),
    data: {},
    understood: { kind: 'command', job: 'shelf-add', command: 'shelf add', lines, facts },
    blocks: [{ kind: 'rows', rows: lines }],
    cautions: [],
    choices: named.slice(0, lines.length).map((name, at) => ({
      kind: 'button',
      label: ask.addJar({ name }).slice(0, 80),
      follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
    })),
  };
}

/** Several jars are told at once. */
export const severalJars: Answerer = {
  id: 'several-jars',
  async answer({ question, read, context, reading }) {
    const first = await reading();
    return first?.command === 'shelf add' ? await severalJarsReply(question, read.facts, context) : undefined;
  },
};
