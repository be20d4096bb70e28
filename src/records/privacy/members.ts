import { part, under } from '../keys.ts';
import type { Entry, Store } from '../store.ts';
import { groupPartOf, isOwned, kinds, type OwnedKind, PICTURES } from './kinds.ts';
import { fieldOf, partsUnder, turns } from './owned.ts';

const PAGE = 100;
/** Names that erased members are kept under begin so; they lead to nobody. */
export const ERASED = 'erased-';
/** Direct messages are a group of one, called after its member. */
const DIRECT = 'direct-';

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

/** Which of these members another group holds something of, their own talk with us among them. */
export async function heldElsewhere(
  store: Store,
  group: string,
  members: ReadonlySet<string>,
): Promise<ReadonlySet<string>> {
  const held = new Set<string>();
  for (const [kind, owned] of kinds) {
    // That they left a group is nothing that it holds for them.
    if (!isOwned(owned) || groupPartOf(owned) === undefined || kind === 'left') continue;
    for await (const [where, member] of placesOf(store, kind, owned))
      if (where !== part(group) && members.has(member)) held.add(member);
  }
  return held;
}

/** Each group and member of whom a record of a kind is kept there. */
async function* placesOf(store: Store, kind: string, owned: OwnedKind): AsyncGenerator<[string, string]> {
  if (PICTURES.has(kind)) {
    if ('event' in owned.owner) return;
    for await (const group of partsUnder(store, kind))
      for await (const member of partsUnder(store, `${kind}/${group}`)) yield [group, member];
    return;
  }
  for await (const entry of turns(store, under(kind), PAGE)) {
    const group = entry.key.split('/')[groupPartOf(owned) ?? -1] ?? '';
    const member = 'direct' in owned.owner ? group.replace(DIRECT, '') : memberOf(entry, owned.owner);
    if (typeof member === 'string') yield [group, member];
  }
}
