import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Refused } from '../../src/loopback/index.ts';
import { type Bench, button, ephemeral, openBench, png } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 1_500, patienceMs: 1_500 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

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

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
