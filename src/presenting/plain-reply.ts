import type { Block, Reply } from '../conversation/reply.ts';

/** A reply that warns of nothing and offers nothing further. */
export const plainReply = (headline: string, data: object, blocks: readonly Block[] = []): Reply => ({
  kind: 'reply',
  headline,
  data,
  blocks,
  cautions: [],
});
