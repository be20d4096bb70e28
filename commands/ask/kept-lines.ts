import type { Context } from '../../src/conversation/context.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';

/** Keeps lines, or questions in plain words, for the buttons under an answer: `askFollowUps.run` answers the one at its place. */
export const keepLines = (
  candidates: readonly string[],
  { shelf, idempotencyKey, change }: Context,
): Promise<void> =>
  keepAskedLine(shelf, idempotencyKey, { command: 'ask', given: {}, candidates: [...candidates] }, change.at);
