import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { action, command, followUp } from '../../src/conversation/command.ts';
import type { Field, Form, Reply } from '../../src/conversation/reply.ts';
import { png } from './host-bench.ts';
import { openRoom } from './room.ts';

const says = { en: 'test', es: 'prueba' };
const items = (count: number, chosen?: number) =>
  Array.from({ length: count }, (_, n) => ({ label: `Item ${n}`, value: `v${n}`, chosen: n === chosen }));
const pick = (name: string, count: number, chosen?: number): Field => ({
  kind: 'pick',
  name,
  label: name,
  required: false,
  items: items(count, chosen),
});
const sent = followUp({
  seenBy: 'asker',
  args: {},
  answer: (_, __, { fields }): Reply => ({
    kind: 'reply',
    headline: JSON.stringify(fields, (_key, value) => (value?.name === 'bar.png' ? 'a file' : value)),
    data: {},
    blocks: [],
    cautions: [],
  }),
});
const form: Form = {
  kind: 'form',
  title: 'Kinds',
  fields: [
    pick('few', 3),
    pick('many', 11),
    pick('set', 3, 1),
    { kind: 'several', name: 'ticks', label: 'ticks', required: false, items: items(12, 2) },
    { kind: 'picture', name: 'photo', label: 'photo', required: false },
  ],
  follow: sent.with({}),
};
const kinds = command(
  'kinds',
  action({ purpose: says, seenBy: 'asker', opensForm: true, options: {}, answer: () => form }),
  { followUps: { sent } },
);

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ commands: [kinds] });
});
afterAll(() => room[Symbol.asyncDispose]());

describe('a form', () => {
  test('shows two to ten choices as radio buttons; more, and what may be taken back as a menu; several as boxes, ten at most', async () => {
    const open = await room.member.openForm('/kinds');
    expect(open.fields.map(({ customId, kind }) => [customId, kind])).toEqual([
      ['few', 'one-of'],
      ['many', 'text-menu'],
      ['set', 'text-menu'],
      ['ticks', 'some-of'],
      ['photo', 'files'],
    ]);
    const answer = await room.member.submit(open, {
      few: 'v2',
      many: ['v10'],
      ticks: ['v9', 'v0'],
      photo: [{ name: 'bar.png', bytes: png }],
    });
    const told = JSON.parse(answer.text.replaceAll('\\', '').replace(/^## /, ''));
    expect(told).toEqual({ few: 'v2', many: 'v10', ticks: 'v9 v0', photo: 'a file' });
  });

  test('takes pictures only where it asks for one, and may be sent with nothing chosen', async () => {
    const open = await room.member.openForm('/kinds');
    expect(JSON.stringify(open.raw)).toContain('"file_types":["image"]');
    expect(open.fields.every(({ required }) => !required)).toBe(true);
    const answer = await room.member.submit(open, {});
    expect(JSON.parse(answer.text.replaceAll('\\', '').replace(/^## /, ''))).toEqual({});
  });
});
