import type { Reply } from '../../../src/conversation/reply.ts';

/** An answer that says of itself that it leans on the turn before. */
export const leansOnTalk = (reply: Reply): Reply => {
  const { understood } = reply.data as { readonly understood?: object };
  return { ...reply, data: { ...reply.data, understood: { ...understood, leans: true } } };
};
