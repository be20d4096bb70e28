import { DiscordAPIError, type Interaction } from 'discord.js';
import { expect, test } from 'vitest';
import type { Fault } from '../../src/loopback/index.ts';
import { type Bench, openBench } from './host-bench.ts';

const callback = /^\/interactions\/.*\/callback$/;

/** Replies to one command under a fault; gives what the client made of it. */
async function replyUnder(bench: Bench, fault: Fault): Promise<unknown> {
  const made = Promise.withResolvers<unknown>();
  bench.answer((interaction: Interaction) => {
    if (interaction.isChatInputCommand())
      interaction.reply('here').then(() => made.resolve('replied'), made.resolve);
  });
  bench.host.faultNext('POST', callback, fault);
  const run = bench.member.run('/batch', { oils: 'olive' }).catch(() => undefined);
  const outcome = await made.promise;
  await run;
  return outcome;
}

test('a server error is retried by the client, a refused one is not', async () => {
  await using bench = await openBench({ acknowledgeWithinMs: 1_500 });
  await bench.declare();
  expect(await replyUnder(bench, 500)).toBe('replied');
  const refused = await replyUnder(bench, 404);
  expect(refused).toBeInstanceOf(DiscordAPIError);
});

test('a rate limit with its header is waited out', async () => {
  await using bench = await openBench({ acknowledgeWithinMs: 1_500 });
  await bench.declare();
  expect(await replyUnder(bench, 429)).toBe('replied');
  expect(
    bench.host.requests.filter(request => callback.test(request.path)).map(request => request.status),
  ).toEqual([429, 204]);
});

test('an answer lost on its way back has still been shown', async () => {
  await using bench = await openBench({ acknowledgeWithinMs: 1_500 });
  await bench.declare();
  const outcome = await replyUnder(bench, 'lost');
  expect(outcome).toBeInstanceOf(Error);
  expect(bench.member.sees().map(message => message.text)).toEqual(['here']);
});

test('a closed socket and a hanging one show nothing', async () => {
  await using bench = await openBench({ acknowledgeWithinMs: 300 });
  await bench.declare();
  expect(await replyUnder(bench, 'close')).toBeInstanceOf(Error);
  bench.host.faultNext('GET', /^\/users\/@me$/, 'hang');
  await expect(
    fetch(`${bench.host.api}/v10/users/@me`, { signal: AbortSignal.timeout(100) }),
  ).rejects.toThrow('timeout');
  expect(bench.member.sees()).toEqual([]);
});

test('a slow network can push an answer out of the window', async () => {
  await using bench = await openBench({ acknowledgeWithinMs: 200 });
  await bench.declare();
  const made = Promise.withResolvers<unknown>();
  bench.answer(interaction => {
    if (interaction.isChatInputCommand()) interaction.reply('here').catch(made.resolve);
  });
  bench.host.delayNext('POST', callback, 300);
  await expect(bench.member.run('/batch', { oils: 'olive' })).rejects.toThrow('did not respond');
  expect(await made.promise).toMatchObject({ code: 10062 });
});

test('a token outlives its interaction by its lifetime only', async () => {
  await using bench = await openBench({ tokenLifetimeMs: 100 });
  await bench.declare();
  const made = Promise.withResolvers<unknown>();
  bench.answer(async interaction => {
    if (!interaction.isChatInputCommand()) return;
    await interaction.reply('here');
    setTimeout(() => void interaction.followUp('late').catch(made.resolve), 150);
  });
  await bench.member.run('/batch', { oils: 'olive' });
  expect(await made.promise).toMatchObject({ code: 50027 });
});
