import { expect, test } from 'vitest';
import { GrowingRegistry } from '../../src/conversation/growing-registry.ts';
import type { Question } from '../../src/conversation/question.ts';
import { readCommands } from '../../src/conversation/registry.ts';

const folder = new URL('../../commands/', import.meta.url);
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
