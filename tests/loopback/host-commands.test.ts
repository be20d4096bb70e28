import { ApplicationCommandType } from 'discord.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Refused, Unanswered } from '../../src/loopback/index.ts';
import { type Bench, ephemeral, openBench, png } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 1_500, patienceMs: 1_500 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

describe('a command', () => {
  test('brings its options to the bot typed as declared', async () => {
    const place = bench.guild.channels[1]!;
    const role = bench.guild.addRole('Elder');
    const other = bench.guild.addMember({ name: 'Bea' });
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      const { options } = interaction;
      await interaction.reply(
        JSON.stringify({
          oils: options.getString('oils'),
          bars: options.getInteger('bars'),
          water: options.getNumber('water'),
          gel: options.getBoolean('gel'),
          maker: options.getUser('maker')?.globalName,
          isMember: options.getMember('maker') !== null,
          place: options.getChannel('place')?.id,
          role: options.getRole('role')?.name,
          photo: [options.getAttachment('photo')?.width, options.getAttachment('photo')?.contentType],
          mould: options.getString('mould'),
        }),
      );
    });
    const seen = await bench.member.run('/batch', {
      oils: 'olive',
      bars: 12,
      water: 0.33,
      gel: false,
      maker: other,
      place,
      role,
      photo: { name: 'bar.png', bytes: png },
      mould: 'slab',
    });
    expect(JSON.parse(seen.text)).toEqual({
      oils: 'olive',
      bars: 12,
      water: 0.33,
      gel: false,
      maker: 'Bea',
      isMember: true,
      place: place.id,
      role: 'Elder',
      photo: [1, 'image/png'],
      mould: 'slab',
    });
  });

  test.each([
    ['an unknown command', '/stir', {}],
    ['an unknown option', '/batch', { oils: 'olive', ash: 'soda' }],
    ['a missing required option', '/batch', {}],
    ['text longer than declared', '/batch', { oils: 'o'.repeat(41) }],
    ['a number outside its range', '/batch', { oils: 'olive', bars: 51 }],
    ['a fraction for a whole number', '/batch', { oils: 'olive', bars: 1.5 }],
    ['a word for a number', '/batch', { oils: 'olive', bars: 'twelve' }],
    ['a choice that is not offered', '/batch', { oils: 'olive', mould: 'log' }],
    ['a bare command that has subcommands', '/store', {}],
    ['an unknown subcommand', '/store lend', {}],
    ['a command for stewards', '/steward', {}],
  ])('does not leave the member with %s', async (_, command, options) => {
    await expect(bench.member.run(command, options)).rejects.toThrow(Refused);
  });

  test('of stewards runs for whoever has the permission', async () => {
    const steward = bench.guild.addMember({ name: 'Steward', permissions: 32n });
    bench.answer(interaction => interaction.isChatInputCommand() && interaction.reply('hall keys'));
    expect((await steward.run('/steward')).text).toBe('hall keys');
  });

  test('finds nested subcommands by path', async () => {
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      await interaction.reply(
        `${interaction.options.getSubcommandGroup()} ${interaction.options.getSubcommand()}`,
      );
    });
    expect((await bench.member.run('/store keep lye')).text).toBe('keep lye');
    expect((await bench.member.run('store list')).text).toBe('null list');
  });

  test('offers choices while an option is typed', async () => {
    bench.answer(async interaction => {
      if (!interaction.isAutocomplete()) return;
      const typed = interaction.options.getFocused();
      await interaction.respond([
        { name: `${typed}vender`, value: interaction.options.getString('oils') ?? '' },
      ]);
    });
    expect(await bench.member.complete('/batch', { oils: 'olive', scent: 'la' }, 'scent')).toEqual([
      { name: 'lavender', value: 'olive' },
    ]);
  });

  test('left unanswered rejects and says so in the journal', async () => {
    bench.answer(() => undefined);
    const failure = await bench.member.run('/batch', { oils: 'olive' }).catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(Unanswered);
    expect(bench.host.events.at(-1)).toMatchObject({
      kind: 'interaction-failed',
      interactionId: (failure as Unanswered).interactionId,
    });
  });
});

test('commands are listed, changed and removed one by one', async () => {
  const commands = bench.client.application!.commands;
  const made = await commands.create({ name: 'cure', description: 'Weeks left' }, bench.guild.id);
  await commands.edit(made, { description: 'Weeks to go' }, bench.guild.id);
  expect(bench.host.commands(bench.guild.id)).toMatchObject([{ id: made.id, description: 'Weeks to go' }]);
  expect((await commands.fetch({ guildId: bench.guild.id })).size).toBe(1);
  await commands.delete(made, bench.guild.id);
  expect(bench.host.commands(bench.guild.id)).toEqual([]);
  expect(
    bench.host.commands().filter(command => command.type === ApplicationCommandType.Message),
  ).toHaveLength(1);
});

test('people elsewhere and in direct messages arrive as users without a guild', async () => {
  bench.answer(interaction => {
    if (!interaction.isChatInputCommand()) return undefined;
    return interaction.reply({
      content: `${interaction.guildId} ${interaction.member === null} ${interaction.context}`,
      flags: ephemeral,
    });
  });
  expect((await bench.member.run('/batch', { oils: 'olive' }, { context: 'elsewhere' })).text).toBe(
    'null true 2',
  );
  expect((await bench.member.run('/batch', { oils: 'olive' }, { context: 'bot-dm' })).text).toBe(
    'null true 1',
  );
});

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
