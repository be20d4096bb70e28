/**
 * What a promise gives, where it gives it without waiting for anything outside: for a timer, a thread, a server. Undefined where it
 * does not. Most of what is waited for with a time limit is there already, and a timer for it takes longer than the rest.
 */
export function atOnce<T>(promise: Promise<T>): Promise<T | undefined> {
  return new Promise((resolve, reject) => {
    promise.then(resolve, reject);
    // Runs when all that was to be done at once is done.
    process.nextTick(resolve, undefined);
  });
}
