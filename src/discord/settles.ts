import { atOnce } from '../conversation/at-once.ts';

/** Whether a promise is done within so many ms; a failure counts as done. */
export async function settlesWithin(promise: Promise<unknown>, ms: number): Promise<boolean> {
  const done = promise.then(isDone, isDone);
  if (await atOnce(done)) return true;
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>(resolve => {
    timer = setTimeout(resolve, ms, false);
  });
  return await Promise.race([done, late]).finally(() => clearTimeout(timer));
}

const isDone = () => true;
