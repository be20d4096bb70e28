import { unbroken } from '../../src/engine/over-lines.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { LYE_WORDS, SOAP_WORDS } from '../../src/engine/questions/fields/soap-words.ts';
import { HURTS_ANYWHERE } from '../../src/engine/questions/lye/topics/hurts-anywhere.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import type { lyeAnswer } from './lye/lye-answer.ts';

/** From here on a matter of handling is only taken for one, where no lye is spoken of. */
export const SURELY_ELSEWHERE = 0.6;

/** Whether a question is of another field that has a name here. */
export const isNamedElsewhere = ({ outside }: QuestionRead): boolean =>
  outside !== undefined && outside !== 'other';

/** Whether it is of any other field, one without a name too: a matter of ours has to be likelier than that. */
export const isElsewhere = ({ outside }: QuestionRead): boolean => outside !== undefined;

/** What is said to a question of another field, with what can be asked. */
export function outsideReply({ outside = 'other' }: QuestionRead, { say }: Context): Reply {
  return {
    kind: 'reply',
    headline: say.ask.outside[outside],
    data: { understood: { outside } },
    blocks: [{ kind: 'text', text: say.ask.canDo }],
    cautions: [],
  };
}

/** What another field's sentence is said before, whole: nothing that keeps from harm is lost. */
export const behind = (reply: Reply, { headline, data }: Pick<Reply, 'headline' | 'data'>): Reply => ({
  ...reply,
  headline,
  data,
  blocks: [{ kind: 'text', text: reply.headline }, ...reply.blocks],
});

/** From here on another field's sentence stands before what its words were taken for, lye and soap not spoken of. */
export const MOST_SURELY_ELSEWHERE = 0.9;

/** Whether a question is surely of another field that has no name here, with neither lye nor soap in it. */
export const isSurelyElsewhere = (question: string, { outside, elsewhere }: QuestionRead): boolean =>
  outside === 'other' && elsewhere >= MOST_SURELY_ELSEWHERE && !SOAP_WORDS.test(unaccented(question));

/** An answer behind another field's sentence, where the question is surely of that field; else as it is. Nothing of it is lost. */
export function fieldFirst(reply: Reply, question: string, read: QuestionRead, context: Context): Reply {
  const told = (reply.data as { understood?: { outside?: string; lye?: string } }).understood;
  if (told?.outside !== undefined || !isSurelyElsewhere(question, read)) return reply;
  return told?.lye !== undefined && HURTS_ANYWHERE.has(told.lye)
    ? reply
    : behind(reply, outsideReply(read, context));
}

const MAKES_SOAP = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:mak(?:e|es|ing)|help(?:s|ing)?(?: (?:me|us|with))?) (?:the |my |our )?soap|(?:hacer|
    hago|hacemos|haciendo|ayud\p{L}+ (?:a hacer|con)) (?:el |mi )?jabon(?:es)?)(?!\p{L})
  `,
  'u',
);

/**
 * What is said where lye is for something else than soap, or where a matter of handling was read in what is about another field; undefined
 * elsewhere. What was read of handling stands behind it whole, so that nothing that keeps from harm is lost. `near`: what was read near
 * lye.
 */
export function elsewhereReply(
  question: string,
  { read, near }: { readonly read: QuestionRead; readonly near: Awaited<ReturnType<typeof lyeAnswer>> },
  context: Context,
): Reply | undefined {
  if (read.outside === undefined || read.outside === 'medical') return undefined;
  const isOfLye = read.outside === 'lye-elsewhere';
  const reply = outsideReply(read, context);
  if (near?.kind !== 'reply') return isOfLye ? reply : undefined;
  const matter = (near.data as { understood?: { lye?: string } }).understood?.lye;
  if (matter === undefined || matter === 'stopped') return isOfLye ? reply : undefined;
  if (HURTS_ANYWHERE.has(matter)) return undefined;
  // Who helps at making soap is near its lye, whoever it is.
  if (read.outside === 'other' && MAKES_SOAP.test(unaccented(question))) return undefined;
  if (!isOfLye && (LYE_WORDS.test(unaccented(question)) || read.elsewhere < SURELY_ELSEWHERE))
    return undefined;
  const { headline, data } = reply;
  return behind(near, { headline, data: { ...data, matter } });
}
