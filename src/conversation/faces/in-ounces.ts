import { ouncesFirst } from '../../words/masses.ts';
import type { Language } from '../../words/sentence.ts';
import type { Block, Reply } from '../reply.ts';

/** A reply for whoever weighs in ounces: see `ouncesFirst`. A recipe as its maker wrote it (small print) stays so. */
export function inOunces<Target>(reply: Reply<Target>, language: Language): Reply<Target> {
  const told = (text: string) => ouncesFirst(text, language);
  return {
    ...reply,
    headline: told(reply.headline),
    blocks: reply.blocks.map((block): Block => {
      switch (block.kind) {
        case 'text':
          return block.folds ? block : { ...block, text: told(block.text) };
        case 'rows':
          return { ...block, rows: block.rows.map(told) };
        case 'measures':
          return {
            ...block,
            measures: block.measures.map(({ note, ...measure }) => ({
              ...measure,
              value: told(measure.value),
              ...(note !== undefined && { note: told(note) }),
            })),
          };
        default:
          return block;
      }
    }),
    cautions: reply.cautions.map(caution => ({ ...caution, text: told(caution.text) })),
  };
}
