import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

async function asked(line: string, member: string): Promise<string> {
  const seat = { member, group: 'kitchen', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  return JSON.stringify(answer);
}
const PLAN = '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils"';

test('whoever reads Fahrenheit has it first wherever both stand, with the same degrees', async () => {
  const celsius = await asked(PLAN, 'ines');
  await asked('/prefer temperature:fahrenheit', 'june');
  const fahrenheit = await asked(PLAN, 'june');
  expect(celsius).toMatch(/38 °C \(100 °F\)/u);
  expect(fahrenheit).toMatch(/100 °F \(38 °C\)/u);
  expect(fahrenheit).not.toMatch(/\d °C \(\d/u);
  // 52 and 82 °C are 126 and 180 °F.
  expect(fahrenheit).toMatch(/likely \d+ to \d+ °F \(\d+ to \d+ °C\)/u);
  await asked('/prefer temperature:celsius', 'june');
  expect(await asked(PLAN, 'june')).not.toMatch(/\d °F \(\d/u);
});
