import type { Context } from '../../../src/conversation/context.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { portionOutOfRange } from '../../../src/engine/questions/portion-line/out-of-range.ts';
import type { QuestionRead, Reading } from '../../../src/engine/questions/read.ts';
import { plainReply } from '../../../src/presenting/plain-reply.ts';
import type { Answerer } from '../asked.ts';
import type { AskReply } from '../understood.ts';

/** The "no" to a portion that was told and can be none, for which a dose by the cup would be an answer to something else. */
function beyondRangeReply(
  { job, given }: Reading,
  { question, read }: { readonly question: string; readonly read: QuestionRead },
  { say }: Context,
): AskReply | undefined {
  if (job !== 'dose' || given.portion !== undefined || read.facts.portion !== undefined) return undefined;
  const refusal = portionOutOfRange(wordsOf(question));
  return (
    refusal && {
      ...plainReply(say.refusal(refusal), {}),
      short: { problem: refusal.id },
      understood: { kind: 'refused' },
    }
  );
}

/** A portion that can be none. */
export const beyondRange: Answerer = {
  id: 'beyond-range',
  async answer({ question, read, context, reading }) {
    const first = await reading();
    return first && beyondRangeReply(first, { question, read }, context);
  },
};
