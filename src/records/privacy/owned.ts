import { part, under } from '../keys.ts';
import { type Entry, pages, type Span, type Store } from '../store.ts';
import { kinds, type OwnedKind, type Topic } from './kinds.ts';

/** A record of one member's. */
export type Owned = Entry & { readonly kind: string; readonly held: OwnedKind };

/**
 * Every record that belongs to a member, of these topics or of all, in every group. What lies under their own key is
 * one span; of what groups keep all is looked through, page by page.
 */
export async function* ownedBy(
  store: Store,
  member: string,
  asked: (topic: Topic) => boolean = () => true,
): AsyncGenerator<Owned> {
  const events = new Set<string>();
  for (const [kind, held] of kinds) {
    if (held === 'house' || !asked(held.topic)) continue;
    let head = '';
    for await (const entry of entriesOf(store, spanOf(kind, held, member))) {
      const parts = entry.key.split('/');
      if ('head' in held.owner && parts.length === 3 && fieldOf(entry, 'member') === member) head = entry.key;
      if (!isOwn(entry, parts, { held, member, head, events })) continue;
      if (kind === 'challenge-event') events.add(eventOf(parts));
      yield { ...entry, kind, held };
    }
  }
}

const spanOf = (kind: string, { owner }: OwnedKind, member: string): Span =>
  'part' in owner && owner.part === 1 ? under(`${kind}/${part(member)}`) : under(kind);

async function* entriesOf(store: Store, span: Span): AsyncGenerator<Entry> {
  for await (const page of pages(store, span)) yield* page;
}

type Asked = {
  readonly held: OwnedKind;
  readonly member: string;
  /** The member's own record under which the next ones may lie. */
  readonly head: string;
  /** Events that the member made, by {@link eventOf}. */
  readonly events: ReadonlySet<string>;
};

function isOwn(entry: Entry, parts: readonly string[], { held, member, head, events }: Asked): boolean {
  const { owner } = held;
  if ('part' in owner) return parts[owner.part] === part(member);
  if ('direct' in owner) return parts[owner.direct] === part(`direct-${member}`);
  if ('field' in owner) return fieldOf(entry, owner.field) === member;
  if ('head' in owner) return head !== '' && (entry.key === head || entry.key.startsWith(`${head}/`));
  return events.has(eventOf(parts));
}

/** Group, challenge and event of an event's key, and of what is filed under the event. */
const eventOf = (parts: readonly string[]): string => [parts[1], parts[2], parts.at(-1)].join('/');

export const fieldOf = ({ value }: Entry, field: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[field] : undefined;
