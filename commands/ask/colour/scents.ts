import type { Context } from '../../../src/conversation/context.ts';
import { isNamedElsewhere, isSurelyElsewhere } from '../../../src/engine/questions/fields/other-field.ts';
import { scentsAsked } from '../../../src/engine/questions/found/asked/scent-asked.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { plainReply } from '../../../src/presenting/plain-reply.ts';
import type { Answerer, Asked } from '../asked.ts';
import { fieldFirst } from '../elsewhere.ts';
import type { AskReply } from '../understood.ts';

/**
 * What a scent asked about by name does, where no colour is asked about; undefined where none is named. Throws a Refusal
 * `scent-barred`, or `liquid-is-spirit` where strong drink is to stand in for the water.
 */
function scentReply(question: string, read: QuestionRead, { say }: Context): AskReply | undefined {
  const risky = scentsAsked(question, read);
  const [first, ...others] = risky.map(({ name, risk }) =>
    say.batch.warnings['scent-hurts']({ scent: name, risk }),
  );
  if (first === undefined) return undefined;
  return {
    kind: 'reply',
    headline: first,
    data: {},
    understood: { kind: 'scents', scents: risky },
    blocks: others.map(text => ({ kind: 'text', text })),
    cautions: [],
  };
}

/** What a scent does; of a diffuser and the like, surely spoken of for themselves, the "no" is an answer as well. */
function scentTold({ question, read, context }: Asked): AskReply | undefined {
  try {
    return scentReply(question, read, context);
  } catch (error) {
    if (!(error instanceof Refusal) || !isSurelyElsewhere(question, read)) throw error;
    const headline = context.say.refusal(error);
    return {
      ...plainReply(headline, {}),
      short: { problem: error.id },
      understood: { kind: 'refused' },
    };
  }
}

/** A scent by its name; candles and creams are scented too. */
export const scents: Answerer = {
  id: 'scents',
  leavesTo: ['lye'],
  answer(asked) {
    const scent = isNamedElsewhere(asked.read) ? undefined : scentTold(asked);
    return scent && fieldFirst(scent, asked);
  },
};
