import type { ModalSubmitInteraction } from 'discord.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Refused } from '../../src/loopback/index.ts';
import { type Bench, button, openBench, png } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 1_500, patienceMs: 1_500 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

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

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
