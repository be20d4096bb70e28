import { z } from 'zod';
import { type FoldedAnswer, foldsOfAnswer } from '../../records/folds/index.ts';
import { followUp } from '../command.ts';
import type { Context } from '../context.ts';
import { type Block, FOLDS, type Reply } from '../reply.ts';
import { readCommandLine } from '../typed/command-line.ts';
import { type Fold, foldsOf } from './face.ts';

/** The answer is filed under the member whom it was given to; whoever reads it may press. */
const kept = { member: z.string(), answer: z.string() };

/** Opens one fold of an answer, for whoever pressed. */
export const openFold = followUp({
  for: 'group',
  hours: 48,
  seenBy: 'asker',
  args: { ...kept, fold: z.enum(FOLDS) },
  async answer({ member, answer, fold }, { store, say }) {
    const folded = await foldsOfAnswer({ store, member }, answer);
    const found = foldsOf(unpacked(folded)).find(({ id }) => id === fold);
    return {
      kind: 'reply',
      headline: say.folds.opened({ fold: say.folds.names[fold], answer: folded.headline }),
      data: { fold },
      blocks: (found?.blocks ?? []).map((folded): Block => {
        const { fold: _, ...block } = folded;
        return block;
      }),
      cautions: (found?.cautions ?? []).map(({ id, text }) => ({ id, text })),
      most: Number.POSITIVE_INFINITY,
    };
  },
});

const line = { ...kept, at: z.string().transform(Number) };

/** Asks what a button of an answer stands for, as if the presser had typed it. A menu chose which of its lines. */
async function askLine(
  { member, answer, at }: { readonly member: string; readonly answer: string; readonly at: number },
  context: Context,
  chosen: string | undefined,
) {
  const { lines = [] } = await foldsOfAnswer({ store: context.store, member }, answer);
  const typed = lines[at + Number(chosen ?? 0)] ?? '/help';
  const { path, options } = readCommandLine(typed, () => undefined);
  return context.run(path.join(' '), Object.fromEntries(options.map(({ name, text }) => [name, text])));
}

/** Goes on from an answer, for whoever pressed alone. */
export const askNext = followUp({
  for: 'group',
  hours: 48,
  seenBy: 'asker',
  args: line,
  answer: (args, context, { values }) => askLine(args, context, values[0]),
});

/** The follow-ups that every answer may offer, by their names in the registry. */
export const commonFollowUps = { 'fold.open': openFold, 'next.ask': askNext };

/** What the buttons of a reply go on with, as it is kept: its folds, and the lines that its other buttons ask. */
export const packed = (
  headline: string,
  { folds, lines }: { readonly folds: readonly Fold[]; readonly lines: readonly string[] },
): FoldedAnswer => ({
  headline,
  blocks: folds.flatMap(({ blocks }) => blocks.flatMap(packedBlock)),
  cautions: folds.flatMap(({ cautions }) =>
    cautions.map(({ id, text, fold }) => ({ id, text, ...(fold && { fold }) })),
  ),
  lines: lines as string[],
});

type PackedBlock = FoldedAnswer['blocks'][number];

/** The part itself where it is plain JSON: it is written down as it is, and nobody changes one. */
function packedBlock(block: Block): PackedBlock | readonly PackedBlock[] {
  switch (block.kind) {
    case 'picture':
      return { ...block, png: Buffer.from(block.png).toString('base64') };
    case 'file':
      return [];
    default:
      return block as PackedBlock;
  }
}

const unpacked = ({ blocks, cautions }: FoldedAnswer): Pick<Reply, 'blocks' | 'cautions'> => ({
  blocks: blocks.map(block =>
    block.kind === 'picture' ? { ...block, png: Buffer.from(block.png, 'base64') } : block,
  ) as readonly Block[],
  cautions: cautions as Reply['cautions'],
});
