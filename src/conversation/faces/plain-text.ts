import type { Words } from '../../words/index.ts';
import type { Block, Form, Reply } from '../reply.ts';
import { faceOf } from './face.ts';

/** A reply as plain text: the number first, then the why, then the caution. */
export function textOf(reply: Reply<unknown>, say: Words): string {
  const cautions =
    reply.cautions.length > 0
      ? [`${say.conversation.cautions}:\n${reply.cautions.map(({ text }) => `  ! ${text}`).join('\n')}`]
      : [];
  return [reply.headline, ...reply.blocks.map(blockText), ...cautions].filter(Boolean).join('\n\n');
}

/** The face of a reply as plain text: its pictures speak for themselves. */
export function faceText(reply: Reply<unknown>, say: Words): string {
  const face = faceOf(reply);
  return textOf({ ...face, blocks: face.blocks.filter(({ kind }) => kind !== 'picture') }, say);
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'measures':
      return block.measures
        .map(({ label, value, note }) => `  ${label}: ${value}${note ? `\n    ${note}` : ''}`)
        .join('\n');
    case 'text':
      return block.text;
    case 'rows': {
      const mark = (index: number) => (block.numbered ? `  ${index + 1}. ` : '  - ');
      const rows = block.rows.map((row, index) => `${mark(index)}${row}`);
      return [...(block.title ? [`${block.title}:`] : []), ...rows].join('\n');
    }
    case 'picture':
      return `[${block.alt}]`;
    case 'file':
      return `[${block.name}]`;
  }
}

/** A form in the terminal: its questions, and that one line answers them too. */
export const formText = (form: Form<unknown>): string =>
  [form.title, ...form.fields.map(({ label, required }) => `  - ${label}${required ? ' *' : ''}`)].join('\n');
