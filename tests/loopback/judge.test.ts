import { describe, expect, test } from 'vitest';
import { carriedMessagePairs, messagePairs, type Pair } from './host-refusal-bodies.ts';
import { carriedDeclarationPairs, declarationPairs } from './host-refusal-declarations.ts';
import { carriedFormPairs, formPairs } from './host-refusal-forms.ts';
import { wrongWith } from './judge.ts';
import { openRoom } from './room.ts';

const requests = {
  message: (body: unknown) => ({ method: 'POST', path: '/channels/1/messages', body }),
  form: (data: unknown) => ({
    method: 'POST',
    path: '/interactions/1/token/callback',
    body: { type: 9, data },
  }),
  declaration: (body: unknown) => ({ method: 'POST', path: '/applications/1/commands', body }),
};
const all = (kind: keyof typeof requests, pairs: Readonly<Record<string, Pair>>) =>
  Object.entries(pairs).map(([row, pair]) => [kind, row, pair] as const);

/**
 * Rows of which the description knows nothing at all, or less than the documentation: content may have 4000
 * characters there. They stay with the host.
 */
describe('the platform’s own description', () => {
  const carried = [
    ...all('message', carriedMessagePairs),
    ...all('form', carriedFormPairs),
    ...all('declaration', carriedDeclarationPairs),
  ];
  test.each(carried)('of a %s refuses %s, so that the host need not', (kind, row, { refused }) => {
    // Nobody here sends embeds; these two limits of theirs are in the documentation alone.
    if (row === 'embed-total' || row === 'embed-field-value') return;
    expect(wrongWith(requests[kind](refused))).toBeDefined();
  });

  const ours = [
    ...all('message', messagePairs),
    ...all('form', formPairs),
    ...all('declaration', declarationPairs),
  ];
  test.each([...carried, ...ours])('of a %s takes what is taken by the row %s', (kind, _, { taken }) => {
    expect(wrongWith(requests[kind](taken))).toBeUndefined();
  });
});

describe('the judge', () => {
  test('sees what a room sends, and finds nothing wrong', async () => {
    await using room = await openRoom();
    // Commands are registered once for all rooms of a process: what is judged here is what answers send.
    for (const topic of ['plan', 'dose', 'match', 'shelf', 'challenge', 'diagnose'])
      await room.member.run('/help', { topic });
    expect(room.judging.judged).toBeGreaterThan(5);
  });

  test.each([
    ['an unknown callback', { method: 'POST', path: '/interactions/1/token/callback', body: { type: 99 } }],
    ['a message that is a number', { method: 'POST', path: '/channels/1/messages', body: { content: 7 } }],
    ['a body nobody described', { method: 'POST', path: '/channels/1/nowhere', body: { a: 1 } }],
    [
      'a suggestion without a value',
      {
        method: 'POST',
        path: '/interactions/1/t/callback',
        body: { type: 8, data: { choices: [{ name: 'a' }] } },
      },
    ],
    ['a thread without a name', { method: 'POST', path: '/channels/1/messages/2/threads', body: {} }],
    [
      'an edit with a broken component',
      { method: 'PATCH', path: '/webhooks/1/t/messages/@original', body: { components: [{ type: 2 }] } },
    ],
    ['an event without a time', { method: 'POST', path: '/guilds/1/scheduled-events', body: { name: 'a' } }],
  ])('refuses %s', (_, request) => {
    expect(wrongWith(request)).toBeDefined();
  });

  test('ends the room that sent something wrong with an error', async () => {
    const room = await openRoom();
    const { rest } = room.connection.client;
    const [channel] = room.group.channels;
    await rest
      .post(`/channels/${channel?.id}/messages`, { body: { content: 'a', components: [{ type: 99 }] } })
      .catch(() => undefined);
    await expect(room[Symbol.asyncDispose]()).rejects.toThrow('off the description');
  });
});
