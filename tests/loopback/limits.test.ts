import { Client, Events, GatewayIntentBits } from 'discord.js';
import { describe, expect, test } from 'vitest';
import type { Reply } from '../../src/conversation/reply.ts';
import { discordOutbox } from '../../src/discord/post.ts';
import { openFair } from '../commands/challenge/room.ts';
import { openBench } from './host-bench.ts';
import { openJudgedHost } from './judged-host.ts';
import { openRoom } from './room.ts';

const news: Reply = { kind: 'reply', headline: 'News', data: {}, blocks: [], cautions: [] };

describe('a minute in which deadlines of many groups fall', () => {
  test('is spread so that the platform has nothing to refuse', async () => {
    await using room = await openRoom();
    const { connection, conversation, host } = room;
    const outbox = discordOutbox(connection, conversation, Date.now);
    const channels = Array.from({ length: 100 }, (_, n) => room.group.addChannel(`bench-${n}`));
    const posted = await Promise.all(
      channels.map(({ id }, n) =>
        outbox.post({ group: room.group.id, channel: id, language: 'en' }, news, `n${n}`),
      ),
    );
    expect(posted).not.toContain('barred');
    expect(host.requests.filter(({ status }) => status === 429)).toEqual([]);
    expect(connection.tally.tooMany).toBe(0);
  });

  test('and where the platform has had enough, that is counted and the news comes later', async () => {
    await using fair = await openFair();
    const group = fair.group();
    await group.steward.run('/challenge open', { title: 'Dusk' });
    fair.room.host.faultNext('POST', /messages$/, 429, { times: 2 });
    await fair.room.watch.check();
    expect(group.channel()).toHaveLength(1);
    expect(fair.room.connection.tally.tooMany).toBe(2);
    expect(fair.room.waits).toHaveLength(2);
    expect(fair.room.faults).toEqual([]);
  });

  test('holds up no answer: interactions are exempt', async () => {
    await using room = await openRoom();
    const asked = Array.from({ length: 160 }, () => room.member.run('/help'));
    for (const { text } of await Promise.all(asked)) expect(text).toContain('/dose');
    expect(room.connection.tally.tooMany).toBe(0);
  });

  test('is not what a sweep falls into that asks who of a large group is still there', async () => {
    await using room = await openRoom();
    const outbox = discordOutbox(room.connection, room.conversation, Date.now);
    const members = Array.from({ length: 120 }, (_, n) => room.group.addMember({ name: `maker ${n}` }));
    const sweep = Promise.all(members.map(({ id }) => outbox.hasMember!(room.group.id, id)));
    expect((await room.member.run('/help')).text).toContain('/dose');
    expect(new Set(await sweep)).toEqual(new Set([true]));
    expect(await outbox.hasMember!(room.group.id, '5')).toBe(false);
    expect(room.connection.tally.tooMany).toBe(0);
  });
});

