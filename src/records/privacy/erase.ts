import { randomBytes } from 'node:crypto';
import { challengeEnd, ownedRecord, part } from '../keys.ts';
import { drop, put, type Store, type Write } from '../store.ts';
import { forgetUndoables } from '../undo/index.ts';
import { groupPartOf, type Topic } from './kinds.ts';
import { ERASED } from './members-named.ts';
import { type Owned, ownedBy } from './owned.ts';
import { forgetNotes, isNoted } from './owned-index.ts';

/** What an erasure did: how many records are gone, and how many stay without a name. */
export type Erased = { readonly dropped: number; readonly renamed: number };

/** Writes of one commit at most. */
const AT_ONCE = 200;

/**
 * Erases what is kept about a member, of these topics or of all, in every group or in one. Stopped halfway it has
 * erased half, and does the rest when it is called again.
 */
export async function erase(
  store: Store,
  member: string,
  { asked, group }: { readonly asked?: (topic: Topic) => boolean; readonly group?: string } = {},
): Promise<Erased> {
  const all: Owned[] = [];
  // What only goes is not held on to: it may be a picture.
  for await (const one of ownedBy(store, member, asked))
    if (isIn(one, group)) all.push(one.held.erasure === 'drop' ? { ...one, value: undefined } : one);
  // What tells whose the others are comes first in it, and so goes last.
  all.reverse();
  const alias = `${ERASED}${randomBytes(8).toString('hex')}`;
  let dropped = 0;
  let renamed = 0;
  for (let from = 0; from < all.length; from += AT_ONCE) {
    const some = all.slice(from, from + AT_ONCE);
    const ended = await endedOf(store, some);
    const writes = some.map((one, at) =>
      stays(one, ended[at] === true) ? renaming(one, member, alias) : [drop(one.key)],
    );
    await store.commit(writes.flat());
    renamed += writes.filter((_, at) => stays(some[at]!, ended[at] === true)).length;
    dropped += writes.filter((_, at) => !stays(some[at]!, ended[at] === true)).length;
  }
  // What an undo would bring back may be of any topic.
  if (asked !== undefined && group === undefined) await forgetUndoables({ store, member });
  if (asked === undefined && group === undefined) await forgetNotes(store, member);
  return { dropped, renamed };
}

/** In a group lies what names it first; what a member has in every group lies in none. */
const isIn = ({ key, held }: Owned, group: string | undefined): boolean =>
  group === undefined || key.split('/')[groupPartOf(held) ?? -1] === part(group);

const stays = ({ held }: Owned, ended: boolean): boolean =>
  held.erasure === 'rename' || (held.erasure === 'drop-or-rename' && ended);

/** Whether the challenge of each record has ended. */
async function endedOf(store: Store, some: readonly Owned[]): Promise<readonly boolean[]> {
  const keys = some.map(({ key }) => {
    const [, group = '', id = ''] = key.split('/');
    return `${challengeEnd('', '').split('/')[0]}/${group}/${id}`;
  });
  const ends = await store.get([...new Set(keys)]);
  const known = new Map([...new Set(keys)].map((key, at) => [key, ends[at] !== undefined]));
  return keys.map(key => known.get(key) === true);
}

/** The same record under a name that leads to nobody. */
function renaming({ key, value, held }: Owned, member: string, alias: string): readonly Write[] {
  const renamedKey = key
    .split('/')
    .map((one, at) => (at > 0 && one === part(member) ? part(alias) : one))
    .join('/');
  const written = put(renamedKey, nameless(value, member, alias));
  const unnoted = isNoted(held) ? [drop(ownedRecord(member, key))] : [];
  return renamedKey === key ? [written, ...unnoted] : [drop(key), written, ...unnoted];
}

/** Fields that hold a name as somebody was called then. */
const CALLED: ReadonlySet<string> = new Set(['maker', 'name', 'byName', 'note']);

function nameless(value: unknown, member: string, alias: string): unknown {
  if (value === member) return alias;
  if (Array.isArray(value)) return value.map(one => nameless(one, member, alias));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([field, one]) => {
      if (field === 'maker') return [[field, '—']];
      return CALLED.has(field) || field === 'photo' ? [] : [[field, nameless(one, member, alias)]];
    }),
  );
}
