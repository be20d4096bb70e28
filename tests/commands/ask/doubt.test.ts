import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(question: string, language: 'en' | 'es') {
  const seat = { member: 'ines', group: 'doubt', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}

test.each([
  ['are you sure about that, you said half of it last week', 'en', /I can be wrong/],
  ['estás segura? ayer me dijiste otra cantidad', 'es', /puedo equivocarme/],
] as const)(
  '%s: what an answer hangs on, and no lye is poured meanwhile',
  async (question, language, said) => {
    const { headline, data, cautions } = await asked(question, language);
    expect(data).toMatchObject({ understood: { job: 'doubt' } });
    expect(headline).toMatch(said);
    expect(cautions).toMatchObject([{ id: 'lye', firm: true }]);
  },
);

test('who asks for a challenge is given no doubt', async () => {
  expect((await asked('which challenge is on this week', 'en')).data).toMatchObject({
    understood: { job: 'challenge' },
  });
});
