import type { Block } from '../../../src/conversation/reply.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';
import type { AskReply } from '../understood.ts';

/** A reading that `/plan` answers, with what must be said beside it. */
export type LyeReading = Omit<Reading, 'job'> & {
  readonly kind: 'reading';
  readonly job: 'lye' | 'plan';
  readonly notes: readonly Block[];
};

/** What was found of a question near lye: an answer, or a recipe that is to be run; undefined where it is no such question. */
export type LyeFound = AskReply | LyeReading | undefined;
