import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js';
import { expect, test } from 'vitest';
import { openHost } from '../../src/loopback/index.ts';

test('smoke', async () => {
  await using host = await openHost();
  const guild = host.addGuild({ name: 'Suds' });
  const maker = guild.addMember({ name: 'Ada' });
  const client = new Client({ intents: [GatewayIntentBits.Guilds], rest: { api: host.api } });
  client.on(Events.InteractionCreate, async i => {
    if (i.isChatInputCommand()) await i.reply({ content: `hello ${i.options.getString('who')}`, flags: MessageFlags.Ephemeral });
  });
  await client.login('x');
  await host.whenReady();
  await client.application?.commands.set([{ name: 'hi', description: 'says hi', options: [{ type: 3, name: 'who', description: 'who' }] }]);
  const seen = await maker.run('/hi', { who: 'you' });
  expect(seen.text).toBe('hello you');
  expect(seen.ephemeral).toBe(true);
  await client.destroy();
});
