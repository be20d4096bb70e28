import { setTimeout as after } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { permissionBits } from '../../src/loopback/index.ts';
import { type RuleId, rules } from '../../src/loopback/refusals/rules.ts';
import { type Answer, type Bench, expectRefusal, multipart, openBench, png } from './host-bench.ts';
import type { messagePairs } from './host-refusal-bodies.ts';
import type { declarationPairs } from './host-refusal-declarations.ts';
import type { formPairs } from './host-refusal-forms.ts';

type Reply = { status: number; json: Answer | undefined };
type Told = keyof typeof messagePairs | keyof typeof formPairs | keyof typeof declarationPairs;

let bench: Bench;
beforeAll(async () => {
  bench = await openBench({
    acknowledgeWithinMs: 1_000,
    attachmentSizeLimit: 2_000,
    requestSizeLimit: 30_000,
  });
  await bench.declare();
});
afterAll(() => bench[Symbol.asyncDispose]());

const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));
const messages = () => `/channels/${bench.channel.id}/messages`;
const commandsOf = () => `/applications/${bench.host.applicationId}/guilds/${bench.guild.id}/commands`;
const say = (body: unknown = { content: 'soap' }) => bench.post('POST', messages(), body);
const posted = async (body?: unknown) => `${messages()}/${(await say(body)).json!.id}`;
const text = { type: 10, content: 'stir' };

/** Answers one command with these callbacks in turn; gives what the last was told. */
async function answered(...callbacks: { type: number; data?: unknown }[]): Promise<Reply> {
  const { promise, resolve } = Promise.withResolvers<Reply>();
  bench.answer(async interaction => {
    let last: Reply | undefined;
    for (const callback of callbacks)
      last = await bench.post(
        'POST',
        `/interactions/${interaction.id}/${interaction.token}/callback`,
        callback,
      );
    resolve(last!);
  });
  const run = bench.member.run('/batch', { oils: 'olive' }).catch(() => undefined);
  const reply = await promise;
  await run;
  return reply;
}

/** Answers one autocomplete with these choices. */
async function completed(choices: unknown): Promise<Reply> {
  const { promise, resolve } = Promise.withResolvers<Reply>();
  bench.answer(async interaction => {
    const path = `/interactions/${interaction.id}/${interaction.token}/callback`;
    resolve(await bench.post('POST', path, { type: 8, data: { choices } }));
  });
  const offered = bench.member.complete('/batch', { scent: 'la' }, 'scent').catch(() => undefined);
  const reply = await promise;
  await offered;
  return reply;
}

/** A token whose interaction was answered (or not), to follow up with. */
async function tokenAfter(acknowledge: boolean, context: 'guild' | 'elsewhere' = 'guild'): Promise<string> {
  const { promise, resolve } = Promise.withResolvers<string>();
  bench.answer(async interaction => {
    const path = `/interactions/${interaction.id}/${interaction.token}/callback`;
    if (acknowledge) await bench.post('POST', path, { type: 4, data: { content: 'soap' } });
    resolve(interaction.token);
  });
  const run = bench.member.run('/batch', { oils: 'olive' }, { context }).catch(() => undefined);
  const token = await promise;
  if (acknowledge) await run;
  return token;
}
const followUp = (token: string) =>
  bench.post('POST', `/webhooks/${bench.host.applicationId}/${token}`, { content: 'more' });

const hall = () =>
  bench.host.guilds.find(({ name }) => name === 'Hall') ??
  bench.host.addGuild({ name: 'Hall', botPermissions: permissionBits.createEvents });
const calendar = () => `/guilds/${hall().id}/scheduled-events`;
const at = (hours: number) => new Date(Date.now() + hours * 3_600_000).toISOString();
const event = (over: object) => ({
  name: 'Vote ends',
  entity_type: 3,
  privacy_level: 2,
  entity_metadata: { location: 'here' },
  scheduled_start_time: at(1),
  scheduled_end_time: at(2),
  ...over,
});

