import { Refusal } from '../../../src/engine/refusal.ts';

/** The id an expected "no" gives, or `answered` when there was none. Anything else thrown is passed on. */
export function refused(ask: () => unknown): string {
  try {
    ask();
  } catch (problem) {
    if (problem instanceof Refusal) return problem.id;
    throw problem;
  }
  return 'answered';
}
