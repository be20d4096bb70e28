import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true, host: { acknowledgeWithinMs: 20_000 } });
  await room.member.run('/shelf add', {
    item: 'Evening sky',
    amount: '40 g',
    colourant: 'ultramarine blue',
  });
});
const oils = { oils: 'olive 70%, coconut 30%', size: '1000 g oils' };
type Message = Awaited<ReturnType<typeof room.member.run>>;
const labelled = (answer: Message, wanted: string) =>
  answer.controls.find(({ label }) => label === wanted)?.customId ?? '';
afterAll(() => room[Symbol.asyncDispose]());

const named = [
  ['/dose', { colourant: 'evening sky', portion: '2 cups' }],
  ['/dose', { colourant: 'gold mica', 'with-1': 'Evening sky pastel', portion: '2 cups' }],
  ['/preview', { mix: 'gold mica pastel + evening sky pastel' }],
  ['/match', { target: '#3040a0' }],
  ['/colourant check', { item: 'Evening sky' }],
  ['/plan', { oils: 'olive 70%, coconut 30%', size: '1 kg oils', portions: '2 cups evening sky; rest' }],
  [
    '/plan',
    { oils: 'oliva 70%, coco 30%', size: '1 kg oils', portions: '2 tazas de mica dorada; resto Evening sky' },
  ],
  ['/calibrate bars', { item: 'Evening sky', 'bar-1': '1/4 tsp per cup #6b5aa8', 'bar-2': 'plain #efe6cf' }],
] as const;

describe('an answer that names a jar of the asker’s', () => {
  test.each(named)('%s %o is shown to them alone', async (command, options) => {
    const answer = await room.member.run(command, options);
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toContain('Evening sky');
  });

  test.each([
    ['/colourant evidence', { item: 'Evening sky' }],
    ['/colourant withdraw', { item: 'Evening sky' }],
    ['/colourant label', { market: 'eu', of: 'Evening sky, gold mica' }],
    ['/ask', { question: 'how much Evening sky for 2 cups?' }],
    ['/ask', { question: '¿cuánto Evening sky para 2 tazas?' }],
    ['/shelf show', { item: 'Evening sky' }],
  ] as const)('%s %o may name it and is theirs alone', async (command, options) => {
    expect((await room.member.run(command, options)).ephemeral).toBe(true);
  });

  test('is shown to the group once they say so, and no longer when they take it back', async () => {
    await room.member.run('/prefer', { jars: 'shown' });
    expect((await room.member.run('/dose', named[0][1])).ephemeral).toBe(false);
    await room.member.run('/prefer', { jars: 'private' });
    expect((await room.member.run('/dose', named[0][1])).ephemeral).toBe(true);
  });

  test('is theirs alone also where the plan comes out of a form, and the next form of it', async () => {
    const { member } = room;
    const first = await member.submit(await member.openForm('/plan'), {
      ...oils,
      portions: '2 cups Evening sky; rest',
    });
    expect(first.ephemeral).toBe(true);
    expect(first.text).toContain('Evening sky');
    const plain = await member.run('/plan', oils);
    expect(plain.ephemeral).toBe(false);
    const form = await member.pressForForm(plain, labelled(plain, 'Change'));
    const sent = await member.submit(form, { ...oils, portions: '2 cups Evening sky; rest' });
    expect(sent.ephemeral).toBe(true);
    expect(sent.text).toContain('Evening sky');
  });

  test('is shown to the group by a plan, too, once they say so', async () => {
    const { member } = room;
    await member.run('/prefer', { jars: 'shown' });
    const told = await member.run('/plan', { ...oils, portions: '2 cups Evening sky; rest' });
    await member.run('/prefer', { jars: 'private' });
    expect(told.ephemeral).toBe(false);
    expect(told.text).toContain('Evening sky');
  });

  test('is theirs alone where it comes from pressing what was meant', async () => {
    const { member } = room;
    const asked = await member.run('/preview', { mix: 'evening sk pastel' });
    expect(asked.ephemeral).toBe(true);
    const press = labelled(asked, 'Evening sky');
    const answer = press === '' ? asked : await member.press(asked, press);
    expect(answer.text).toContain('Evening sky');
    expect(answer.ephemeral).toBe(true);
  });

  test.each([
    ['/dose', { colourant: 'ultramarine blue', portion: '2 cups' }],
    ['/preview', { mix: 'ultramarine blue pastel' }],
    ['/match', { target: '#3040a0', from: 'catalogue' }],
    [
      '/plan',
      { oils: 'olive 70%, coconut 30%', size: '1 kg oils', portions: '2 cups ultramarine blue; rest' },
    ],
    ['/diagnose', { words: 'evening sky bled into the white next to it' }],
  ] as const)('%s %o names none and is for the group', async (command, options) => {
    const answer = await room.member.run(command, options);
    expect(answer.ephemeral).toBe(false);
    expect(answer.text).not.toContain('Evening sky');
  });

  test('a report to the group calls the colour by its own name', async () => {
    const told = await room.member.run('/colourant report', {
      item: 'Evening sky',
      result: 'held',
      process: 'ambient',
    });
    expect(told.ephemeral).toBe(false);
    expect(told.text).not.toContain('Evening sky');
    expect(told.text.toLowerCase()).toContain('ultramarine blue');
  });
});
