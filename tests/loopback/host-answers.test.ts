import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Bench, button, ephemeral, newer, openBench, png, text } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 1_500, patienceMs: 1_500 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

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

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
