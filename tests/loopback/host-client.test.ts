import {
  ApplicationCommandType,
  type Interaction,
  MessageFlags,
  type ModalSubmitInteraction,
} from 'discord.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Refused, Unanswered } from '../../src/loopback/index.ts';
import { type Bench, openBench, png } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 500, patienceMs: 400 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

const chat = (act: (interaction: Interaction<'cached'> & { isChatInputCommand(): true }) => unknown) =>
  bench.answer(interaction => act(interaction as never));
const ephemeral = MessageFlags.Ephemeral;
const newer = MessageFlags.IsComponentsV2;
const text = (content: string) => ({ type: 10, content }) as const;
const button = (customId: string, over = {}) =>
  ({ type: 1, components: [{ type: 2, style: 1, label: customId, custom_id: customId, ...over }] }) as const;

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
    chat(interaction => (interaction as never as { reply(text: string): unknown }).reply('hall keys'));
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

describe('an answer', () => {
  test('that is deferred is waited out and keeps its audience', async () => {
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      await interaction.deferReply({ flags: ephemeral });
      await interaction.editReply({ flags: newer, components: [text('# 12 bars'), button('again')] });
    });
    const seen = await bench.member.run('/batch', { oils: 'olive' });
    expect(seen).toMatchObject({ text: '# 12 bars', ephemeral: true, visibleTo: bench.member.id });
    expect(seen.controls).toMatchObject([{ kind: 'button', customId: 'again', disabled: false }]);
    expect(
      bench.guild
        .addMember({ name: 'Nosy' })
        .sees()
        .some(message => message.id === seen.id),
    ).toBe(false);
    expect(bench.member.sees().some(message => message.id === seen.id)).toBe(true);
  });

  test('that is deferred and never comes rejects', async () => {
    bench.answer(interaction => interaction.isChatInputCommand() && interaction.deferReply());
    await expect(bench.member.run('/batch', { oils: 'olive' })).rejects.toThrow('left open');
  });

  test('comes with its message when asked for it, can be fetched, followed and deleted', async () => {
    const { promise, resolve } = Promise.withResolvers<unknown>();
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      const response = await interaction.reply({ content: 'first', withResponse: true });
      const fetched = await interaction.fetchReply();
      const more = await interaction.followUp({ content: 'second', flags: ephemeral });
      await interaction.deleteReply(more);
      await interaction.deleteReply();
      resolve([
        response.resource?.message?.content,
        fetched.id === response.resource?.message?.id,
        more.content,
      ]);
    });
    const seen = await bench.member.run('/batch', { oils: 'olive' });
    expect(await promise).toEqual(['first', true, 'second']);
    expect(bench.host.latest(seen)).toBeUndefined();
    expect(bench.host.repliesTo(seen.interactionId!)).toEqual([]);
  });

  test('shows its files, and components that point at them', async () => {
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      await interaction.reply({
        flags: newer,
        files: [{ attachment: png, name: 'swatch card.png', description: 'a pale swatch' }],
        components: [{ type: 12, items: [{ media: { url: 'attachment://swatch_card.png' } }] }],
      });
    });
    const seen = await bench.member.run('/batch', { oils: 'olive' });
    expect(seen.files).toMatchObject([
      { name: 'swatch_card.png', description: 'a pale swatch', size: png.length },
    ]);
    const { items } = seen.components[0] as unknown as {
      items: { media: { url: string; attachment_id: string } }[];
    };
    const served = await fetch(items[0]!.media.url);
    expect(Buffer.from(await served.arrayBuffer())).toEqual(png);
    expect(Buffer.from(seen.files[0]!.bytes())).toEqual(png);
    bench.host.expireLinks();
    expect((await fetch(items[0]!.media.url)).status).toBe(404);
    expect((await fetch(bench.host.latest(seen)!.files[0]!.url)).status).toBe(200);
  });

  test('pings only whom it may', async () => {
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      const content = `<@${interaction.user.id}> @everyone`;
      await interaction.reply({ content, allowedMentions: { parse: [] } });
      await interaction.followUp({ content });
    });
    const seen = await bench.member.run('/batch', { oils: 'olive' });
    expect(seen.raw).toMatchObject({ mentions: [], mention_everyone: false });
    const loud = await bench.host.nextMessage(message => message.raw.mention_everyone, { afterSeq: 0 });
    expect(loud.raw.mentions).toMatchObject([{ id: bench.member.id }]);
  });
});

