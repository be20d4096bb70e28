import type { Context } from '../../../src/conversation/context.ts';
import type { Given } from '../../../src/conversation/question.ts';
import type { Form, Reply } from '../../../src/conversation/reply.ts';
import type { Ran } from '../understood.ts';

/** The answer of a command with what of it a talk goes on from. Throws as that command does. */
export async function ranCommand(command: string, given: Given, context: Context): Promise<Ran> {
  if (command === 'dose') {
    const answer = await context.run('dose', given);
    if (answer.kind === 'reply') return { ...answer, doses: answer.data.doses };
    return shownAsReply(answer, context);
  }
  if (command === 'diagnose') {
    const answer = await context.run('diagnose', given);
    if (answer.kind === 'reply') return { ...answer, flaw: answer.data };
    return shownAsReply(answer, context);
  }
  return shownAsReply(await context.run(command, given), context);
}

/** A form cannot follow what was announced: its title says what to do. */
export const shownAsReply = (answer: Reply | Form, { say }: Context): Reply =>
  answer.kind === 'reply'
    ? answer
    : { kind: 'reply', headline: say.ask.lacks.plan, data: {}, blocks: [], cautions: [] };
