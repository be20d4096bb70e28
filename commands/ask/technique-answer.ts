import type { Context } from '../../src/conversation/context.ts';
import type { Caution, Reply } from '../../src/conversation/reply.ts';
import {
  type Technique,
  WITH_DRY_POWDER,
  WITH_RAW_BATTER,
} from '../../src/engine/questions/technique/topic.ts';

/** What is said to a technique, with the caution of what is at hand. */
export function techniqueAnswer(technique: Technique, { say }: Context): Reply {
  const { answer, why } = say.technique.topics[technique];
  return {
    kind: 'reply',
    headline: answer,
    data: { understood: { technique, command: 'help', given: {} } },
    blocks: atOnceAndMore(why).map(text => ({ kind: 'text', text })),
    cautions: [...cautionOf(technique, say.technique)],
  };
}

function* cautionOf(
  technique: Technique,
  { rawBatter, dust }: { readonly rawBatter: string; readonly dust: string },
): Generator<Caution> {
  if (WITH_RAW_BATTER.has(technique)) yield { id: 'raw-batter', text: rawBatter };
  if (WITH_DRY_POWDER.has(technique)) yield { id: 'powder-dust', text: dust };
}

/** So many words beside the headline are read with gloves on; the rest folds. */
const AT_ONCE = 55;

/** The first sentences, as many as are read at once, and the rest. */
function atOnceAndMore(why: string): readonly string[] {
  const sentences = why.split(/(?<=[.:!?]) (?=[\p{Lu}/¿«“])/u);
  let words = 0;
  const most = sentences.findIndex((sentence, at) => {
    words += sentence.split(' ').length;
    return at > 0 && words > AT_ONCE;
  });
  return most === -1 ? [why] : [sentences.slice(0, most).join(' '), sentences.slice(most).join(' ')];
}
