import { part, under } from '../keys.ts';
import { type Entry, pages, type Span, type Store } from '../store.ts';
import { isOwned, kinds, type OwnedKind, PICTURES, type Topic } from './kinds.ts';
import { isAllNoted, isNoted, notedOf } from './owned-index.ts';

/** A record of one member's. */
export type Owned = Entry & { readonly kind: string; readonly held: OwnedKind };

/** Records read in one turn of the event loop: pictures are large. */
const PAGE = 100;
const PAGE_OF_PICTURES = 4;

/**
 * Every record that belongs to a member, of these topics and kinds or of all, in every group, a small page in each turn
 * of the event loop. What lies under their own key is one span, and of what lies under groups it is noted what is
 * theirs. Where that is not noted (a store that is just being filled) all that groups keep is looked through.
 */
export async function* ownedBy(
  store: Store,
  member: string,
  asked: (topic: Topic, kind: string) => boolean = () => true,
): AsyncGenerator<Owned> {
  const events: Event[] = [];
  const isAll = await isAllNoted(store);
  for (const [kind, held] of kinds) {
    if (!isOwned(held) || !asked(held.topic, kind)) continue;
    let head = '';
    for await (const entry of entriesOf(store, { kind, held, member, events, isAll })) {
      const parts = entry.key.split('/');
      if ('head' in held.owner && parts.length === 3 && fieldOf(entry, 'member') === member) head = entry.key;
      if (!isOwn(entry, parts, { held, member, head })) continue;
      if (kind === 'challenge-event')
        events.push({ group: parts[1]!, challenge: parts[2]!, id: parts.at(-1)! });
      yield { ...entry, kind, held };
    }
  }
}

/** An event of a challenge, by the parts of its key. */
type Event = { readonly group: string; readonly challenge: string; readonly id: string };

type Wanted = {
  readonly kind: string;
  readonly held: OwnedKind;
  readonly member: string;
  /** Events that the member made. */
  readonly events: readonly Event[];
  /** Whether it is noted what is theirs. */
  readonly isAll: boolean;
};

/** Entries among which all of the member's of a kind are. */
async function* entriesOf(store: Store, wanted: Wanted): AsyncGenerator<Entry> {
  const { kind, held, member, events, isAll } = wanted;
  const { owner } = held;
  if ('event' in owner) {
    yield* photosOf(store, kind, events);
    return;
  }
  if (isAll && isNoted(held)) {
    for await (const entry of notedOf(store, member, kind)) {
      yield entry;
      if ('head' in owner) yield* turns(store, under(entry.key), PAGE);
    }
    return;
  }
  const isLeapt = 'part' in owner && owner.part === 2 && PICTURES.has(kind);
  if (isLeapt) {
    for await (const group of partsUnder(store, kind))
      yield* turns(store, under(`${kind}/${group}/${part(member)}`), PAGE_OF_PICTURES);
    return;
  }
  const span = 'part' in owner && owner.part === 1 ? under(`${kind}/${part(member)}`) : under(kind);
  yield* turns(store, span, PICTURES.has(kind) ? PAGE_OF_PICTURES : PAGE);
}

/** The photos that events brought, each read by its key. */
async function* photosOf(store: Store, kind: string, events: readonly Event[]): AsyncGenerator<Entry> {
  for (const { group, challenge, id } of events) {
    const key = [kind, group, challenge, id].join('/');
    const [value] = await store.get([key]);
    if (value === undefined) continue;
    yield { key, value };
    await turn();
  }
}

/** The entries of a span, a page in each turn of the event loop: whoever asks meanwhile is answered between them. */
export async function* turns(store: Store, span: Span, size: number): AsyncGenerator<Entry> {
  for await (const page of pages(store, span, size)) {
    yield* page;
    await turn();
  }
}

const turn = () => new Promise<void>(resolve => setImmediate(resolve));

/**
 * The different parts that follow a beginning of keys (`flaw-picture`: the groups that have any), each found by one
 * read of one record.
 */
export async function* partsUnder(store: Store, beginning: string): AsyncGenerator<string> {
  const at = beginning.split('/').length;
  let { from, to } = under(beginning);
  while (true) {
    const [first] = await store.range(from, to, 1);
    const found = first?.key.split('/')[at];
    if (found === undefined) return;
    yield found;
    await turn();
    // Past all that lies under it, and itself.
    from = under(`${beginning}/${found}`).to;
  }
}

function isOwn(
  entry: Entry,
  parts: readonly string[],
  /** `head`: the member's own record under which the next ones may lie. */
  { held, member, head }: { readonly held: OwnedKind; readonly member: string; readonly head: string },
): boolean {
  const { owner } = held;
  if ('part' in owner) return parts[owner.part] === part(member);
  if ('direct' in owner) return parts[owner.direct] === part(`direct-${member}`);
  if ('field' in owner) return fieldOf(entry, owner.field) === member;
  if ('head' in owner) return head !== '' && (entry.key === head || entry.key.startsWith(`${head}/`));
  // Read by the keys of the member's own events.
  return true;
}

export const fieldOf = ({ value }: Entry, field: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[field] : undefined;
