import type { Context } from '../../src/conversation/context.ts';
import { asksOfContest } from '../../src/engine/questions/jobs/contest-asked.ts';
import type { Answerer } from './asked.ts';
import { shownAsReply } from './reading/ran-command.ts';
import type { AskReply } from './understood.ts';

/** What is open, and where the rest of a contest stands. */
export async function contestReply(context: Context): Promise<AskReply> {
  const list = shownAsReply(await context.run('challenge list', {}), context);
  return {
    ...list,
    headline: context.say.leaning.contest({ told: list.headline }),
    understood: { kind: 'command', job: 'challenge', command: 'challenge list', given: {} },
  };
}

/** The day, the rules or the outcome of the group's contest. */
export const contest: Answerer = {
  id: 'contest',
  answer: ({ said, context }) => (asksOfContest(said) ? contestReply(context) : undefined),
};
