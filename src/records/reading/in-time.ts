import { StoreFailure } from '../failure.ts';
import type { CommitResult, Entry, Span, Store, Write } from '../store.ts';

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
export class InTimeForOne implements Store {
  readonly #store: Store;
  #ticks: number;
  #isGone = false;
  #ticking: NodeJS.Timeout | undefined;
  #underWay: Set<() => void> | undefined;

  readonly patience?: number;

  constructor(store: Store) {
    this.#store = store;
    if (store.patience !== undefined) this.patience = store.patience;
    this.#ticks = Math.floor((SHARE * (store.patience ?? USUAL_MS)) / TICK_MS);
  }

  /** What is at hand is waited for by nobody; once the store is given up, it is asked and fails. */
  atHand(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined {
    return this.#isGone ? undefined : this.#store.atHand?.(spans, limit);
  }

  get(keys: readonly string[]): Promise<readonly unknown[]> {
    return this.#call('read', () => this.#store.get(keys));
  }

  range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    return this.#call('read', () => this.#store.range(from, to, limit));
  }

  ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]> {
    const store = this.#store;
    return store.ranges
      ? this.#call('read', () => store.ranges!(spans, limit))
      : Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
  }

  commit(writes: readonly Write[]): Promise<CommitResult> {
    return this.#call('write', () => this.#store.commit(writes));
  }

  close(): Promise<void> {
    return this.#store.close();
  }

  #giveUp(): void {
    this.#isGone = true;
    for (const end of this.#underWay ?? []) end();
  }

  readonly #tick = (): void => {
    this.#ticks -= 1;
    if (this.#ticks <= 0) this.#giveUp();
  };

  #call<T>(during: 'read' | 'write', work: () => Promise<T>): Promise<T> {
    if (this.#isGone)
      return Promise.reject(new StoreFailure('unreachable', during, 'given up for this question'));
    return new Promise<T>((resolve, reject) => {
      const saved = during === 'write' ? 'unknown' : 'no';
      const end = () =>
        reject(new StoreFailure('unreachable', during, 'too slow for one question', { saved }));
      this.#begin(end);
      // Before whoever waits goes on: the next call is another one.
      work().then(
        value => {
          this.#settle(end);
          resolve(value);
        },
        (failure: unknown) => {
          this.#settle(end);
          if (failure instanceof StoreFailure && failure.kind === 'unreachable') this.#isGone = true;
          reject(failure);
        },
      );
    });
  }

  #begin(end: () => void): void {
    this.#underWay ??= new Set();
    this.#underWay.add(end);
    this.#ticking ??= setInterval(this.#tick, TICK_MS);
  }

  #settle(end: () => void): void {
    this.#underWay?.delete(end);
    if (this.#underWay && this.#underWay.size > 0) return;
    clearInterval(this.#ticking);
    this.#ticking = undefined;
  }
}
