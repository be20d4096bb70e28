import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { isCallForHelp } from '../../../src/conversation/first-aid/call-for-help.ts';
import type { Given } from '../../../src/conversation/question.ts';
import { receive } from '../../../src/conversation/receive.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import { EMERGENCY_IDS } from '../../../src/engine/hazards/index.ts';
import { openStore } from '../../../src/records/open.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { PATIENT } from '../../records/patience.ts';
import { sharedWorkers } from '../../workers/shared.ts';

const registry = await readCommands(new URL('../../../commands/', import.meta.url));
type Language = 'en' | 'es';
let conversation: Conversation;
beforeAll(async () => {
  conversation = {
    registry,
    services: { store: await openStore('sqlite::memory:', PATIENT), workers: sharedWorkers() },
    key: new Uint8Array(32).fill(5),
    onFault: fault => {
      throw fault;
    },
  };
});
afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
});

let next = 0;
const run = (path: string, given: Given = {}, language: Language = 'en') =>
  receive(
    {
      id: String(910_000_000_000 + next++),
      at: Date.UTC(2026, 1, 3),
      asker: { id: 'm1', name: 'Ana', manages: false, roles: [] },
      group: 'g1',
      channel: 'bench',
      language,
      locale: language === 'en' ? 'en-US' : 'es-ES',
      kind: 'command',
      path: path.split(' '),
      given,
    },
    conversation,
  );
const dataOf = (answer: Awaited<ReturnType<typeof run>>) => (answer.kind === 'reply' ? answer.data : answer);

describe('/first-aid', () => {
  test.each(EMERGENCY_IDS)('by its id %s, and by its name in the list', async id => {
    expect(dataOf(await run('first-aid', { what: id }))).toMatchObject({ emergency: { id } });
    for (const language of ['en', 'es'] as const) {
      const what = wordsIn(language).firstAid.names[id];
      expect(dataOf(await run('first-aid', { what }, language))).toMatchObject({ emergency: { id } });
    }
  });

  test('reads free words', async () => {
    const words = { what: 'oil caught fire on the stove' };
    expect(dataOf(await run('first-aid', words))).toMatchObject({ emergency: { id: 'fire' } });
  });

  test.each([undefined, 'something odd', '🙂', 'constructor'])(
    'shows the whole list and the number to call for %s',
    async what => {
      const answer = await run('first-aid', what === undefined ? {} : { what });
      expect(dataOf(answer)).toEqual({ emergencies: EMERGENCY_IDS });
      expect(JSON.stringify(answer)).toContain('call 911');
    },
  );
});

describe('a call for help under a name that no command has', () => {
  test.each(['firstaid', 'emergency', 'emergencia', 'help-me', 'help me', 'first aid', 'sos', 'Ayuda'])(
    '/%s leads to first aid',
    async path => {
      expect(dataOf(await run(path))).toEqual({ emergencies: EMERGENCY_IDS });
      expect(dataOf(await run(path, { what: 'oops' }))).toEqual({ emergencies: EMERGENCY_IDS });
    },
  );
  test.each(['dosing', 'helper', 'firs', 'emergent pattern', 'aids'])('/%s does not', path => {
    expect(isCallForHelp(path)).toBe(false);
  });
});

describe('an alarm taken back', () => {
  test.each([
    ['en', 'false alarm, lye splashed in my eye', 'If somebody is hurt: /first-aid'],
    ['es', 'falsa alarma, el molde se pegó', 'Si hay alguien herido: /first-aid'],
  ] as const)('keeps the way to first aid in %s', async (language, words, line) => {
    expect(JSON.stringify(await run('diagnose', { words }, language))).toContain(line);
    expect(JSON.stringify(await run('dose', { colourant: words }, language))).toContain(line);
  });
  test('is not kept where none was', async () => {
    expect(JSON.stringify(await run('diagnose', { words: 'white powder on top' }))).not.toContain(
      'somebody is hurt',
    );
  });
});

const reviewed = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '../../engine/hazards/emergencies/emergencies-reviewed.json'),
    'utf8',
  ),
) as { emergencies: { text: string; id: string; language: Language }[] };

test('what a maker typed is answered with first aid, before any diagnosis', async () => {
  for (const { text, id, language } of reviewed.emergencies) {
    const data = dataOf(await run('diagnose', { words: text }, language));
    expect(`${text}: ${JSON.stringify(data)}`).toContain(`${text}: {"emergency":{"id":"${id}"`);
  }
});
