import type { Context } from '../../src/conversation/context.ts';
import { isOfShelf } from '../../src/engine/questions/jobs/shelf-asked.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import type { Answerer } from './asked.ts';
import { orNearest } from './lye/nearest-matter.ts';
import type { AskReply } from './understood.ts';

function notUnderstoodReply({ facts }: QuestionRead, { say }: Context): AskReply {
  const [name] = facts.named;
  const text = name === undefined ? say.ask.canDo : say.ask.nearestFor({ name });
  const reply = plainReply(say.ask.notUnderstood, {}, [{ kind: 'text', text }]);
  return { ...reply, understood: { kind: 'nothing', facts } };
}

/** Nothing was understood, or only a shelf that nobody spoke of. */
export const notUnderstood: Answerer = {
  id: 'not-understood',
  async answer(asked) {
    const { question, read, context } = asked;
    const reading = await asked.reading();
    const isNothing =
      reading === undefined || (reading.job === 'shelf-show' && !isOfShelf(reading, question, read));
    return isNothing
      ? await orNearest(notUnderstoodReply(read, context), asked, { isOfSoap: false })
      : undefined;
  },
};