/** Rows that need a place, a person, a file or an interaction. Leaving one out does not compile. */
const cases: Record<Exclude<RuleId, Told>, () => Promise<Reply>> = {
  'v2-flag-kept': async () =>
    bench.post('PATCH', await posted({ flags: 1 << 15, components: [text] }), { flags: 0 }),
  'files-count': () =>
    say(
      multipart(
        {},
        times(11, i => ({ name: `${i}.png`, bytes: png })),
      ),
    ),
  'file-size': () => say(multipart({}, [{ name: 'bar.png', bytes: new Uint8Array(2_001) }])),
  'request-size': () =>
    say(
      multipart(
        {},
        times(5, i => ({ name: `${i}.png`, bytes: new Uint8Array(8_000) })),
      ),
    ),
  'attachment-description': () =>
    say(
      multipart({ attachments: [{ id: 0, description: 'a'.repeat(1025) }] }, [
        { name: 'bar.png', bytes: png },
      ]),
    ),
  'body-json': async () => {
    const response = await fetch(`${bench.host.api}/v10${messages()}`, {
      method: 'POST',
      body: '{',
      headers: { authorization: 'Bot bench-token' },
    });
    return { status: response.status, json: (await response.json()) as Answer };
  },
  unauthorised: () => bench.post('POST', messages(), { content: 'soap' }, { authorization: '' }),
  'channel-unknown': () => bench.post('POST', '/channels/5/messages', { content: 'soap' }),
  'channel-hidden': () => {
    const cellar = bench.guild.addChannel('cellar');
    cellar.allowBot(0n);
    return bench.post('POST', `/channels/${cellar.id}/messages`, { content: 'soap' });
  },
  'channel-closed': () => {
    const shelf = bench.guild.addChannel('shelf');
    shelf.allowBot(permissionBits.viewChannel | permissionBits.sendMessages);
    return bench.post(
      'POST',
      `/channels/${shelf.id}/messages`,
      multipart({}, [{ name: 'bar.png', bytes: png }]),
    );
  },
  'channel-not-text': () =>
    bench.post('POST', `/channels/${bench.guild.addForum('posts').id}/messages`, { content: 'soap' }),
  'thread-archived': async () => {
    const thread = bench.guild.addThread('old batch');
    const path = `/channels/${thread.id}/messages`;
    const message = await bench.post('POST', path, { content: 'soap' });
    thread.archive();
    return bench.post('PATCH', `${path}/${message.json!.id}`, { content: 'more soap' });
  },
  'thread-locked': () => {
    const thread = bench.guild.addThread('settled');
    thread.archive(true);
    return bench.post('POST', `/channels/${thread.id}/messages`, { content: 'soap' });
  },
  'thread-twice': async () => {
    const path = `${await posted()}/threads`;
    expect(await bench.post('POST', path, { name: 'soap' })).toMatchObject({ status: 200 });
    return bench.post('POST', path, { name: 'soap' });
  },
  'thread-name': async () => bench.post('POST', `${await posted()}/threads`, { name: 'a'.repeat(101) }),
  'event-name': () => bench.post('POST', calendar(), event({ name: 'a'.repeat(101) })),
  'event-place': () => bench.post('POST', calendar(), event({ entity_metadata: null })),
  'event-times': () => bench.post('POST', calendar(), event({ scheduled_start_time: at(-1) })),
  'event-over': async () => {
    const [starts, ends] = [Date.now() + 100, Date.now() + 150];
    const times = {
      scheduled_start_time: new Date(starts).toISOString(),
      scheduled_end_time: new Date(ends).toISOString(),
    };
    const entry = await bench.post('POST', calendar(), event(times));
    expect(entry.status).toBe(200);
    await after(200);
    return bench.post('PATCH', `${calendar()}/${entry.json!.id}`, { name: 'late' });
  },
  'event-begun': async () => {
    const entry = await bench.post(
      'POST',
      calendar(),
      event({ scheduled_start_time: new Date(Date.now() + 100).toISOString() }),
    );
    expect(entry.status).toBe(200);
    await after(150);
    return bench.post('PATCH', `${calendar()}/${entry.json!.id}`, { scheduled_start_time: at(1) });
  },
  'event-unknown': async () => {
    const entry = await bench.post('POST', calendar(), event({}));
    expect((await bench.post('DELETE', `${calendar()}/${entry.json!.id}`, {})).status).toBe(204);
    return bench.post('DELETE', `${calendar()}/${entry.json!.id}`, {});
  },
  'direct-messages-closed': async () => {
    const quiet = bench.guild.addMember({ name: 'Quiet', directMessages: false });
    const channel = await bench.post('POST', '/users/@me/channels', { recipient_id: quiet.id });
    return bench.post('POST', `/channels/${channel.json!.id}/messages`, { content: 'soap' });
  },
  'user-unknown': () => bench.post('POST', '/users/@me/channels', { recipient_id: '5' }),
  'member-unknown': () => bench.post('GET', `/guilds/${bench.guild.id}/members/5`, undefined),
  'guild-unknown': () => bench.post('PUT', `/applications/${bench.host.applicationId}/guilds/5/commands`, []),
  'message-unknown': () => bench.post('PATCH', `${messages()}/5`, { content: 'soap' }),
  'message-of-another': async () =>
    bench.post('PATCH', `${messages()}/${(await bench.member.postMessage('mine')).id}`, { content: 'soap' }),
  'form-after-form': async () => {
    const form = {
      custom_id: 'f',
      title: 'F',
      components: [{ type: 18, label: 'L', component: { type: 4, custom_id: 'x', style: 1 } }],
    };
    let reply: Reply | undefined;
    bench.answer(async interaction => {
      const path = `/interactions/${interaction.id}/${interaction.token}/callback`;
      const first = await bench.post('POST', path, { type: 9, data: form });
      if (!interaction.isModalSubmit()) return;
      reply = first;
      await bench.post('POST', path, { type: 4, data: { content: 'soap' } });
    });
    const open = await bench.member.openForm('/batch', { oils: 'olive' });
    await bench.member.submit(open, { x: 'olive' });
    return reply!;
  },
  'interaction-unknown': () =>
    bench.post('POST', '/interactions/5/abc/callback', { type: 4, data: { content: 'soap' } }),
  'interaction-late': async () => {
    const { promise, resolve } = Promise.withResolvers<Reply>();
    bench.answer(interaction => {
      const path = `/interactions/${interaction.id}/${interaction.token}/callback`;
      setTimeout(
        () => void bench.post('POST', path, { type: 4, data: { content: 'soap' } }).then(resolve),
        1_300,
      );
    });
    await expect(bench.member.run('/batch', { oils: 'olive' })).rejects.toThrow('did not respond');
    return promise;
  },
  'acknowledged-twice': () =>
    answered({ type: 4, data: { content: 'soap' } }, { type: 4, data: { content: 'soap' } }),
  'answer-kind': () => answered({ type: 7, data: { content: 'soap' } }),
  'defer-flags': () => answered({ type: 5, data: { flags: (1 << 6) | (1 << 15) } }),
  'choices-count': () => completed(times(26, i => ({ name: `${i}`, value: `${i}` }))),
  'choice-name': () => completed([{ name: 'a'.repeat(101), value: 'a' }]),
  'choice-value': () => completed([{ name: 'a', value: 5 }]),
  'webhook-token': () => followUp('abc'),
  'webhook-early': async () => followUp(await tokenAfter(false)),
  'follow-ups-elsewhere': async () => {
    const token = await tokenAfter(true, 'elsewhere');
    for (const _ of times(5, i => i)) expect((await followUp(token)).status).toBe(200);
    return followUp(token);
  },
  'command-duplicate': () =>
    bench.post(
      'PUT',
      commandsOf(),
      times(2, () => ({ name: 'a', description: 'b' })),
    ),
  'command-count': () =>
    bench.post(
      'PUT',
      commandsOf(),
      times(101, i => ({ name: `a${i}`, description: 'b' })),
    ),
  'command-creates': async () => {
    await bench.post(
      'PUT',
      commandsOf(),
      times(100, i => ({ name: `b${i}`, description: 'b' })),
    );
    return bench.post(
      'PUT',
      commandsOf(),
      times(100, i => ({ name: `c${i}`, description: 'b' })),
    );
  },
  'command-unknown': () => bench.post('DELETE', `${commandsOf()}/5`, {}),
  'application-unknown': () => bench.post('PUT', '/applications/5/commands', []),
};

describe('in its place', () => {
  test.each(Object.entries(cases) as [RuleId, () => Promise<Reply>][])('%s', async (rule, act) => {
    expectRefusal(rule, await act());
  });
});

test('every row says what it refuses and where that is documented', () => {
  for (const row of Object.values(rules)) {
    expect(row.what).not.toBe('');
    expect(row.where).not.toBe('');
  }
});
