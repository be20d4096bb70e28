import { metalInSentence } from '../../../src/engine/colourants/metal-in-sentence.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import type { Answerer } from '../asked.ts';

/** Metal powder that is to go in, whatever stands beside it: refused with its reason, and never dosed or passed by. */
export const metalPowder: Answerer = {
  id: 'metal-powder',
  answer: ({ question, photo, context }) => {
    const found = photo ? undefined : metalInSentence(question);
    if (!found) return undefined;
    const refusal = new Refusal('metal-never-in-lye', found);
    return {
      kind: 'reply',
      headline: context.say.refusal(refusal),
      data: {},
      short: { problem: refusal.id },
      understood: {
        kind: 'command',
        job: 'survives-lye',
        command: 'colourant check',
        given: { item: found.text },
      },
      blocks: [],
      cautions: [],
    };
  },
};
