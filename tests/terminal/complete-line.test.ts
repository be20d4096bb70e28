import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { openStore } from '../../src/records/open.ts';
import { completeLine } from '../../src/terminal/complete-line.ts';
import { askLine, originOf } from '../../src/terminal/seat.ts';
import { PATIENT } from '../records/patience.ts';

const seat = { member: 'me', group: 'home', language: 'en', manages: true, roles: [] } as const;

describe('completing a line in the terminal', () => {
  let conversation: Conversation;
  beforeAll(async () => {
    conversation = {
      registry: await readCommands(new URL('../../commands/', import.meta.url)),
      services: {
        store: await openStore('sqlite::memory:', PATIENT),
        workers: { run: () => Promise.reject(new Error('no workers here')), close: () => Promise.resolve() },
      },
      key: new Uint8Array(32),
      onFault: () => {},
    };
  });
  afterAll(() => conversation.services.store.close());
  const complete = (typed: string) => completeLine(typed, originOf(seat), conversation);

  test('a slash and the beginning of a command give the commands', async () => {
    const [found, typed] = await complete('/sh');
    expect(typed).toBe('/sh');
    expect(found).toContain('/shelf add ');
    expect(found).not.toContain('/dose ');
  });

  test('after a command come its options, but not those there already', async () => {
    expect((await complete('/dose '))[0]).toContain('portion:');
    expect(await complete('/dose colourant:mica po')).toEqual([['portion:'], 'po']);
    expect((await complete('/dose colourant:mica '))[0]).not.toContain('colourant:');
  });

  test('a value is completed by the command itself, in quotes where it has spaces', async () => {
    const [found, typed] = await complete('/dose colourant:ultramarine');
    expect(typed).toBe('ultramarine');
    expect(found).toContain('ultramarine-blue ');
    await askLine('/shelf add item:"Gold dust" colourant:"gold mica"', seat, conversation);
    const [jars, begun] = await complete('/dose colourant:"Gold du');
    expect(begun).toBe('"Gold du');
    expect(jars[0]).toBe('"Gold dust" ');
  });

  test('a fixed choice is offered as it is', async () => {
    expect((await complete('/prefer language:'))[0]).toEqual(['en ', 'es ']);
  });
});
