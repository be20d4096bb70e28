import { describe, expect, test } from 'vitest';
import { StoreFailure } from '../../src/records/failure.ts';
import type { Store } from '../../src/records/store.ts';
import { openRoom } from '../loopback/room.ts';

describe('a flaky connection', () => {
  test('an interaction delivered three times is answered and counted once', async () => {
    await using room = await openRoom();
    const { member, host } = room;
    await member.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
    const used = await member.run('/shelf use', { item: 'Moss', amount: '5 g' });
    host.redeliver(used.interactionId ?? '');
    host.redeliver(used.interactionId ?? '');
    expect((await member.run('/shelf show', { item: 'Moss' })).text).toContain('15 g');
    expect(host.repliesTo(used.interactionId ?? '')).toHaveLength(1);
    expect(room.faults).toEqual([]);
  });

  test('dropped and resumed, the next question is answered', async () => {
    await using room = await openRoom();
    await room.member.run('/help');
    room.host.dropConnections();
    expect((await room.member.run('/help')).text).toContain('/dose');
  });

  test('a server error on the first answer is tried again and the member sees one', async () => {
    await using room = await openRoom();
    room.host.faultNext('POST', /callback/, 500);
    const answer = await room.member.run('/help');
    expect(room.host.repliesTo(answer.interactionId ?? '')).toHaveLength(1);
  });

  test('an answer that arrived though its receipt was lost is not sent twice', async () => {
    await using room = await openRoom();
    room.host.faultNext('POST', /callback/, 'lost');
    const answer = await room.member.run('/help');
    await room.member.run('/prefer');
    expect(room.host.repliesTo(answer.interactionId ?? '')).toHaveLength(1);
  });
});

/** A store that answers, but whose disk is full. */
const full: Store = {
  get: async keys => keys.map(() => undefined),
  range: async () => [],
  commit: async () => {
    throw new StoreFailure('full', 'write', 'no room');
  },
  close: async () => {},
};

/** A store that cannot be reached at all. */
const gone: Store = {
  get: async () => {
    throw new StoreFailure('unreachable', 'read', 'gone');
  },
  range: async () => {
    throw new StoreFailure('unreachable', 'read', 'gone');
  },
  commit: async () => {
    throw new StoreFailure('unreachable', 'write', 'gone');
  },
  close: async () => {},
};

describe('a store that fails', () => {
  test.each([
    ['/shelf add', { item: 'Moss', amount: '20 g' }],
    ['/prefer', { spoons: 'metric' }],
  ])('%s never says that something was saved when it was not', async (command, options) => {
    await using room = await openRoom({ store: full });
    const answer = await room.member.run(command, options as Record<string, string>);
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toContain('was not saved');
  });

  test('an unreachable shelf is never an empty one', async () => {
    await using room = await openRoom({ store: gone });
    const answer = await room.member.run('/shelf list');
    expect(answer.text).toContain('can’t reach my records');
    expect(answer.text).not.toContain('empty');
    expect(room.faults).not.toEqual([]);
  });

  test('what needs no records is answered all the same', async () => {
    await using room = await openRoom({ store: gone });
    expect((await room.member.run('/help')).text).toContain('/dose');
  });
});
