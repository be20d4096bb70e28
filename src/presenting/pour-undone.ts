import type { Context } from '../conversation/context.ts';
import type { Reply } from '../conversation/reply.ts';
import { undoPour } from '../records/batches/index.ts';
import { unlearn } from './colour/learn.ts';
import { plainReply } from './plain-reply.ts';

/** Takes a pour back with its batch, puts on the shelf what it took, forgets what it taught, and says so. */
export async function pourUndone(id: string, context: Context): Promise<Reply> {
  const { say, change, book } = context;
  const { batch, outcomes } = await undoPour(book, id, change);
  await unlearn(id, context);
  if (!batch) return plainReply(say.batches.undoneBefore, { undone: false });
  const back = outcomes.flatMap(({ name, change: grams = 0 }) =>
    name && grams > 0 ? [{ name, grams }] : [],
  );
  return plainReply(say.batches.undone({ name: batch.name, back }), { undone: true, outcomes });
}
