import { expect, test } from 'vitest';
import type { HostEvent } from '../../src/loopback/index.ts';
import { openBench, png } from './host-bench.ts';
import { openJudgedHost } from './judged-host.ts';

test('an event list rebuilds the room: people, messages, files, forms and commands', async () => {
  let before: readonly HostEvent[] = [];
  let messageId = '';
  {
    await using bench = await openBench({ application: { name: 'Bench bot' } });
    await bench.declare();
    const seen = await bench.member.postMessage('my bar', [{ name: 'bar.png', bytes: png }]);
    messageId = seen.id;
    bench.member.grant({ locale: 'es-ES' });
    before = bench.host.events;
  }
  await using host = await openJudgedHost({ replay: before });
  const [guild] = host.guilds;
  const [member] = guild!.members;
  expect(host.events.map(event => event.kind)).toEqual(before.map(event => event.kind));
  expect(member).toMatchObject({ name: 'Odile' });
  expect(host.commands()).toHaveLength(5);
  const [message] = member!.sees();
  expect(message).toMatchObject({ id: messageId, text: 'my bar' });
  expect(message!.files[0]!.url).toContain(host.url);
  expect(Buffer.from(await (await fetch(message!.files[0]!.url)).arrayBuffer())).toEqual(png);
  const fresh = await member!.postMessage('again');
  expect(BigInt(fresh.id)).toBeGreaterThan(BigInt(messageId));
});

test('a listener hears what was before and what comes, until it leaves', async () => {
  await using host = await openJudgedHost();
  const guild = host.addGuild({ name: 'Soapers' });
  const heard: string[] = [];
  const leave = host.subscribe(event => heard.push(event.kind), 0);
  guild.addMember({ name: 'Odile' });
  leave();
  guild.addRole('Elder');
  expect(heard).toEqual(['application', 'guild-added', 'channel-added', 'member-joined']);
});

test('ids carry the time of the given clock and never repeat', async () => {
  const now = Date.UTC(2031, 4, 1);
  await using host = await openJudgedHost({ now: () => now });
  const guild = host.addGuild({ name: 'Soapers' });
  const ids = Array.from({ length: 500 }, (_, index) => guild.addRole(`r${index}`).id);
  expect(new Set(ids).size).toBe(500);
  // The epoch of snowflakes is the first second of 2015: platform documentation, Reference > Snowflakes.
  expect(Number(BigInt(ids[0]!) >> 22n) + Date.UTC(2015, 0, 1)).toBe(now);
});

test('a member waits for nobody when no bot is connected', async () => {
  await using host = await openJudgedHost();
  const guild = host.addGuild({ name: 'Soapers' });
  const member = guild.addMember({ name: 'Odile' });
  await fetch(`${host.api}/v10/applications/${host.applicationId}/commands`, {
    method: 'PUT',
    body: JSON.stringify([{ name: 'cure', description: 'Weeks left' }]),
    headers: { authorization: 'Bot t' },
  });
  await expect(member.run('/cure')).rejects.toThrow('not connected');
});

test('a long run keeps only the last of what it saw', async () => {
  await using bench = await openBench({ keep: 20 });
  await bench.declare();
  bench.answer(interaction => interaction.isChatInputCommand() && interaction.reply('here'));
  for (let index = 0; index < 60; index += 1) await bench.member.run('/batch', { oils: 'olive' });
  expect(bench.host.events.length).toBeLessThanOrEqual(40);
  expect(bench.member.sees()).toHaveLength(20);
  const last = bench.host.events.at(-1)!.seq;
  const heard: number[] = [];
  bench.host.subscribe(event => heard.push(event.seq), last - 3)();
  expect(heard).toEqual([last - 2, last - 1, last]);
});
