import type { Context } from '../../../src/conversation/context.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import { isOfLye } from '../../../src/engine/questions/leaning/before.ts';

/** Where the lye of a recipe was told in this talk: whoever is asked for the recipe once more holds a figure that may be of another pot. */
export function figureBefore(context: Context): readonly Block[] {
  const ran = context.lately?.before(context)?.ran;
  return ran && isOfLye(ran) ? [{ kind: 'text', text: context.say.leaning.figureBefore, firm: true }] : [];
}
