import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const asked = async (question: string) => {
  const seat = { member: 'm', group: 'g', language: 'en' as const, manages: false, roles: [] };
  return JSON.stringify(
    (await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation)).answer,
  );
};

describe('a scent or a spirit asked about in plain words', () => {
  test.each([
    ['how much peru balsam', /skin sensitiser/],
    ['how much clove oil in 1 kg of oils', /seizes the batter/],
    ['eau de cologne in soap?', /scent-barred|mostly alcohol/],
    ['vodka en vez de agua', /liquid-is-spirit|strong alcohol/],
  ])('%s', async (question, says) => {
    expect(await asked(question)).toMatch(says);
  });

  test.each(['how much ultramarine for 2 cups', 'mint green for 2 cups'])(
    '%s is of a colour',
    async question => {
      expect(await asked(question)).not.toMatch(/IFRA|strong alcohol/);
    },
  );
});
