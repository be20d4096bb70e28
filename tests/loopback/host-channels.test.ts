import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Bench, openBench } from './host-bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({ acknowledgeWithinMs: 1_500, patienceMs: 1_500 });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

test('messages in channels are posted once for a nonce, fetched, edited and seen by the bot', async () => {
  const channel = await bench.client.channels.fetch(bench.channel.id);
  if (!channel?.isSendable()) throw new Error('the bench channel takes no messages');
  const first = await channel.send({ content: 'vote', nonce: '7', enforceNonce: true });
  const second = await channel.send({ content: 'vote', nonce: '7', enforceNonce: true });
  expect(second.id).toBe(first.id);
  await first.edit('vote closed');
  expect((await channel.messages.fetch({ message: first.id, force: true })).content).toBe('vote closed');
  const heard = new Promise<string>(resolve =>
    bench.client.once('messageCreate', message => resolve(message.content)),
  );
  await bench.member.postMessage('hello bot');
  expect(await heard).toBe('hello bot');
});

test('nothing went wrong behind the scenes', () => {
  expect(bench.faults).toEqual([]);
});
