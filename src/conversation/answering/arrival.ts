import type { Answer } from '../reply.ts';

const acts = new WeakMap<Answer, () => Promise<void>>();

/** Puts off what must not happen before an answer has reached who asked: told once, and lost if the answer is. */
export function onArrival(answer: Answer, act: () => Promise<void>): void {
  acts.set(answer, act);
}

/** Whoever has shown an answer says so. A second time does nothing. */
export async function arrived(answer: Answer): Promise<void> {
  const act = acts.get(answer);
  acts.delete(answer);
  await act?.();
}
