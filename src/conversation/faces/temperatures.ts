import { fahrenheitFirst } from '../../words/temperatures.ts';
import type { Block, Caution, Reply } from '../reply.ts';

function turnedBlock(block: Block): Block {
  switch (block.kind) {
    case 'measures': {
      const measures = block.measures.map(({ label, value, note, ...rest }) => ({
        ...rest,
        label: fahrenheitFirst(label),
        value: fahrenheitFirst(value),
        ...(note !== undefined && { note: fahrenheitFirst(note) }),
      }));
      return { ...block, measures };
    }
    case 'text':
      return { ...block, text: fahrenheitFirst(block.text) };
    case 'rows':
      return {
        ...block,
        rows: block.rows.map(fahrenheitFirst),
        ...(block.title !== undefined && { title: fahrenheitFirst(block.title) }),
      };
    case 'picture':
      return { ...block, alt: fahrenheitFirst(block.alt) };
    case 'file':
      return block;
  }
}

/** A reply for whoever reads °F: see `fahrenheitFirst`. Its data keep their units. */
export const inFahrenheit = (reply: Reply<string>): Reply<string> => ({
  ...reply,
  headline: fahrenheitFirst(reply.headline),
  blocks: reply.blocks.map(turnedBlock),
  cautions: reply.cautions.map(
    (caution): Caution => ({
      ...caution,
      text: fahrenheitFirst(caution.text),
      ...(caution.brief !== undefined && { brief: fahrenheitFirst(caution.brief) }),
    }),
  ),
});
