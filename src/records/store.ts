/** One step of a commit. `absent` writes nothing: it only demands that nobody has written that key. */
export type Write =
  | { readonly kind: 'put'; readonly key: string; readonly value: unknown }
  | { readonly kind: 'add'; readonly key: string; readonly value: unknown }
  | { readonly kind: 'absent'; readonly key: string }
  | { readonly kind: 'drop'; readonly key: string };

/** `done: false` means that nothing at all was written, because `clash` was already present. */
export type CommitResult = { readonly done: true } | { readonly done: false; readonly clash: string };

export type Entry = { readonly key: string; readonly value: unknown };

/** Stands for a stored text that is no record at all: `read` rejects it, and it is never mistaken for absent. */
export class Unreadable {}

/** Keys from `from` up to, but not including, `to`, in the byte order of the key. */
export type Span = { readonly from: string; readonly to: string };

/**
 * What is remembered. Strict: a read that fails rejects with a `StoreFailure`; `undefined` means that nothing is there
 * and never anything else, and what is there but cannot be made sense of is {@link Unreadable}, its neighbours are not. A commit that rejects with
 * `saved: 'no'` left the store as it was.
 *
 * Values are plain JSON. Keys are made by `keys.ts` and nowhere else.
 */
export interface Store {
  /** How long a call may take before it is given up, ms; 2 s where it is not said. */
  readonly patience?: number;
  /** The values under the keys, in their order; `undefined` where nothing is stored. */
  get(keys: readonly string[]): Promise<readonly unknown[]>;
  /** At most `limit` entries of the span `from <= key < to`, in the byte order of their keys. */
  range(from: string, to: string, limit: number): Promise<readonly Entry[]>;
  /** As `range` of each span, in one message where a store is asked by messages; without it they are asked one by one. */
  ranges?(spans: readonly Span[], limit: number): Promise<readonly (readonly Entry[])[]>;
  /**
   * As `ranges`, where that can be told without waiting for anything: most of what a question reads was read a moment ago, and
   * to wait even for what is there costs more than to look. Undefined where it has to be asked for, or fails: then the
   * other calls say why.
   */
  atHand?(spans: readonly Span[], limit: number): readonly (readonly Entry[])[] | undefined;
  /**
   * All of the writes or none of them, on disk before it resolves. Each key at most once a commit: which of
   * two writes to one key comes first is not a question worth having.
   */
  commit(writes: readonly Write[]): Promise<CommitResult>;
  /** Waits for what is in flight, then lets go. Later calls reject. */
  close(): Promise<void>;
}

/** Writes the value, whatever was there. */
export const put = (key: string, value: unknown): Write => ({ kind: 'put', key, value });

/** Writes the value, or fails the whole commit if the key is there already. */
export const add = (key: string, value: unknown): Write => ({ kind: 'add', key, value });

/** Fails the whole commit if the key is there; writes nothing. */
export const absent = (key: string): Write => ({ kind: 'absent', key });

/** Removes the key; no matter if it was not there. */
export const drop = (key: string): Write => ({ kind: 'drop', key });

/** At most `limit` entries of a span, where they are at hand; else undefined, and they have to be asked for. */
export const atHand = (store: Store, span: Span, limit: number): readonly Entry[] | undefined =>
  store.atHand?.([span], limit)?.[0];

/** Every entry of a span, read page by page so that no answer of the store grows without bound. */
export async function everything(store: Store, span: Span, pageSize = 500): Promise<readonly Entry[]> {
  const first = atHand(store, span, pageSize) ?? (await store.range(span.from, span.to, pageSize));
  const last = first.at(-1);
  if (last === undefined || first.length < pageSize) return first;
  const entries = [...first];
  for await (const page of pages(store, { from: after(last), to: span.to }, pageSize)) entries.push(...page);
  return entries;
}

/** Every entry of several spans, one span after another: where few hold more than a page, asked in one message. */
export const everythingIn = async (
  store: Store,
  spans: readonly Span[],
  pageSize = 500,
): Promise<readonly Entry[]> => {
  const whole = await everythingBySpan(store, spans, pageSize);
  return whole.length === 1 ? whole[0]! : whole.flat();
};

/** The same, the entries of each span by themselves. */
export async function everythingBySpan(
  store: Store,
  spans: readonly Span[],
  pageSize = 500,
): Promise<readonly (readonly Entry[])[]> {
  const firsts = store.ranges
    ? await store.ranges(spans, pageSize)
    : await Promise.all(spans.map(({ from, to }) => store.range(from, to, pageSize)));
  if (firsts.every(first => first.length < pageSize)) return firsts;
  return await Promise.all(
    spans.map(async ({ to }, at) => {
      const first = firsts[at] ?? [];
      const last = first.at(-1);
      if (last === undefined || first.length < pageSize) return first;
      return [...first, ...(await everything(store, { from: after(last), to }, pageSize))];
    }),
  );
}

/** Where a span goes on behind an entry: '-' is the lowest character that a key may hold, so nothing lies between. */
const after = ({ key }: Entry): string => `${key}-`;

/** The entries of a span page by page, for those too many to hold. */
export async function* pages(
  store: Pick<Store, 'range'>,
  span: Span,
  pageSize = 500,
): AsyncGenerator<readonly Entry[]> {
  let from = span.from;
  while (true) {
    const page = await store.range(from, span.to, pageSize);
    if (page.length > 0) yield page;
    const last = page.at(-1);
    if (last === undefined || page.length < pageSize) return;
    from = after(last);
  }
}

/** The store, but for the calls that are given `instead`. */
export function instead(
  store: Store,
  calls: Partial<Pick<Store, 'get' | 'range' | 'ranges' | 'commit'>>,
): Store {
  // Whoever stands before `range` stands before `ranges` too: it is then asked span by span.
  const ranges = calls.ranges ?? (calls.range ? undefined : store.ranges?.bind(store));
  const isReadAsItIs = !calls.get && !calls.range && !calls.ranges;
  const atHand = isReadAsItIs ? store.atHand?.bind(store) : undefined;
  const { patience } = store;
  return {
    get: calls.get ?? store.get.bind(store),
    range: calls.range ?? store.range.bind(store),
    commit: calls.commit ?? store.commit.bind(store),
    close: () => store.close(),
    ...(ranges && { ranges }),
    ...(atHand && { atHand }),
    ...(patience !== undefined && { patience }),
  };
}