describe('a component', () => {
  const show = async () => {
    bench.answer(async interaction => {
      if (!interaction.isChatInputCommand()) return;
      await interaction.reply({
        content: 'choose',
        components: [
          button('stir'),
          button('rest', { disabled: true }),
          {
            type: 1,
            components: [
              {
                type: 3,
                custom_id: 'oils',
                max_values: 2,
                options: ['olive', 'palm', 'coco'].map(value => ({ label: value, value })),
              },
            ],
          },
          { type: 1, components: [{ type: 5, custom_id: 'maker' }] },
        ],
      });
    });
    return bench.member.run('/batch', { oils: 'olive' });
  };

  test('press changes the message in place', async () => {
    const seen = await show();
    bench.answer(
      interaction =>
        interaction.isButton() &&
        interaction.update({ content: `${interaction.customId}red`, components: [] }),
    );
    const after = await bench.member.press(seen, 'stir');
    expect(after).toMatchObject({ id: seen.id, text: 'stirred' });
    await expect(bench.member.press(seen, 'stir')).rejects.toThrow(Refused);
  });

  test('press may be answered aside, or changed after a deferral', async () => {
    const seen = await show();
    bench.answer(async interaction => {
      if (!interaction.isButton()) return;
      await interaction.deferUpdate();
      await interaction.editReply({ content: 'later' });
    });
    expect(await bench.member.press(seen, 'stir')).toMatchObject({ id: seen.id, text: 'later' });
    bench.answer(
      interaction => interaction.isButton() && interaction.reply({ content: 'aside', flags: ephemeral }),
    );
    const aside = await bench.member.press(seen, 'stir');
    expect(aside).toMatchObject({ text: 'aside', ephemeral: true });
    bench.answer(interaction => interaction.isButton() && interaction.deferUpdate());
    expect(await bench.member.perform({ do: 'press', message: seen, customId: 'stir' })).toMatchObject({
      kind: 'silence',
    });
  });

  test('menus carry their values, and people', async () => {
    const seen = await show();
    bench.answer(interaction => {
      if (interaction.isStringSelectMenu()) return interaction.reply(interaction.values.join('+'));
      if (interaction.isUserSelectMenu())
        return interaction.reply(interaction.users.first()?.globalName ?? 'nobody');
      return undefined;
    });
    expect((await bench.member.choose(seen, 'oils', ['olive', 'coco'])).text).toBe('olive+coco');
    expect((await bench.member.choose(seen, 'maker', [bench.member.id])).text).toBe('Odile');
    await expect(bench.member.choose(seen, 'oils', ['lard'])).rejects.toThrow(Refused);
    await expect(bench.member.choose(seen, 'oils', ['olive', 'palm', 'coco'])).rejects.toThrow(Refused);
    await expect(bench.member.press(seen, 'oils')).rejects.toThrow(Refused);
    await expect(bench.member.press(seen, 'rest')).rejects.toThrow('disabled');
  });

  test('of an ephemeral message answers only its member', async () => {
    bench.answer(
      interaction =>
        interaction.isChatInputCommand() &&
        interaction.reply({ flags: ephemeral, content: 'psst', components: [button('ok')] }),
    );
    const seen = await bench.member.run('/batch', { oils: 'olive' });
    const nosy = bench.guild.addMember({ name: 'Nosy' });
    await expect(nosy.press(seen, 'ok')).rejects.toThrow('does not see');
    bench.answer(
      interaction => interaction.isButton() && interaction.update({ content: 'ok', components: [] }),
    );
    expect(await bench.member.press(seen, 'ok')).toMatchObject({
      text: 'ok',
      ephemeral: true,
      visibleTo: bench.member.id,
    });
    bench.member.deleteMessage(seen);
    expect(bench.host.latest(seen)).toBeUndefined();
  });
});

