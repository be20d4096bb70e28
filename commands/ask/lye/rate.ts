import type { Context } from '../../../src/conversation/context.ts';
import { rateOfLye } from '../../../src/engine/questions/lye/sums/rate-told.ts';
import type { AskReply } from '../understood.ts';
import { weighedReply } from './weighed-lye.ts';

/** Lye told as a rate to any oil: what it comes to in the oils that are weighed beside it, and whether they take it. */
export async function rateReply(question: string, context: Context): Promise<AskReply | undefined> {
  const rate = rateOfLye(question);
  if (!rate) return undefined;
  const { told, asked, isOfOils } = rate;
  const reply = await weighedReply(asked, question, context);
  const words = context.say.lyeQuestions;
  const text =
    isOfOils && asked.weighed ? words.rateComesTo({ ...told, grams: asked.weighed.grams }) : words.noRate;
  return { ...reply, blocks: [{ kind: 'text', text, firm: true }, ...reply.blocks] };
}
