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
    blocks: [{ kind: 'text', text: why }],
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
