import { StoreFailure } from '../failure.ts';
import { instead, type Store } from '../store.ts';

/**
 * How much of what one call may take one question waits for the store altogether: a sentence that comes in time is
 * worth more than another try.
 */
const SHARE = 0.9;
/** What one call may take where the store does not say, ms. */
const USUAL_MS = 2_000;
/** Waiting is counted in ticks of the event loop: one that is held up by something else counts for one, ms. */
const TICK_MS = 50;

/**
 * The store as one question sees it, which waits for it only so long altogether; what comes after fails at once, and so
 * does all that comes after a first failure to reach it. Time in which no call is under way does not count, nor does
 * a call that takes no longer than a sound store takes.
 */
export function inTimeForOne(store: Store): Store {
  let ticks = Math.floor((SHARE * (store.patience ?? USUAL_MS)) / TICK_MS);
  let isGone = false;
  let ticking: NodeJS.Timeout | undefined;
  const underWay = new Set<() => void>();

  const giveUp = () => {
    isGone = true;
    for (const end of underWay) end();
  };
  const tick = () => {
    ticks -= 1;
    if (ticks <= 0) giveUp();
  };

  function call<T>(during: 'read' | 'write', work: () => Promise<T>): Promise<T> {
    if (isGone) return Promise.reject(new StoreFailure('unreachable', during, 'given up for this question'));
    return new Promise<T>((resolve, reject) => {
      const saved = during === 'write' ? 'unknown' : 'no';
      const end = () =>
        reject(new StoreFailure('unreachable', during, 'too slow for one question', { saved }));
      underWay.add(end);
      ticking ??= setInterval(tick, TICK_MS);
      // Before whoever waits goes on: the next call is another one.
      const settle = () => {
        underWay.delete(end);
        if (underWay.size > 0) return;
        clearInterval(ticking);
        ticking = undefined;
      };
      work().then(
        value => {
          settle();
          resolve(value);
        },
        (failure: unknown) => {
          settle();
          if (failure instanceof StoreFailure && failure.kind === 'unreachable') isGone = true;
          reject(failure);
        },
      );
    });
  }

  const ranges = store.ranges?.bind(store);
  return instead(store, {
    ...(ranges && { ranges: (spans, limit) => call('read', () => ranges(spans, limit)) }),
    get: keys => call('read', () => store.get(keys)),
    range: (from, to, limit) => call('read', () => store.range(from, to, limit)),
    commit: writes => call('write', () => store.commit(writes)),
  });
}
