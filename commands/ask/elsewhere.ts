import type { Context } from '../../src/conversation/context.ts';
import { isOfTheSkin } from '../../src/engine/questions/fields/of-the-skin.ts';
import {
  isSurelyElsewhere,
  SURELY_ELSEWHERE,
  tellsOfMakingSoap,
} from '../../src/engine/questions/fields/other-field.ts';
import { namesLye } from '../../src/engine/questions/fields/soap-words.ts';
import { HURTS_ANYWHERE } from '../../src/engine/questions/lye/topics/hurts-anywhere.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import type { Answerer, Asked } from './asked.ts';
import { orNearest } from './lye/nearest-matter.ts';
import { type AskReply, saidNearLye } from './understood.ts';

/** What is said to a question of another field, with what can be asked. */
export function outsideReply({ outside = 'other' }: QuestionRead, { say }: Context): AskReply {
  return {
    kind: 'reply',
    headline: say.ask.outside[outside],
    data: {},
    understood: { kind: 'outside', outside },
    blocks: [{ kind: 'text', text: say.ask.canDo }],
    cautions: [],
  };
}

/** What another field's sentence is said before, whole: nothing that keeps from harm is lost. */
export const behind = (
  { short: _short, ...reply }: AskReply,
  { headline, understood }: Pick<AskReply, 'headline' | 'understood'>,
): AskReply => ({
  ...reply,
  headline,
  data: {},
  understood,
  blocks: [{ kind: 'text', text: reply.headline }, ...reply.blocks],
});

/** An answer behind another field's sentence, where the question is surely of that field; else as it is. Nothing of it is lost. */
export function fieldFirst(reply: AskReply, { question, read, context }: Asked): AskReply {
  const { understood } = reply;
  if (understood.kind === 'outside' || !isSurelyElsewhere(question, read)) return reply;
  const hurts = understood.kind === 'lye' && HURTS_ANYWHERE.has(understood.lye);
  return hurts ? reply : behind(reply, outsideReply(read, context));
}

/**
 * What is said where lye is for something else than soap, or where a matter of handling was read in what is about another field; undefined
 * elsewhere. What was read of handling stands behind it whole, so that nothing that keeps from harm is lost.
 */
async function elsewhereReply({ question, read, context, nearLye }: Asked): Promise<AskReply | undefined> {
  if (read.outside === undefined || read.outside === 'medical') return undefined;
  // What was found of a cook's lye stands behind that its hours are no matter of ours.
  const isOfLye = read.outside === 'lye-elsewhere' || read.outside === 'hot-process';
  const reply = outsideReply(read, context);
  const { told } = await nearLye();
  const matter = told && saidNearLye(told.understood);
  if (!told || matter === undefined || matter === 'stopped') return isOfLye ? reply : undefined;
  // A pigment whose dust flies is ours wherever it does.
  if (
    HURTS_ANYWHERE.has(matter) ||
    (matter === 'dust' && read.facts.named.length > 0 && !isOfTheSkin(question))
  )
    return undefined;
  // Who helps at making soap is near its lye, whoever it is.
  if (read.outside === 'other' && tellsOfMakingSoap(question)) return undefined;
  if (!isOfLye && (namesLye(question) || read.elsewhere < SURELY_ELSEWHERE)) return undefined;
  return { ...behind(told, reply), data: { matter } };
}

/** Lye that is for something else than soap, and matters of handling that are of another field. */
export const lyeElsewhere: Answerer = { id: 'lye-elsewhere', answer: elsewhereReply };

/** Another field; where it has no name here, what is nearest of lye's matters is answered or offered. */
export const otherField: Answerer = {
  id: 'other-field',
  leavesTo: ['lye', 'check'],
  async answer(asked) {
    const { read, context } = asked;
    if (read.outside === undefined) return undefined;
    const reply = outsideReply(read, context);
    return read.outside === 'other'
      ? fieldFirst(await orNearest(reply, asked, { isOfSoap: false }), asked)
      : reply;
  },
};
