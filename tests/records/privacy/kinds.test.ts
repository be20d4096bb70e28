import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openStore } from '../../../src/records/open.ts';
import { erase } from '../../../src/records/privacy/erase.ts';
import { groupPartOf, isOwned, kinds, type OwnedKind, topics } from '../../../src/records/privacy/kinds.ts';
import { membersIn } from '../../../src/records/privacy/members.ts';
import { drop, everything, put, type Store } from '../../../src/records/store.ts';
import { PATIENT } from '../patience.ts';
import { exportOf } from './exported.ts';

const [me, you] = ['701234567890123456', '709999999999999999'];
const group = '501';
/** All but what the house keeps for itself, and the notes of whose what is. */
const allOf = async (store: Store) =>
  (await everything(store, { from: '!', to: '~' })).filter(({ key }) => !/^(?:meta|owned)\//.test(key));
const notesOf = async (store: Store) =>
  (await everything(store, { from: 'owned/', to: 'owned0' })).map(({ key }) => key);

let store: Store;
beforeAll(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterEach(async () => {
  const left = (await everything(store, { from: '!', to: '~' })).filter(
    ({ key }) => !key.startsWith('meta/'),
  );
  await store.commit(left.map(({ key }) => drop(key)));
});
afterAll(() => store.close());

/** What one member has of a kind: its owner stands where the table says, its group where every key has it. */
function ofKind(kind: string, { owner }: OwnedKind, member: string): [string, object][] {
  const mark = member.slice(-3);
  if ('part' in owner) {
    const parts = [kind, group, '9', '8', '7', mark];
    parts[owner.part] = member;
    return [[parts.join('/'), { v: 1, mark }]];
  }
  if ('direct' in owner) return [[`${kind}/00/2026/direct-${member}/what/${mark}`, { v: 1, mark }]];
  if ('field' in owner)
    return [[`${kind}/${group}/9/${mark}`, { v: 1, [owner.field]: member, name: 'Bram' }]];
  if ('head' in owner) {
    const head = `${kind}/${group}/${mark}`;
    return [
      [head, { v: 1, [owner.head]: member }],
      [`${head}/answer/ash`, { v: 1, mark }],
    ];
  }
  return [
    [`challenge-event/${group}/9/0001/${mark}`, { v: 1, by: member }],
    [`${kind}/${group}/9/${mark}`, { v: 1, base64: mark }],
  ];
}

const owned = [...kinds].flatMap(([kind, held]) => (isOwned(held) ? [[kind, held] as const] : []));

describe.each(owned)('%s', (kind, held) => {
  const fill = async (members: readonly string[]) => {
    const writes = members.flatMap(member =>
      ofKind(kind, held, member).map(([key, value]) => put(key, value)),
    );
    await store.commit(writes);
    return writes.map(({ key }) => key);
  };

  it('is in its owner’s export, and in nobody else’s', async () => {
    const mine = await fill([me]);
    await fill([you]);
    const { records } = await exportOf(store, me, new Date(0));
    expect(topics.flatMap(topic => records[topic].map(({ key }) => key)).sort()).toEqual([...mine].sort());
  });

  it('is gone or nameless once erased, and another’s stays as it was', async () => {
    await fill([me]);
    const others = await fill([you]);
    const before = (await allOf(store)).filter(({ key }) => others.includes(key));
    const { dropped, renamed } = await erase(store, me);
    const after = await allOf(store);
    expect(JSON.stringify(after)).not.toContain(me);
    expect((await notesOf(store)).filter(key => key.includes(me))).toEqual([]);
    expect(after.filter(({ key }) => others.includes(key))).toEqual(before);
    expect(dropped + renamed).toBeGreaterThan(0);
    // Of a picture of a challenge the event stays, without a name.
    const leaves = held.erasure === 'rename' || kind === 'challenge-photo' ? 1 : 0;
    expect(after.length - before.length).toBe(leaves);
  });
});

/** Records whose key begins with their group tell who is a member of it. */
const ofGroups = owned.filter(([, held]) => groupPartOf(held) === 1);

it.each(ofGroups)('%s makes the group know of its owner, who may leave', async (kind, held) => {
  await store.commit(ofKind(kind, held, me).map(([key, value]) => put(key, value)));
  expect([...(await membersIn(store, group))]).toEqual([me]);
  await erase(store, me);
  expect([...(await membersIn(store, group))]).toEqual([]);
});

it('the member of a talk with us is its one member, whatever is kept there', async () => {
  expect([...(await membersIn(store, `direct-${me}`))]).toEqual([me]);
});
