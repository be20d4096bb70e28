import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { RuleId } from '../../src/loopback/refusals/rules.ts';
import { type Bench, expectRefusal, openBench } from './host-bench.ts';
import { messagePairs, type Pair } from './host-refusal-bodies.ts';
import { declarationPairs } from './host-refusal-declarations.ts';
import { formPairs } from './host-refusal-forms.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench[Symbol.asyncDispose]());

const entries = (pairs: Record<string, Pair>) => Object.entries(pairs) as [RuleId, Pair][];

describe('a message body', () => {
  test.each(entries(messagePairs))('%s', async (rule, pair) => {
    const path = `/channels/${bench.channel.id}/messages`;
    expectRefusal(rule, await bench.post('POST', path, pair.refused));
    expect(await bench.post('POST', path, pair.taken)).toMatchObject({ status: 200 });
  });
});

describe('a form', () => {
  test.each(entries(formPairs))('%s', async (rule, pair) => {
    await bench.declare();
    let refused: Awaited<ReturnType<Bench['post']>> | undefined;
    bench.answer(async interaction => {
      const path = `/interactions/${interaction.id}/${interaction.token}/callback`;
      refused = await bench.post('POST', path, { type: 9, data: pair.refused });
      await bench.post('POST', path, { type: 9, data: pair.taken });
    });
    await bench.member.openForm('/batch', { oils: 'olive' });
    expectRefusal(rule, refused!);
  });
});

describe('a declaration', () => {
  test.each(entries(declarationPairs))('%s', async (rule, pair) => {
    const path = `/applications/${bench.host.applicationId}/guilds/${bench.guild.id}/commands`;
    expectRefusal(rule, await bench.post('POST', path, pair.refused));
    expect((await bench.post('POST', path, pair.taken)).status).toBeLessThan(300);
  });
});

test('the path of a flaw leads to the offending field', async () => {
  const body = messagePairs['button-label'].refused;
  const answer = await bench.post('POST', `/channels/${bench.channel.id}/messages`, body);
  expect(answer.json?.errors).toMatchObject({
    components: { 0: { components: { 0: { label: { _errors: [{ code: 'BASE_TYPE_BAD_LENGTH' }] } } } } },
  });
});
