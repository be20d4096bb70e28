import { expect, test } from 'vitest';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

/** Whoever has met the standing cautions has more room for the rest: each way by a member of its own. */
const seatOf = (member: string) => ({
  member,
  group: 'notes',
  language: 'en' as const,
  manages: false,
  roles: [],
});

test('a note in plain words is answered as the same question asked by the command', async () => {
  await using conversation = await openConversation();
  for (const note of [
    'how much red ox for 2 cups at half str',
    '  canta sosa para 500 g de manteca ',
    '2 + 2?',
  ]) {
    const [typed, asked] = [
      await askLine(note, seatOf('ines'), conversation),
      await askLine(`/ask question:${JSON.stringify(note)}`, seatOf('bram'), conversation),
    ];
    if (typed.answer.kind !== 'reply' || asked.answer.kind !== 'reply') throw new Error('no reply');
    expect(typed.answer.headline).toBe(asked.answer.headline);
    expect(typed.answer.blocks).toEqual(asked.answer.blocks);
  }
});
