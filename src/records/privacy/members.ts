import { part, under } from '../keys.ts';
import type { Entry, Store } from '../store.ts';
import { groupPartOf, isOwned, kinds, type OwnedKind, PICTURES } from './kinds.ts';
import { DIRECT, ERASED } from './members-named.ts';
import { fieldOf, ownedBy, partsUnder, turns } from './owned.ts';

const PAGE = 100;

/**
 * Everybody of whom something is kept in a group, whatever kind of record it is: by its key or by what it says. In a
 * member's own talk with us that is the member.
 */
export async function membersIn(store: Store, group: string): Promise<ReadonlySet<string>> {
  if (group.startsWith(DIRECT)) return new Set([group.slice(DIRECT.length)]);
  const members = new Set<string>();
  for (const [kind, held] of kinds) {
    if (!isOwned(held) || groupPartOf(held) !== 1) continue;
    for await (const member of membersOf(store, `${kind}/${part(group)}`, held, PICTURES.has(kind)))
      if (member !== '' && !member.startsWith(ERASED)) members.add(member);
  }
  return members;
}

async function* membersOf(
  store: Store,
  beginning: string,
  { owner }: OwnedKind,
  hasPictures: boolean,
): AsyncGenerator<string> {
  // Whoever brought a picture of a challenge made the event that it is filed under.
  if ('event' in owner) return;
  if (hasPictures) {
    yield* partsUnder(store, beginning);
    return;
  }
  for await (const entry of turns(store, under(beginning), PAGE)) {
    const member = memberOf(entry, owner);
    if (typeof member === 'string') yield member;
  }
}

function memberOf(entry: Entry, owner: OwnedKind['owner']): unknown {
  if ('part' in owner) return entry.key.split('/')[owner.part];
  if ('field' in owner) return fieldOf(entry, owner.field);
  return 'head' in owner ? fieldOf(entry, owner.head) : undefined;
}

/** The groups that hold something of a member's, as their keys write them; their own talk with us is one. */
export async function groupsOf(store: Store, member: string): Promise<ReadonlySet<string>> {
  const groups = new Set<string>();
  const liesInOne = (_topic: unknown, kind: string) => groupPartOf(kinds.get(kind) ?? 'house') !== undefined;
  for await (const { key, kind, held } of ownedBy(store, member, liesInOne)) {
    const group = key.split('/')[groupPartOf(held) ?? -1];
    // That they left a group is nothing that it holds for them.
    if (group !== undefined && kind !== 'left') groups.add(group);
  }
  return groups;
}
