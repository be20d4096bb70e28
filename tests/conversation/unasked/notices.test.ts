import { afterEach, beforeEach, expect, test } from 'vitest';
import { arrived } from '../../../src/conversation/answering/arrival.ts';
import { action, command } from '../../../src/conversation/command.ts';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { text } from '../../../src/conversation/option.ts';
import { receive } from '../../../src/conversation/receive.ts';
import { indexCommands } from '../../../src/conversation/registry/registry.ts';
import { keepNotice, noticesFor } from '../../../src/records/notices.ts';
import { openStore } from '../../../src/records/open.ts';
import { prefer } from '../../../src/records/preferences.ts';
import type { Store } from '../../../src/records/store.ts';
import { PATIENT } from '../../records/patience.ts';

const says = { en: 'x', es: 'x' };
const note = command(
  'note',
  action({
    purpose: says,
    seenBy: 'asker',
    options: { what: text(says) },
    answer: () => ({ kind: 'reply', headline: 'h', data: {}, blocks: [], cautions: [] }),
  }),
);
const at = new Date(Date.UTC(2026, 0, 1));

let store: Store;
beforeEach(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
  await prefer(store, 'bram', { language: 'en' });
  await keepNotice(store, 'bram', { group: 'g', id: '7', title: 'Dusk', at });
});
afterEach(() => store.close());

async function told(what: string, isLost = false): Promise<string> {
  const conversation: Conversation = {
    registry: indexCommands([note]),
    services: {
      store,
      workers: { run: () => Promise.reject(new Error('no workers here')), close: async () => {} },
    },
    key: new Uint8Array(32),
    onFault: fault => {
      throw fault;
    },
  };
  const answer = await receive(
    {
      id: '1234567890',
      at: at.getTime(),
      asker: { id: 'bram', name: 'Bram', manages: false, roles: [] },
      group: 'g',
      channel: 'c',
      language: 'en',
      kind: 'command',
      path: ['note'],
      given: { what },
    },
    conversation,
  );
  if (!isLost) await arrived(answer);
  return JSON.stringify(answer);
}

test('what did not reach a group comes along once', async () => {
  expect(await told('batter')).toContain('Dusk');
  expect(await noticesFor(store, 'bram')).toEqual([]);
});

test('an answer that never arrived has told nobody', async () => {
  expect(await told('batter', true)).toContain('Dusk');
  expect(await noticesFor(store, 'bram')).toHaveLength(1);
  expect(await told('batter')).toContain('Dusk');
  expect(await noticesFor(store, 'bram')).toEqual([]);
});

test('nothing stands before first aid, and what waits goes on waiting', async () => {
  const answer = await told('lye in my eye');
  expect(answer).toContain('lye-eye');
  expect(answer).not.toContain('Dusk');
  expect(await noticesFor(store, 'bram')).toHaveLength(1);
});

test('whose bar was taken out reads why', async () => {
  const about = { group: 'g', id: '8', title: 'Sea glass', reason: 'a copy', at };
  await keepNotice(store, 'bram', about);
  expect(await told('batter')).toContain('Your bar “Sea glass” was taken out by a steward: a copy.');
});