describe('a form', () => {
  const option = (value: string) => ({ label: value, value });
  const form = {
    custom_id: 'plan',
    title: 'A batch',
    components: [
      { type: 10, content: 'Weigh everything.' },
      {
        type: 18,
        label: 'Oils',
        component: { type: 4, custom_id: 'oils', style: 2, max_length: 20, value: 'olive 500' },
      },
      {
        type: 18,
        label: 'Mould',
        component: { type: 3, custom_id: 'mould', options: [option('slab'), option('log')] },
      },
      {
        type: 18,
        label: 'Gel',
        component: { type: 21, custom_id: 'gel', required: false, options: [option('yes'), option('no')] },
      },
      { type: 18, label: 'Photos', component: { type: 19, custom_id: 'photos', max_values: 2 } },
    ],
  };
  const read = (interaction: ModalSubmitInteraction) => ({
    oils: interaction.fields.getTextInputValue('oils'),
    mould: interaction.fields.getStringSelectValues('mould'),
    photos: interaction.fields.getUploadedFiles('photos')?.map(file => file.name),
    from: interaction.isFromMessage(),
  });
  const open = () => {
    bench.answer(async interaction => {
      if (interaction.isChatInputCommand() || interaction.isButton())
        await interaction.showModal(form as never);
      else if (interaction.isModalSubmit()) await interaction.reply(JSON.stringify(read(interaction)));
    });
    return bench.member.openForm('/batch', { oils: 'olive' });
  };

  test('shows its fields and brings what was filled in', async () => {
    const opened = await open();
    expect(opened.fields.map(field => [field.kind, field.label, field.required])).toEqual([
      ['text', 'Oils', true],
      ['text-menu', 'Mould', true],
      ['one-of', 'Gel', false],
      ['files', 'Photos', true],
    ]);
    const seen = await bench.member.submit(opened, {
      mould: ['log'],
      photos: [{ name: 'a.png', bytes: png }],
    });
    expect(JSON.parse(seen.text)).toEqual({
      oils: 'olive 500',
      mould: ['log'],
      photos: ['a.png'],
      from: false,
    });
  });

  test('from a button carries its message along', async () => {
    bench.answer(
      interaction =>
        interaction.isChatInputCommand() && interaction.reply({ content: 'm', components: [button('edit')] }),
    );
    const message = await bench.member.run('/batch', { oils: 'olive' });
    await open().catch(() => undefined);
    const opened = await bench.member.pressForForm(message, 'edit');
    bench.answer(
      interaction =>
        interaction.isModalSubmit() &&
        interaction.isFromMessage() &&
        interaction.update({ content: 'edited', components: [] }),
    );
    const after = await bench.member.submit(opened, {
      mould: 'slab',
      photos: [{ name: 'a.png', bytes: png }],
    });
    expect(after).toMatchObject({ id: message.id, text: 'edited' });
  });

  test.each([
    ['an unknown field', { ash: 'soda' }],
    ['too long a text', { oils: 'o'.repeat(21), mould: 'slab', photos: [{ name: 'a.png', bytes: png }] }],
    ['an empty required text', { oils: '', mould: 'slab', photos: [{ name: 'a.png', bytes: png }] }],
    ['no file where one is needed', { mould: 'slab' }],
    ['a value that is not offered', { mould: 'tube', photos: [{ name: 'a.png', bytes: png }] }],
  ])('does not leave with %s', async (_, fields) => {
    await expect(bench.member.submit(await open(), fields)).rejects.toThrow(Refused);
  });
});

test('menus on messages and on members bring their target', async () => {
  bench.answer(interaction => {
    if (interaction.isMessageContextMenuCommand())
      return interaction.reply(
        `${interaction.targetMessage.content} ${interaction.targetMessage.attachments.size}`,
      );
    if (interaction.isUserContextMenuCommand())
      return interaction.reply(interaction.targetUser.globalName ?? '');
    return undefined;
  });
  const photo = await bench.member.postMessage('my bar', [{ name: 'bar.png', bytes: png }]);
  expect((await bench.member.menu('Look at this', photo)).text).toBe('my bar 1');
  expect((await bench.member.menu('Look at them', bench.guild.addMember({ name: 'Bea' }))).text).toBe('Bea');
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

test('messages in channels are posted once for a nonce, fetched, edited and seen by the bot', async () => {
  const channel = await bench.client.channels.fetch(bench.channel.id);
  if (!channel?.isSendable()) throw new Error('the bench channel takes no messages');
  const first = await channel.send({ content: 'vote', nonce: '7', enforceNonce: true });
  const second = await channel.send({ content: 'vote', nonce: '7', enforceNonce: true });
  expect(second.id).toBe(first.id);
  await first.edit('vote closed');
  expect((await channel.messages.fetch({ message: first.id, force: true })).content).toBe('vote closed');
  const heard = new Promise<string>(resolve =>
    bench.client.once('messageCreate', message => resolve(message.content)),
  );
  await bench.member.postMessage('hello bot');
  expect(await heard).toBe('hello bot');
});

test('people elsewhere and in direct messages arrive as users without a guild', async () => {
  bench.answer(interaction => {
    if (!interaction.isChatInputCommand()) return undefined;
    return interaction.reply({
      content: `${interaction.guildId} ${interaction.member} ${interaction.context}`,
      flags: ephemeral,
    });
  });
  expect((await bench.member.run('/batch', { oils: 'olive' }, { context: 'elsewhere' })).text).toBe(
    'null null 2',
  );
  expect((await bench.member.run('/batch', { oils: 'olive' }, { context: 'bot-dm' })).text).toBe(
    'null null 1',
  );
});

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
