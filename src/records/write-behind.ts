import type { CommitResult, Entry, Span, Store, Write } from './store.ts';

/**
 * How long a write may wait for others before all of them go to the store in one commit, ms: each commit has all that is read
 * on the main thread read anew.
 */
const GATHER_MS = 300;
/** A commit of gathered writes that takes longer is a sign of trouble: whoever writes then waits for their own, ms. */
const OVERDUE_MS = 600;
/** So many go to the store before their time; as many may wait for it. */
const ENOUGH = 256;
const MOST_WAITING = 1_024;

/**
 * A store that gathers what is written under one span (`late-fold/`): such a write is there for every reader of this
 * process at once, and on disk within a moment, many in one commit. Only for records that nobody was told are kept and
 * that can be made again: what a process has not written when it is killed is lost. A commit that puts nothing there, or
 * anything elsewhere too, is on disk before it is acknowledged, behind all that was gathered. While the store is slow or
 * fails, nothing is gathered: whoever writes is told.
 */
export class WriteBehind implements Store {
  readonly #inner: Store;
  readonly #span: Span;
  /** What is not known to be on disk, by key: waiting, or under way. */
  readonly #ahead = new Map<string, Write>();
  #timer: NodeJS.Timeout | undefined;
  #underWay: { readonly since: number; readonly done: Promise<void> } | undefined;
  #failed = false;

  readonly patience?: number;
  readonly ranges?: NonNullable<Store['ranges']>;

  constructor(inner: Store, span: Span) {
    this.#inner = inner;
    this.#span = span;
    if (inner.patience !== undefined) this.patience = inner.patience;
    const ranges = inner.ranges?.bind(inner);
    if (!ranges) return;
    this.ranges = async (spans, limit) => {
      if (!spans.some(({ from, to }) => this.#aheadIn(from, to).length > 0))
        return await ranges(spans, limit);
      return await Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
    };
  }

  atHand(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined {
    for (const { from, to } of spans) if (this.#aheadIn(from, to).length > 0) return undefined;
    return this.#inner.atHand?.(spans, limit);
  }

  async get(keys: readonly string[]): Promise<readonly unknown[]> {
    if (this.#ahead.size === 0 || !keys.some(this.#holds)) return await this.#inner.get(keys);
    const ahead = keys.map(key => this.#ahead.get(key));
    if (ahead.every(write => write !== undefined)) return ahead.map(storedBy);
    const found = await this.#inner.get(keys);
    return found.map((value, at) => (ahead[at] ? storedBy(ahead[at]) : value));
  }

  async range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    const ahead = this.#aheadIn(from, to);
    if (ahead.length === 0) return await this.#inner.range(from, to, limit);
    // What is dropped ahead still stands in the store, and must not take the place of what follows.
    const dropped = ahead.filter(({ kind }) => kind === 'drop').length;
    const found = new Map((await this.#inner.range(from, to, limit + dropped)).map(one => [one.key, one]));
    for (const write of ahead) {
      if (write.kind === 'drop') found.delete(write.key);
      else found.set(write.key, { key: write.key, value: storedBy(write) });
    }
    return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1)).slice(0, limit);
  }

  async commit(writes: readonly Write[]): Promise<CommitResult> {
    if (!writes.some(({ key }) => this.#holds(key))) return await this.#inner.commit(writes);
    if (this.#mayGather(writes)) {
      for (const write of writes) this.#ahead.set(write.key, write);
      this.#timer ??= setTimeout(() => void this.#flush(), GATHER_MS);
      if (this.#ahead.size >= ENOUGH && !this.#underWay) void this.#flush();
      return { done: true };
    }
    await this.#flush();
    const result = await this.#inner.commit(writes);
    this.#failed = false;
    return result;
  }

  async close(): Promise<void> {
    await this.#flush();
    await this.#inner.close();
  }

  #holds = (key: string): boolean => key >= this.#span.from && key < this.#span.to;

  #aheadIn(from: string, to: string): readonly Write[] {
    if (this.#ahead.size === 0 || to <= this.#span.from || from >= this.#span.to) return NOTHING;
    return [...this.#ahead.values()].filter(({ key }) => key >= from && key < to);
  }

  #mayGather(writes: readonly Write[]): boolean {
    const overdue = this.#underWay && performance.now() - this.#underWay.since > OVERDUE_MS;
    if (this.#failed || overdue || this.#ahead.size + writes.length > MOST_WAITING) return false;
    return (
      writes.some(({ kind }) => kind === 'put') &&
      writes.every(({ kind, key }) => (kind === 'put' || kind === 'drop') && this.#holds(key))
    );
  }

  /** Brings all that waits to the store. What the store does not take is lost; never rejects. */
  async #flush(): Promise<void> {
    while (this.#underWay) await this.#underWay.done;
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const batch = [...this.#ahead.values()];
    if (batch.length === 0) return;
    const done = this.#bring(batch);
    this.#underWay = { since: performance.now(), done };
    await done;
  }

  async #bring(batch: readonly Write[]): Promise<void> {
    try {
      await this.#inner.commit(batch);
    } catch {
      this.#failed = true;
    }
    for (const write of batch) if (this.#ahead.get(write.key) === write) this.#ahead.delete(write.key);
    this.#underWay = undefined;
  }
}

const NOTHING: readonly Write[] = [];

const storedBy = (write: Write): unknown => ('value' in write ? write.value : undefined);
