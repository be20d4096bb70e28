import type { Reply } from '../reply.ts';

type Shown = Pick<Reply<unknown>, 'headline' | 'blocks' | 'cautions' | 'next' | 'most'>;
type Kept = { readonly of: Shown; readonly made: Map<string, unknown> };

/** By the cautions of an answer, which stay the same thing on its way through choices and signatures, and are other ones on each face. */
const kept = new WeakMap<Shown['cautions'], Kept>();

/** Declares that an answer will be given again as it is: what is made of it on its way out is then made once. */
export function givenAgain<Given extends Shown>(reply: Given): Given {
  const { headline, blocks, cautions, next, most } = reply;
  const of = {
    headline,
    blocks,
    cautions,
    ...(next && { next }),
    ...(most !== undefined && { most }),
  };
  if (!keptFor(reply)) kept.set(cautions, { of, made: new Map() });
  return reply;
}

/** Whether an answer was declared so, and nothing has been put to it since. */
export const isGivenAgain = (reply: Shown): boolean => keptFor(reply) !== undefined;

/**
 * What `make` gives, under a name that tells what it hangs on beside the answer; made anew each time but for an answer
 * that is {@link givenAgain}.
 */
export function onceFor<Made>(reply: Shown, name: string, make: () => Made): Made {
  const known = keptFor(reply);
  if (!known) return make();
  const before = known.get(name) as { readonly it: Made } | undefined;
  if (before) return before.it;
  const it = make();
  known.set(name, { it });
  return it;
}

function keptFor(reply: Shown): Kept['made'] | undefined {
  const known = kept.get(reply.cautions);
  if (!known) return undefined;
  const { headline, blocks, next, most } = known.of;
  const isSame =
    reply.headline === headline && reply.blocks === blocks && reply.next === next && reply.most === most;
  return isSame ? known.made : undefined;
}
