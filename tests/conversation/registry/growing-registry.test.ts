import { describe, expect, test } from 'vitest';
import { contextOf } from '../../../src/conversation/answering/context-of.ts';
import { responseModeOf } from '../../../src/conversation/answering/response-mode.ts';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { firstAidFor } from '../../../src/conversation/first-aid/first-aid.ts';
import type { Question } from '../../../src/conversation/question.ts';
import { GrowingRegistry } from '../../../src/conversation/registry/growing-registry.ts';
import { indexCommands, readCommands } from '../../../src/conversation/registry/registry.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { emptyStore } from '../empty-store.ts';

const folder = new URL('../../../commands/', import.meta.url);
const origin = {
  id: '1',
  at: 0,
  asker: { id: 'ana', name: 'Ana', manages: false, roles: [] },
  group: 'g',
  channel: undefined,
  language: 'en',
} as const;
const run = (...path: string[]): Question => ({ ...origin, kind: 'command', path, given: {} });
const press = (sealed: string): Question => ({ ...origin, kind: 'follow', sealed, values: [], fields: {} });
const names = ({ commands }: GrowingRegistry) => commands.map(({ name }) => name);

test('knows no command until it is asked for, and then that one', async () => {
  const registry = await GrowingRegistry.of(folder);
  expect(names(registry)).toEqual([]);
  await Promise.all([registry.prepare(run('dose')), registry.prepare(run('dose'))]);
  expect(names(registry)).toEqual(['dose']);
  expect(registry.prepare(run('dose'))).toBeUndefined();
  await registry.prepare(press('1~a~shelf.remove~zz~nonce~x'));
  expect(names(registry)).toEqual(['dose', 'shelf']);
  expect([...registry.actions.keys()]).toContain('shelf add');
});

test('loads one ahead of whoever asks, and minds none that is not there', async () => {
  const registry = await GrowingRegistry.of(folder);
  await registry.ahead('doze');
  expect(names(registry)).toEqual([]);
  await registry.ahead('dose');
  expect(names(registry)).toEqual(['dose']);
  expect(registry.prepare(run('dose'))).toBeUndefined();
});

test.for([
  ['an unknown name', run('doze')],
  ['a question about every command', run('help')],
  [
    'a menu entry',
    { ...origin, kind: 'point', entry: 'x', message: { id: '1', channel: '2', text: '', attachments: [] } },
  ],
] as const)('%s loads them all, in the order in which they are read at once', async ([, question]) => {
  const registry = await GrowingRegistry.of(folder);
  await registry.prepare(question as Question);
  const all = await readCommands(folder);
  expect(names(registry)).toEqual(all.commands.map(({ name }) => name));
  expect(registry.complete()).toBeUndefined();
});

describe('a command that another one goes on to', () => {
  const contextIn = (registry: GrowingRegistry) => {
    const services = { store: emptyStore, workers: { run: () => Promise.reject(new Error('no worker')) } };
    return contextOf(origin, { registry, services } as unknown as Conversation, '1');
  };

  test('is loaded, and no other', async () => {
    const registry = await GrowingRegistry.of(folder);
    await registry.ahead('dose');
    const context = contextIn(registry);
    // Half a question is refused by the command itself, not as one that there is not.
    await expect(context.run('preview', {})).rejects.toMatchObject({
      id: expect.not.stringMatching('command'),
    });
    expect(names(registry)).toEqual(['dose', 'preview']);
    await expect(context.namesJar('match', { target: 'sage' })).resolves.toBe(false);
    expect(names(registry)).toEqual(['dose', 'match', 'preview']);
  });

  test('that there is not is refused with those that come near', async () => {
    const registry = await GrowingRegistry.of(folder);
    await expect(contextIn(registry).run('doze', {})).rejects.toMatchObject({
      id: 'command-unknown',
      values: { nearest: expect.arrayContaining(['dose']) },
    });
  });
});

describe('first aid', () => {
  const words = ['lye in my eye'];
  const say = wordsIn('en');
  const inChannel = { ...origin, channel: 'bench' };

  test('loads what its button leads to, and nothing that was asked', async () => {
    const registry = await GrowingRegistry.of(folder);
    expect(await firstAidFor(['lovely soap'], inChannel, { say, registry })).toBeUndefined();
    expect(names(registry)).toEqual([]);
    const reply = await firstAidFor(words, inChannel, { say, registry });
    expect(reply?.choices?.map(({ label }) => label)).toEqual([say.firstAid.share]);
    expect(names(registry)).toEqual(['first-aid']);
  });

  test('comes, without its button, where that cannot be loaded', async () => {
    const broken = { ...indexCommands([]), prepare: () => Promise.reject(new Error('disk gone')) };
    const reply = await firstAidFor(words, inChannel, { say, registry: broken });
    expect(reply?.headline).toBe(say.firstAid.headlines['lye-eye']);
    expect(reply?.choices).toBeUndefined();
  });

  test('is seen coming before anything is loaded', async () => {
    const registry = await GrowingRegistry.of(folder);
    const asked: Question = {
      ...inChannel,
      kind: 'command',
      path: ['diagnose'],
      given: { words: words[0]! },
    };
    const conversation = { registry, services: { store: {} } } as unknown as Conversation;
    expect(await responseModeOf(asked, conversation)).toMatchObject({ seenBy: 'asker', pace: 'quick' });
    expect(names(registry)).toEqual([]);
  });
});
