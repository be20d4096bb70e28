import { type Entry, everything, everythingBySpan, instead, type Span, type Store } from '../store.ts';

/** As many entries of a span in one answer of the store, which is one moment of it: a full shelf. */
const PAGE = 5_000;

/**
 * The store as one question sees it: what it has read under one of `spans` (starts of keys, such as `preference/`) is
 * not read again, until it writes; what lies under `together` is read all at once with the first of its keys, and of
 * that only the spans are read again in which a commit has written. After one that was not done all is, since something
 * else has changed. For records that a question asks for in several places and that nothing else changes while it is
 * answered.
 */
export function readOnce(
  store: Store,
  { spans, together = [] }: { readonly spans: readonly string[]; readonly together?: readonly Span[] },
): Store {
  const gets = new Map<string, Promise<readonly unknown[]>>();
  const ranges = new Map<string, Promise<readonly Entry[]>>();
  /** The whole of each span of `together`, by its place. */
  const whole: (Promise<readonly Entry[]> | undefined)[] = [];
  /** Of each span of `together`. */
  let gathered: Promise<readonly (readonly Entry[])[]> | undefined;
  /** Places of spans that were written to since they were gathered, with what was read of them since. */
  const again = new Map<number, Promise<readonly Entry[]> | undefined>();
  const isKnown = (key: string) => spans.some(span => key.startsWith(span));
  const placeOf = (key: string) => together.findIndex(({ from, to }) => key >= from && key < to);
  const placeOfSpan = ({ from, to }: Span) => together.findIndex(span => from >= span.from && to <= span.to);

  async function gather() {
    const reading = gathered ?? everythingBySpan(store, together, PAGE);
    gathered = reading;
    try {
      return await reading;
    } catch (failure) {
      // A failure is nothing to remember: the next one who asks may be luckier.
      if (gathered === reading) gathered = undefined;
      throw failure;
    }
  }
  /** The whole of a span, as it is since this question last wrote there. */
  async function entriesAt(place: number): Promise<readonly Entry[]> {
    const span = together[place];
    if (!span || !again.has(place)) return (await gather())[place] ?? [];
    const reading = again.get(place) ?? everything(store, span, PAGE);
    again.set(place, reading);
    try {
      return await reading;
    } catch (failure) {
      if (again.get(place) === reading) again.set(place, undefined);
      throw failure;
    }
  }
  async function keysGathered(keys: readonly string[]): Promise<readonly unknown[]> {
    return await Promise.all(
      keys.map(async wanted => (await entriesAt(placeOf(wanted))).find(({ key }) => key === wanted)?.value),
    );
  }
  /** Forgets what lies where something was written. */
  function forget(keys: readonly string[]): void {
    gets.clear();
    ranges.clear();
    for (const place of new Set(keys.map(placeOf))) {
      if (place < 0) continue;
      whole[place] = undefined;
      if (gathered) again.set(place, undefined);
    }
  }
  function forgetAll(): void {
    gets.clear();
    ranges.clear();
    whole.length = 0;
    again.clear();
    gathered = undefined;
  }
  /** The very list that the store gave: what somebody made of it is known by it. */
  async function wholeOf(place: number): Promise<readonly Entry[]> {
    try {
      return await entriesAt(place);
    } catch (failure) {
      whole[place] = undefined;
      throw failure;
    }
  }
  async function rangeGathered(span: Span, limit: number): Promise<readonly Entry[]> {
    const place = placeOfSpan(span);
    whole[place] ??= wholeOf(place);
    const found = await whole[place];
    const { from, to } = span;
    const isWhole = together[place]?.from === from && together[place]?.to === to;
    return isWhole && found.length <= limit
      ? found
      : found.filter(({ key }) => key >= from && key < to).slice(0, limit);
  }

  return instead(store, {
    get(keys) {
      if (keys.length > 0 && keys.every(key => placeOf(key) >= 0)) return keysGathered(keys);
      return keys.every(isKnown) ? once(gets, keys.join(' '), () => store.get(keys)) : store.get(keys);
    },
    range(from, to, limit) {
      if (placeOfSpan({ from, to }) >= 0) return rangeGathered({ from, to }, limit);
      if (!isKnown(from)) return store.range(from, to, limit);
      const name = `${from} ${to} ${limit}`;
      const reading = once(ranges, name, () => store.range(from, to, limit));
      // What is read in pieces may have changed between two of them: whoever looks again then looks anew.
      return reading.then(found => {
        if (found.length >= limit) ranges.delete(name);
        return found;
      });
    },
    ...(store.ranges && { ranges: store.ranges.bind(store) }),
    async commit(writes) {
      try {
        const result = await store.commit(writes);
        if (result.done) forget(writes.map(({ key }) => key));
        else forgetAll();
        return result;
      } catch (failure) {
        forgetAll();
        throw failure;
      }
    },
  });
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
