import { type Entry, everythingBySpan, instead, type Span, type Store } from './store.ts';

/** As many entries of a span in one answer of the store, which is one moment of it: a full shelf. */
const PAGE = 5_000;

/**
 * The store as one question sees it: what it has read under one of `spans` (starts of keys, such as `preference/`) is
 * not read again, until it writes; what lies under `together` is read all at once with the first of its keys. For
 * records that a question asks for in several places and that nothing else changes while it is answered.
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
  async function keysGathered(keys: readonly string[]): Promise<readonly unknown[]> {
    const found = await gather();
    return keys.map(wanted => found[placeOf(wanted)]?.find(({ key }) => key === wanted)?.value);
  }
  /** The very list that the store gave: what somebody made of it is known by it. */
  async function wholeOf(place: number): Promise<readonly Entry[]> {
    try {
      return (await gather())[place] ?? [];
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
        return await store.commit(writes);
      } finally {
        gets.clear();
        ranges.clear();
        whole.length = 0;
        gathered = undefined;
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
