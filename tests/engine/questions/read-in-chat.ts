import { inOrder } from '../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { readLyeBesideTalk } from '../../../src/engine/questions/lye/beside-talk.ts';
import { Refusal, unlessRefused } from '../../../src/engine/refusal.ts';

/** A recipe in a question, as a plain question is read; throws the refusal that comes back. */
export function readInChat(question: string): ReturnType<typeof readLyeBesideTalk> {
  const { ordered, unordered } = inOrder(question);
  return readLyeBesideTalk(question, { ordered, ...(unordered && { unordered }) });
}

/** Whether no recipe is read: something is asked back. */
export const isAskedBack = (question: string): boolean =>
  unlessRefused(() => readInChat(question))?.given.oils === undefined;

/** The question that comes back; throws where a number does. */
export function refusalOf(question: string): Refusal {
  try {
    readInChat(question);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error(`answered: ${question}`);
}
