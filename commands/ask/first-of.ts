import type { Answerer } from './asked.ts';
import type { AskReply } from './understood.ts';

/** An answer, and the id of whose it is. */
export type AnsweredBy = { readonly by: string; readonly reply: AskReply };

/** The answer of the first of several who has one; undefined where none has. */
export async function firstOf<About>(
  answerers: readonly Answerer<About>[],
  about: About,
): Promise<AnsweredBy | undefined> {
  for (const { id, answer } of answerers) {
    const reply = await answer(about);
    if (reply) return { by: id, reply };
  }
  return undefined;
}
