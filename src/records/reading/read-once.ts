import {
  type CommitResult,
  type Entry,
  everything,
  everythingBySpan,
  type Span,
  type Store,
  type Write,
} from '../store.ts';

/** As many entries of a span in one answer of the store, which is one moment of it: a full shelf. */
const PAGE = 5_000;

type Remembered = {
  /** Starts of keys, such as `preference/`. */
  readonly spans: readonly string[];
  readonly together?: readonly Span[];
};

/**
 * The store as one question sees it: what it has read under one of `spans` is
 * not read again, until it writes; what lies under `together` is read all at once with the first of its keys, and of
 * that only the spans are read again in which a commit has written. After one that was not done all is, since something
 * else has changed. For records that a question asks for in several places and that nothing else changes while it is
 * answered.
 */
export class ReadOnce implements Store {
  readonly #store: Store;
  readonly #spans: readonly string[];
  readonly #together: readonly Span[];
  /** Of each span of `together`, by its place: the list that was at hand. */
  #held: (readonly Entry[] | undefined)[] = [];
  /** Of each span of `together`, where it had to be asked for. */
  #gathered: Promise<readonly (readonly Entry[])[]> | undefined;
  /** Places of spans that were written to since they were read, with what was read of them since. */
  #again: Map<number, Promise<readonly Entry[]> | undefined> | undefined;
  #gets: Map<string, Promise<readonly unknown[]>> | undefined;
  #ranges: Map<string, Promise<readonly Entry[]>> | undefined;

  readonly patience?: number;

  constructor(store: Store, { spans, together = [] }: Remembered) {
    this.#store = store;
    this.#spans = spans;
    this.#together = together;
    if (store.patience !== undefined) this.patience = store.patience;
  }

  atHand(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined {
    const found: (readonly Entry[])[] = [];
    for (const span of spans) {
      const place = this.#placeOfSpan(span);
      if (place < 0 && this.#isKnown(span.from)) return undefined;
      const entries = place < 0 ? this.#store.atHand?.([span], limit)?.[0] : this.#heldAt(place);
      if (!entries) return undefined;
      found.push(place < 0 ? entries : this.#within(place, { ...span, limit }, entries));
    }
    return found;
  }

  get(keys: readonly string[]): Promise<readonly unknown[]> {
    if (keys.length > 0 && keys.every(key => this.#placeOf(key) >= 0)) return this.#keysGathered(keys);
    if (!keys.every(key => this.#isKnown(key))) return this.#store.get(keys);
    this.#gets ??= new Map();
    return once(this.#gets, keys.join(' '), () => this.#store.get(keys));
  }

  async range(from: string, to: string, limit: number): Promise<readonly Entry[]> {
    const place = this.#placeOfSpan({ from, to });
    if (place >= 0) {
      const entries = this.#heldAt(place) ?? (await this.#entriesAt(place));
      return this.#within(place, { from, to, limit }, entries);
    }
    if (!this.#isKnown(from)) return await this.#store.range(from, to, limit);
    this.#ranges ??= new Map();
    const name = `${from} ${to} ${limit}`;
    const found = await once(this.#ranges, name, () => this.#store.range(from, to, limit));
    // What is read in pieces may have changed between two of them: whoever looks again then looks anew.
    if (found.length >= limit) this.#ranges.delete(name);
    return found;
  }

  ranges(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]> {
    return this.#store.ranges
      ? this.#store.ranges(spans, limit)
      : Promise.all(spans.map(({ from, to }) => this.range(from, to, limit)));
  }

  async commit(writes: readonly Write[]): Promise<CommitResult> {
    try {
      const result = await this.#store.commit(writes);
      if (result.done) this.#forget(writes);
      else this.#forgetAll();
      return result;
    } catch (failure) {
      this.#forgetAll();
      throw failure;
    }
  }

  close(): Promise<void> {
    return this.#store.close();
  }

  #isKnown(key: string): boolean {
    return this.#spans.some(span => key.startsWith(span));
  }

  #placeOf(key: string): number {
    return this.#together.findIndex(({ from, to }) => key >= from && key < to);
  }

  #placeOfSpan({ from, to }: Span): number {
    return this.#together.findIndex(span => from >= span.from && to <= span.to);
  }

  /** What a place holds of a span: of the whole the very list that the store gave, since what somebody made of it is known by it. */
  #within(
    place: number,
    { from, to, limit }: Span & { readonly limit: number },
    entries: readonly Entry[],
  ): readonly Entry[] {
    const span = this.#together[place];
    if (span?.from === from && span.to === to && entries.length <= limit) return entries;
    return entries.filter(({ key }) => key >= from && key < to).slice(0, limit);
  }

  /** The whole of a span, where it is at hand; all spans are then looked at, so that they are of one moment. */
  #heldAt(place: number): readonly Entry[] | undefined {
    const held = this.#held[place];
    if (held || this.#gathered) return held;
    const span = this.#together[place] as Span;
    const isAgain = this.#again?.has(place) ?? false;
    const found = this.#store.atHand?.(isAgain ? [span] : this.#together, PAGE);
    // What takes more than a page is read page by page.
    if (!found?.every(entries => entries.length < PAGE)) return undefined;
    if (isAgain) [this.#held[place]] = found;
    else this.#held = [...found];
    return this.#held[place];
  }

  /** The whole of a span, as it is since this question last wrote there. */
  async #entriesAt(place: number): Promise<readonly Entry[]> {
    const span = this.#together[place];
    if (!span || !this.#again?.has(place)) return (await this.#gather())[place] ?? [];
    const reading = this.#again.get(place) ?? everything(this.#store, span, PAGE);
    this.#again.set(place, reading);
    try {
      return await reading;
    } catch (failure) {
      // A failure is nothing to remember: the next one who asks may be luckier.
      if (this.#again?.get(place) === reading) this.#again.set(place, undefined);
      throw failure;
    }
  }

  async #gather(): Promise<readonly (readonly Entry[])[]> {
    const reading = this.#gathered ?? everythingBySpan(this.#store, this.#together, PAGE);
    this.#gathered = reading;
    try {
      return await reading;
    } catch (failure) {
      if (this.#gathered === reading) this.#gathered = undefined;
      throw failure;
    }
  }

  async #keysGathered(keys: readonly string[]): Promise<readonly unknown[]> {
    return await Promise.all(
      keys.map(async wanted => {
        const place = this.#placeOf(wanted);
        const entries = this.#heldAt(place) ?? (await this.#entriesAt(place));
        return entries.find(({ key }) => key === wanted)?.value;
      }),
    );
  }

  /** Forgets what lies where something was written. */
  #forget(writes: readonly Write[]): void {
    this.#gets = undefined;
    this.#ranges = undefined;
    if (!this.#gathered && this.#held.length === 0) return;
    for (const { key } of writes) {
      const place = this.#placeOf(key);
      if (place < 0) continue;
      this.#again ??= new Map();
      this.#again.set(place, undefined);
      this.#held[place] = undefined;
    }
  }

  #forgetAll(): void {
    this.#gets = undefined;
    this.#ranges = undefined;
    this.#again = undefined;
    this.#gathered = undefined;
    this.#held = [];
  }
}

function once<T>(known: Map<string, Promise<T>>, name: string, read: () => Promise<T>): Promise<T> {
  const before = known.get(name);
  if (before) return before;
  const reading = read();
  known.set(name, reading);
  // A failure is nothing to remember: the next one who asks may be luckier.
  reading.catch(() => known.delete(name));
  return reading;
}
