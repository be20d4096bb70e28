import { expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

const HELD = 'none of Canada’s: ask the authority there before you sell';

/** All that is answered to a plain question, as text. */
async function answerTo(question: string): Promise<string> {
  await using conversation = await openConversation();
  const seat = { member: 'seller', group: 'law', language: 'en' as const, manages: false, roles: [] };
  return JSON.stringify((await askLine(`/ask question:"${question}"`, seat, conversation)).answer);
}

test('who asks whether a colour is allowed in Canada is told that its list is not held; who doses there is not', async () => {
  expect(await answerTo('is ultramarine blue allowed in Canada?')).toContain(HELD);
  expect(await answerTo('how much ultramarine blue for 2 cups, I live in Canada')).not.toContain(HELD);
});
