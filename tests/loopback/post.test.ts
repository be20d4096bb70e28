import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { ballot } from '../../commands/challenge/voting/vote.ts';
import { followUp } from '../../src/conversation/command.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import { discordOutbox } from '../../src/discord/post.ts';
import { openRoom } from './room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
let outbox: ReturnType<typeof discordOutbox>;
beforeAll(async () => {
  room = await openRoom();
  outbox = discordOutbox(room.connection, room.conversation, Date.now);
});
afterAll(() => room[Symbol.asyncDispose]());

const news = (headline: string, choices: readonly Choice[] = []): Reply => ({
  kind: 'reply',
  headline,
  data: {},
  blocks: [],
  cautions: [],
  choices,
});
const place = () => ({
  group: room.group.id,
  channel: room.group.channels[0]?.id ?? '',
  language: 'en' as const,
});
const standing = () => room.member.sees().map(message => room.host.latest(message)?.text);

describe('news for a group', () => {
  test('with one nonce stands there once, and can be put right later', async () => {
    const first = await outbox.post(place(), news('The oven is on'), 'n1');
    const second = await outbox.post(place(), news('The oven is on'), 'n1');
    expect(second).toEqual(first);
    expect(standing()).toEqual(['## The oven is on']);
    if (first === 'barred') throw new Error('barred');
    expect(await outbox.edit(place(), first, news('The oven is off'))).toBe('edited');
    expect(standing()).toEqual(['## The oven is off']);
  });

  test('offers what anybody may press, and nothing that is for one asker', async () => {
    const button = (follow: Choice['follow']): Choice => ({ kind: 'button', label: 'Vote', follow });
    await outbox.post(place(), news('Vote', [button(ballot.with({ challenge: '1' }))]), 'n2');
    const personal = followUp({ seenBy: 'asker', args: { n: z.string() }, answer: () => news('no') });
    await expect(
      outbox.post(place(), news('Mine', [button(personal.with({ n: '1' }))]), 'n3'),
    ).rejects.toThrow(/for one asker/);
  });

  test('is given up where the channel or the message is gone, or closed to us', async () => {
    const gone = room.group.addChannel('short-lived');
    const posted = await outbox.post({ ...place(), channel: gone.id }, news('Hello'), 'n4');
    gone.remove();
    if (posted === 'barred') throw new Error('barred');
    expect(await outbox.edit({ ...place(), channel: gone.id }, posted, news('Bye'))).toBe('barred');
    expect(await outbox.post({ ...place(), channel: gone.id }, news('Bye'), 'n5')).toBe('barred');
    expect(await outbox.post({ ...place(), channel: '' }, news('Nowhere'), 'n6')).toBe('barred');
    const closed = room.group.addChannel('closed');
    closed.allowBot(0n);
    expect(await outbox.post({ ...place(), channel: closed.id }, news('Psst'), 'n7')).toBe('barred');
  });

  test('is tried again later where the platform only stumbled', async () => {
    // One more than the client tries by itself.
    room.host.faultNext('POST', /channels\/\d+\/messages$/, 500, { times: 4 });
    await expect(outbox.post(place(), news('Once'), 'n8')).rejects.toThrow('Internal Server Error');
    expect(await outbox.post(place(), news('Once'), 'n8')).not.toBe('barred');
  });

  test('is this process’s to tell only for groups it is connected to', () => {
    expect(outbox.serves(room.group.id)).toBe(true);
    expect(outbox.serves('123456789012345678')).toBe(false);
  });
});

describe('whether somebody is still there', () => {
  const unknown = '109999999999999999';

  test('is asked of the platform: in a group of ours by its members, in a talk with us by their account', async () => {
    const { hasMember } = outbox;
    expect(await hasMember?.(room.group.id, room.member.id)).toBe(true);
    expect(await hasMember?.(room.group.id, unknown)).toBe(false);
    expect(await hasMember?.(`direct-${room.member.id}`, room.member.id)).toBe(true);
    expect(await hasMember?.(`direct-${unknown}`, unknown)).toBe(false);
    expect(await hasMember?.(`direct-${room.member.id}`, room.steward.id)).toBe(false);
  });

  test('is not told of a group that another process speaks to, nor asked of what is no account', async () => {
    await expect(outbox.hasMember?.(unknown, room.member.id)).rejects.toThrow('another process');
    const asked = room.host.requests.length;
    expect(await outbox.hasMember?.(room.group.id, 'somebody of an earlier room')).toBe(true);
    expect(room.host.requests.length).toBe(asked);
  });

  test('one process does what is due for no group, and knows the groups it speaks to', () => {
    expect(outbox.leads?.()).toBe(true);
    expect(outbox.groups?.()).toEqual([room.group.id]);
  });
});
