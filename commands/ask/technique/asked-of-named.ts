import type { Context } from '../../../src/conversation/context.ts';
import { askedOfNamed } from '../../../src/engine/questions/found/asked/asked-of-named.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import type { Answerer } from '../asked.ts';
import { leanedRun } from '../leaning/leaned-run.ts';
import type { AskReply } from '../understood.ts';

/** "Do red oxides stain a bath": what is asked of one colourant by its name, though the words beside it are those of a house. */
async function askedOfNamedReply(
  question: string,
  { facts }: QuestionRead,
  context: Context,
): Promise<AskReply | undefined> {
  const named = askedOfNamed(question, facts);
  if (!named) return undefined;
  const { item, asked } = named;
  const laid = { job: 'survives-lye', command: 'colourant check', given: { item }, asked } as const;
  const reply = await leanedRun([laid], { context });
  return reply && !(reply.short && 'problem' in reply.short) ? reply : undefined;
}

/** Light or bleeding of one colourant, asked by its name. */
export const askedOfNamedColour: Answerer = {
  id: 'asked-of-named',
  leavesTo: ['stays-out'],
  answer: ({ said, read, context }) => askedOfNamedReply(said, read, context),
};
