import type { Context } from '../../../src/conversation/context.ts';
import type { Caution } from '../../../src/conversation/reply.ts';
import type { LyeCautionId } from '../../../src/engine/batch/lye/lye-cautions.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import { oneText } from '../../../src/words/sentence.ts';
import type { AskReply } from '../understood.ts';

const SHORT_CAUTIONS: readonly LyeCautionId[] = [
  'lye-burns',
  'lye-gear',
  'lye-into-water',
  'lye-first-aid',
  'tested-recipe',
];

/** What an answer about weights of lye shows, its cautions left out. */
export type LyeView = {
  readonly headline: string;
  readonly texts: readonly string[];
  readonly data: object;
};

/** What always holds near lye, in short. */
export const cautions = ({ say }: Context): readonly Caution[] =>
  SHORT_CAUTIONS.map(id => ({ id, text: say.batch.lyeCautions[id] }));

/** The answer that a matter of handling lye has, whatever the recipe. */
export function topicReply(topic: LyeTopic, context: Context): AskReply {
  const { answer, why } = context.say.lyeQuestions.topics[topic];
  return {
    kind: 'reply',
    headline: oneText(answer),
    data: {},
    understood: { kind: 'lye', lye: topic },
    blocks: [{ kind: 'text', text: oneText(why) }],
    // Where no lye is at hand, its cautions would only frighten.
    cautions: topic === 'soap-at-large' ? [] : cautions(context),
  };
}