describe('the host', () => {
  const post = (api: string, channel: string, token = 'one') =>
    fetch(`${api}/v10/channels/${channel}/messages`, {
      method: 'POST',
      headers: { authorization: `Bot ${token}`, 'content-type': 'application/json' },
      body: JSON.stringify({ content: 'soap' }),
    });

  test('takes five messages in five seconds of a channel, and says what is left', async () => {
    await using host = await openJudgedHost();
    const guild = host.addGuild({ name: 'Soapers', channels: ['a', 'b'] });
    const [a, b] = guild.channels.map(({ id }) => id) as [string, string];
    const answers = [];
    for (let n = 0; n < 6; n++) answers.push(await post(host.api, a));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200, 429]);
    expect(answers.map(({ headers }) => headers.get('x-ratelimit-remaining'))).toEqual([
      '4',
      '3',
      '2',
      '1',
      '0',
      '0',
    ]);
    const last = answers[5]!;
    expect(await last.json()).toMatchObject({ global: false, retry_after: expect.any(Number) });
    expect(Number(last.headers.get('retry-after'))).toBeGreaterThanOrEqual(1);
    expect((await post(host.api, b)).status).toBe(200);
  });

  test('takes fifty requests a second in all', async () => {
    await using host = await openJudgedHost({ limits: { channel: { count: 999, withinMs: 1 } } });
    const [channel] = host.addGuild({ name: 'Soapers' }).channels;
    const statuses = await Promise.all(
      Array.from({ length: 60 }, async () => {
        const answer = await post(host.api, channel!.id);
        return [answer.status, answer.headers.get('x-ratelimit-global')].join(' ');
      }),
    );
    expect(statuses.filter(status => status === '200 ')).toHaveLength(50);
    expect(statuses.filter(status => status === '429 true')).toHaveLength(10);
  });

  test('knows its bot by the token that it first showed', async () => {
    await using host = await openJudgedHost();
    const [channel] = host.addGuild({ name: 'Soapers' }).channels;
    expect((await post(host.api, channel!.id, 'one')).status).toBe(200);
    expect((await post(host.api, channel!.id, 'two')).status).toBe(401);
    await expect(login(host.api, 'two', GatewayIntentBits.Guilds)).rejects.toThrow(/token/i);
  });

  const login = async (api: string, token: string, intents: number) => {
    const client = new Client({ intents: [intents], rest: { api } });
    const closed = new Promise<number>(resolve =>
      client.once(Events.ShardDisconnect, ({ code }) => resolve(code)),
    );
    const ready = new Promise<string>(resolve => client.once(Events.ClientReady, () => resolve('ready')));
    client.on(Events.Error, () => undefined);
    try {
      await client.login(token);
      return await Promise.race([ready, closed]);
    } finally {
      await client.destroy();
    }
  };

  test.each([
    ['an unprivileged one', GatewayIntentBits.Guilds, 'ready'],
    ['message content', GatewayIntentBits.MessageContent, /4014|[Dd]isallowed|[Pp]rivileged/],
    ['one that does not exist', 1 << 22, /4013|[Ii]nvalid/],
  ])('as to intents: %s', async (_, intents, told) => {
    await using host = await openJudgedHost();
    const outcome = await login(host.api, 'one', intents).catch((error: Error) => error.message);
    expect(String(outcome)).toMatch(told);
  });

  test('that answers no heartbeat is left, and found again', async () => {
    await using room = await openRoom({ host: { heartbeatMs: 300 } });
    let resumed = 0;
    room.connection.client.on(Events.ShardResume, () => {
      resumed += 1;
    });
    room.host.hushHeartbeats();
    await expect.poll(() => resumed).toBeGreaterThan(0);
    expect((await room.member.run('/help')).text).toContain('/dose');
  });

  test('gives one message for one nonce of an author, in whatever channel', async () => {
    await using bench = await openBench();
    const [a, b] = bench.guild.channels.map(({ id }) => id);
    const send = (channel: string | undefined) =>
      bench.post('POST', `/channels/${channel}/messages`, {
        content: 'soap',
        nonce: 'n',
        enforce_nonce: true,
      });
    const first = await send(a);
    expect((await send(b)).json).toMatchObject({ id: first.json?.id, channel_id: a });
  });

  test('lists commands without their other languages unless these are asked for', async () => {
    await using room = await openRoom();
    const list = async (query: string) => {
      const path = `${room.host.api}/v10/applications/${room.host.applicationId}/commands${query}`;
      const answer = await fetch(path, { headers: { authorization: 'Bot loopback-token' } });
      return JSON.stringify(await answer.json());
    };
    expect(await list('')).not.toContain('_localizations');
    expect(await list('?with_localizations=true')).toContain('"es-ES"');
  });
});

test('the library keeps ourselves, groups and channels, and nobody else and no message of what it heard', async () => {
  await using room = await openRoom();
  for (const name of ['Ana', 'Bea', 'Cleo']) {
    const member = room.group.addMember({ name });
    await member.run('/dose', { colourant: 'ultramarine blue', portion: '1 cup' });
  }
  const { client } = room.connection;
  const guild = client.guilds.cache.first();
  expect([...client.users.cache.keys()]).toEqual([client.user?.id]);
  expect([...(guild?.members.cache.keys() ?? [])]).toEqual([client.user?.id]);
  expect(guild?.members.me?.permissions).toBeDefined();
  const channels = [...client.channels.cache.values()].filter(channel => channel.isTextBased());
  expect(channels.length).toBeGreaterThan(0);
  expect(channels.map(channel => channel.messages.cache.size)).toEqual(channels.map(() => 0));
});
