import { Events } from 'discord.js';
import { expect, test } from 'vitest';
import { Unanswered } from '../../src/loopback/index.ts';
import { openBench } from './host-bench.ts';

test('a dropped connection resumes and misses nothing', async () => {
  await using bench = await openBench();
  await bench.declare();
  const heard: string[] = [];
  bench.answer(async interaction => {
    heard.push(interaction.id);
    if (interaction.isChatInputCommand()) await interaction.reply('here');
  });
  const resumed = new Promise(resolve =>
    bench.client.once(Events.ShardResume, (_, replayed) => resolve(replayed)),
  );
  bench.host.dropConnections();
  const seen = await bench.member.run('/batch', { oils: 'olive' });
  expect(seen.text).toBe('here');
  expect(await resumed).toBeGreaterThanOrEqual(1);
  expect(heard).toEqual([seen.interactionId]);
});

test('being asked to reconnect resumes too', async () => {
  await using bench = await openBench();
  const resumed = new Promise(resolve => bench.client.once(Events.ShardResume, resolve));
  bench.host.askToReconnect();
  // Of its only shard.
  expect(await resumed).toBe(0);
});

test('a forgotten session is identified afresh, and what was missed is lost', async () => {
  await using bench = await openBench();
  await bench.declare();
  bench.answer(interaction => interaction.isChatInputCommand() && interaction.reply('here'));
  const again = new Promise(resolve => bench.client.once(Events.ShardReady, resolve));
  bench.host.invalidateSessions();
  await expect(bench.member.run('/batch', { oils: 'olive' })).rejects.toThrow(Unanswered);
  await again;
  expect((await bench.member.run('/batch', { oils: 'olive' })).text).toBe('here');
});

test('the same dispatch can come twice', async () => {
  await using bench = await openBench();
  await bench.declare();
  const heard: string[] = [];
  const twice = Promise.withResolvers<void>();
  bench.answer(async interaction => {
    heard.push(interaction.id);
    if (heard.length === 2) twice.resolve();
    else if (interaction.isChatInputCommand()) await interaction.reply('here');
  });
  const seen = await bench.member.run('/batch', { oils: 'olive' });
  bench.host.redeliver(seen.interactionId!);
  await twice.promise;
  expect(heard).toEqual([seen.interactionId, seen.interactionId]);
});

test('each guild is served by its own shard', async () => {
  await using bench = await openBench({ shards: 2 }, 'auto');
  const guilds = [
    bench.guild,
    ...['a', 'b', 'c'].map(name =>
      bench.host.addGuild({ name, id: `${(BigInt(name.charCodeAt(0)) << 22n) + 1n}` }),
    ),
  ];
  await bench.declare();
  await bench.host.whenReady();
  bench.answer(
    interaction => interaction.isChatInputCommand() && interaction.reply(`${interaction.guild?.shardId}`),
  );
  for (const guild of guilds) {
    const member = guild.members[0] ?? guild.addMember({ name: 'Bea' });
    const expected = Number((BigInt(guild.id) >> 22n) % 2n);
    expect((await member.run('/batch', { oils: 'olive' })).text).toBe(`${expected}`);
  }
  expect(new Set(guilds.map(guild => (BigInt(guild.id) >> 22n) % 2n)).size).toBe(2);
});

test('guilds, channels and members come and go before the bot', async () => {
  await using bench = await openBench();
  const seen = (event: 'guildCreate' | 'guildDelete' | 'channelDelete') =>
    new Promise<string>(resolve =>
      bench.client.once(event as never, (thing: { id: string }) => resolve(thing.id)),
    );
  const came = seen('guildCreate');
  const fresh = bench.host.addGuild({ name: 'Night shift' });
  expect(await came).toBe(fresh.id);
  const closed = seen('channelDelete');
  const cellar = fresh.channels[0]!;
  cellar.remove();
  expect(await closed).toBe(cellar.id);
  const gone = seen('guildDelete');
  fresh.removeBot();
  expect(await gone).toBe(fresh.id);
});
