import type { Context } from '../../src/conversation/context.ts';
import { isHardlyDoubt } from '../../src/engine/questions/fields/unsure.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import type { Answerer } from './asked.ts';
import type { AskReply } from './understood.ts';

/** What an answer hangs on and where it shows how it came about, for who calls one into question. */
function doubtReply({ facts }: QuestionRead, { say }: Context): AskReply {
  const { headline, why, how, lye } = say.ask.doubted;
  return {
    kind: 'reply',
    headline,
    data: {},
    understood: { kind: 'doubt', facts },
    blocks: [
      { kind: 'text', text: why },
      { kind: 'text', text: how },
    ],
    cautions: [{ id: 'lye', text: lye, firm: true }],
  };
}

/** An answer of before is called into question. */
export const doubt: Answerer = {
  id: 'doubt',
  async answer({ question, read, context, reading }) {
    const first = await reading();
    return first?.job === 'doubt' && !isHardlyDoubt(first, question) ? doubtReply(read, context) : undefined;
  },
};
