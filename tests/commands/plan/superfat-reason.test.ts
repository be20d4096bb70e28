import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const plan = async (colour: string): Promise<string> => {
  const seat = { member: 'ines', group: 'kitchen', language: 'en' as const, manages: false, roles: [] };
  const line = `/plan oils:"coconut 30%, olive 70%" size:"2 lb oils" portions:"2 cups ${colour}; rest plain" scale:1`;
  return JSON.stringify((await askLine(line, seat, conversation)).answer);
};

// Both come out above the superfat that was asked: a scale of whole grams rounds the lye down.
test('superfat above what was asked is laid to the oil in the colours only where there is some', async () => {
  expect(await plan('red iron oxide')).toContain('The oil in the colours lifts it');
  const wetted = await plan('ultramarine blue');
  expect(wetted).toMatch(/Lye is rounded down/u);
  expect(wetted).not.toContain('The oil in the colours lifts it');
});
