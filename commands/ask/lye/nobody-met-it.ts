import { isNearOnly, isStoryOnly } from '../../../src/engine/hazards/index.ts';
import type { Answerer } from '../asked.ts';
import { topicReply } from './matter.ts';

/** Lye that lies somewhere while an animal or a child is only near: how it is swept up, and who stays away. A story about lye: which goes into which. */
export const nobodyMetIt: Answerer = {
  id: 'nobody-met-it',
  answer: ({ question, photo, context }) => {
    if (photo) return undefined;
    if (isStoryOnly(question)) return topicReply('lye-into-water', context);
    if (!isNearOnly(question)) return undefined;
    const reply = topicReply('clean-up', context);
    const text = context.say.lyeQuestions.keptAway;
    return { ...reply, blocks: [{ kind: 'text', text, firm: true }, ...reply.blocks] };
  },
};
