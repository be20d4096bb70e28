import type { ReadAs } from '../../engine/questions/options/in-plain-words.ts';
import { Refusal } from '../../engine/refusal.ts';
import type { Context } from '../context.ts';
import type { Given } from '../question.ts';
import type { Form, Reply } from '../reply.ts';
import { toldPlainly } from './told-plainly.ts';

/** An answer to what was read otherwise than it was typed, which it says first. */
export function readAs<Answer extends Reply | Form>(label: string, answer: Answer, { say }: Context): Answer {
  if (answer.kind === 'form') return answer;
  const note = { kind: 'text', text: say.ask.readAs({ name: label }) } as const;
  return { ...answer, data: { ...answer.data, readAs: label }, blocks: [note, ...answer.blocks] };
}

/**
 * The answer to what was given, or where an amount in it is only refused for its wording, to that amount as a plain question would tell
 * it, which is said. Throws the Refusals of `answer`, and `amount-several`.
 */
export async function answeredPlainly<Answer extends Reply | Form>(
  answer: (given: Given) => Promise<Answer>,
  { given, reads }: { readonly given: Given; readonly reads: Readonly<Record<string, ReadAs | undefined>> },
  context: Context,
): Promise<Answer> {
  try {
    return await answer(given);
  } catch (refusal) {
    const plain = refusal instanceof Refusal ? await toldPlainly(refusal, given, reads) : undefined;
    if (plain === undefined) throw refusal;
    return readAs(plain.told.map(context.say.quantities.said).join('; '), await answer(plain.given), context);
  }
}
