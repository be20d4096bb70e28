import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { responseModeOf } from '../../../src/conversation/answering/response-mode.ts';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { firstAidReply } from '../../../src/conversation/first-aid/first-aid.ts';
import { seal } from '../../../src/conversation/follow-ups/follow.ts';
import type { Given, Question } from '../../../src/conversation/question.ts';
import { firstAidForWords, receive } from '../../../src/conversation/receive.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import type { Answer } from '../../../src/conversation/reply.ts';
import { EMERGENCY_IDS, type EmergencyId } from '../../../src/engine/hazards/index.ts';
import { openStore } from '../../../src/records/open.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { PATIENT } from '../../records/patience.ts';
import { WHOLE } from '../../walk.ts';
import { sharedWorkers } from '../../workers/shared.ts';
import { HAZARD_ENTRIES } from '../hazard-entries.ts';
import { HAZARDS } from '../hazard-table.ts';

const registry = await readCommands(new URL('../../../commands/', import.meta.url));
const languages = ['en', 'es'] as const;
type Language = (typeof languages)[number];
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
const at = Date.UTC(2026, 1, 3);

const origin = (language: Language) => ({
  id: String(900_000_000_000 + next++),
  at,
  asker: { id: 'm1', name: 'Ana', manages: true, roles: [] },
  group: 'g1',
  channel: 'bench',
  language,
  locale: language === 'en' ? 'en-US' : 'es-ES',
});

const run = (path: string, given: Given, language: Language = 'en') =>
  receive({ ...origin(language), kind: 'command', path: path.split(' '), given }, conversation);

const emergencyOf = (answer: Answer) =>
  answer.kind === 'reply'
    ? (answer.data as { emergency?: { id: EmergencyId } }).emergency?.id
    : `${answer.kind} ${answer.kind === 'problem' ? answer.id : ''}`;

const told = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../engine/hazards/emergencies/emergencies-own.json'), 'utf8'),
) as { emergencies: { text: string; id: EmergencyId; language: string }[] };

const reviewed = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '../../engine/hazards/emergencies/emergencies-reviewed.json'),
    'utf8',
  ),
) as typeof told;

const sayingOf = (id: EmergencyId, language: Language) =>
  [...told.emergencies, ...reviewed.emergencies].find(
    one => one.id === id && one.language === language && one.text.length <= 100,
  )!.text;

const entries = [...registry.actions].flatMap(([path, action]) =>
  action.options.filter(({ kind }) => kind === 'text').map(({ name }) => ({ path, name })),
);

const keyOf = ({ path, name }: { path: string; name: string }) => `${path} ${name.replace(/-\d$/, '')}`;

/**
 * In the usual run each emergency goes through every fifth way, another fifth than the one before it, so that each way
 * meets several, in both languages: what is read does not hang on where it came in.
 */
const waysFor = <Way>(turn: number, ways: readonly Way[]): readonly Way[] =>
  WHOLE ? ways : ways.filter((_, at) => (at + turn) % 5 === 0);

test('every text option of every command is in the table of entries, and no other', () => {
  expect([...new Set(entries.map(keyOf))].sort()).toEqual(Object.keys(HAZARD_ENTRIES).sort());
});

test('every emergency is a hazard of all words', () => {
  for (const id of EMERGENCY_IDS)
    expect(HAZARDS.find(hazard => hazard.id === id)).toMatchObject({
      must: { say: 'first-aid' },
      entries: ['words'],
    });
  for (const kinds of Object.values(HAZARD_ENTRIES)) expect(kinds).toContain('words');
});

describe('emergencies, through every way that words come in', () => {
  const pairs = EMERGENCY_IDS.flatMap(id => languages.map(language => ({ id, language }))).map(
    (pair, at) => ({
      ...pair,
      at,
    }),
  );

  test('each way meets emergencies of either language in the usual run', () => {
    for (const [way] of entries.entries()) {
      const met = pairs.filter(({ at }) => waysFor(at, entries).includes(entries[way]!));
      expect(met.length).toBeGreaterThanOrEqual(4);
      expect(new Set(met.map(({ language }) => language)).size).toBe(2);
    }
  });

  test.each(pairs)('$id in $language, through text options', async ({ id, language, at }) => {
    const text = sayingOf(id, language);
    for (const { path, name } of waysFor(at, entries)) {
      const answer = await run(path, { [name]: text }, language);
      expect(`${path} ${name}: ${emergencyOf(answer)}`).toBe(`${path} ${name}: ${id}`);
      expect(answer.language).toBe(language);
    }
  });

  test.each(pairs)('$id in $language, through every menu entry', async ({ id, language }) => {
    for (const entry of registry.menuEntries.keys()) {
      const message = { id: '1', channel: 'c', text: sayingOf(id, language), attachments: [] };
      const answer = await receive({ ...origin(language), kind: 'point', entry, message }, conversation);
      expect(emergencyOf(answer)).toBe(id);
    }
  });

  test.each(pairs)(
    '$id in $language, through the fields of follow-ups',
    async ({ id, language, at: turn }) => {
      for (const [name, followUp] of waysFor(turn, [...registry.followUps])) {
        const holder = { group: 'g1', asker: 'm1' };
        const args = followUp.argNames.map(() => '1');
        const sealed = seal({ followUp, args }, name, { key: conversation.key, holder, at });
        const fields = { anything: sayingOf(id, language) };
        const asked: Question = { ...origin(language), kind: 'follow', sealed, values: [], fields };
        expect(emergencyOf(await receive(asked, conversation))).toBe(id);
        expect(await responseModeOf(asked, conversation)).toMatchObject({
          seenBy: 'asker',
          pace: 'quick',
          replaces: false,
        });
      }
    },
  );

  test('a line that is no command, and an unknown command', async () => {
    expect(emergencyOf(await run('lye in my eye help', {}))).toBe('lye-eye');
    const note = await firstAidForWords('me cayó sosa en el ojo', origin('es'), conversation);
    expect(note && emergencyOf(note)).toBe('lye-eye');
    expect(await firstAidForWords('lovely soap', origin('en'), conversation)).toBeUndefined();
  });

  test('the answer is numbered, names the number to call, and has nothing of a diagnosis', async () => {
    for (const language of languages)
      for (const id of EMERGENCY_IDS) {
        const answer = await run('diagnose', { words: sayingOf(id, language) }, language);
        if (answer.kind !== 'reply') throw new Error('no reply');
        const rows = answer.blocks.find(({ kind }) => kind === 'rows');
        expect(rows).toMatchObject({ numbered: true });
        const text = JSON.stringify(answer.blocks);
        const whom = { en: /911 \(US|animal poison line/, es: /112 \(ES|toxicología animal/ };
        expect(text).toMatch(whom[language]);
        expect(`${answer.headline} ${text}`).not.toMatch(/\d+ %:/);
        expect(text).not.toMatch(/undefined/);
        expect(answer.choices).toHaveLength(1);
      }
  });

  test('never neutralising, never making vomit: what is said of vinegar and vomiting is a no', async () => {
    const steps = languages.flatMap(language =>
      EMERGENCY_IDS.flatMap(id => wordsIn(language).firstAid.steps[id]({ call: 'C', poison: 'P' })),
    );
    const soured = steps
      .filter(step => /vinegar|vinagre|lemon|limón|vomit|vómito/i.test(step))
      .filter(step => !/never meet|no se juntan nunca/.test(step));
    expect(soured.length).toBeGreaterThan(10);
    for (const step of soured) expect(step).toMatch(/\b(?:no|not|nada|nunca|sin|ni)\b/i);
  });

  test('the button shows it to everyone', async () => {
    const answer = await run('diagnose', { words: sayingOf('lye-eye', 'en') });
    const [choice] = (answer.kind === 'reply' && answer.choices) || [];
    const asked: Question = {
      ...origin('en'),
      kind: 'follow',
      sealed: choice!.follow,
      values: [],
      fields: {},
    };
    expect(await responseModeOf(asked, conversation)).toMatchObject({ seenBy: 'group' });
    expect(emergencyOf(await receive(asked, conversation))).toBe('lye-eye');
  });
});

test('first aid shown in doubt says so first, and how to take it back; told outright it does not', async () => {
  for (const [language, doubtful, outright] of [
    [
      'en',
      'gran thought it was pudding and ate a spoonful straight from the mould',
      'lye splashed in my eye',
    ],
    ['es', 'la tetera de camping echa espuma gris y quema, adentro tiene soda', 'me salpicó sosa en el ojo'],
  ] as const) {
    const say = wordsIn(language);
    const inDoubt = await firstAidForWords(doubtful, origin(language), conversation);
    if (inDoubt?.kind !== 'reply') throw new Error('no first aid in doubt');
    expect(inDoubt.headline.startsWith(say.firstAid.ifHurt)).toBe(true);
    expect(inDoubt.blocks[0]).toEqual({ kind: 'text', text: say.firstAid.misread });
    const told = await firstAidForWords(outright, origin(language), conversation);
    if (told?.kind !== 'reply') throw new Error('no first aid');
    expect(told.headline).not.toContain(say.firstAid.ifHurt);
    expect(told.blocks.at(-1)).toEqual({ kind: 'text', text: say.firstAid.misread });
  }
});

describe('first aid speaks the language that is typed', () => {
  const cases = [
    ['me cayó sosa en el ojo y me quema mucho', 'en', 'es'],
    ['the lye splashed in my eye and it burns', 'es', 'en'],
    ['sosa ojo', 'en', 'en'],
  ] as const;
  test.each(cases)('%s, from a member set to %s: %s', async (text, set, spoken) => {
    const headline = wordsIn(spoken).firstAid.headlines['lye-eye'];
    const note = await firstAidForWords(text, origin(set), conversation);
    const typed = await run('diagnose', { words: text }, set);
    for (const answer of [note, typed]) {
      if (answer?.kind !== 'reply') throw new Error('no first aid');
      expect(answer.headline).toContain(headline);
      expect(answer.language).toBe(spoken);
    }
    const [choice] = (typed.kind === 'reply' && typed.choices) || [];
    const pressed: Question = {
      ...origin(set),
      kind: 'follow',
      sealed: choice!.follow,
      values: [],
      fields: {},
    };
    const shared = await receive(pressed, conversation);
    expect(shared.kind === 'reply' && shared.headline).toBe(headline);
  });

  test('what is clearly written in the other language is answered in it, a name or two is not', async () => {
    const answer = await run('diagnose', { words: 'el jabón tiene manchas en la superficie' }, 'en');
    expect(answer.language).toBe('es');
    expect((await run('diagnose', { words: 'manchas' }, 'en')).language).toBe('en');
  });
});

describe('several emergencies at once', () => {
  const shown = (ids: readonly EmergencyId[], language: Language) => {
    const { blocks } = firstAidReply(ids, { say: wordsIn(language), locale: 'en-US' });
    return {
      lists: blocks.filter(({ kind }) => kind === 'rows').length,
      lines: blocks.flatMap(block => (block.kind === 'text' ? [block.text] : [])),
    };
  };

  test('one list, and a short line for each further one', () => {
    expect(shown(['lye-eye', 'lye-skin'], 'en')).toEqual({
      lists: 1,
      lines: ['Also: lye on skin: running water, 20 minutes.'],
    });
    for (const language of languages)
      for (const first of EMERGENCY_IDS) {
        const all = shown([first, ...EMERGENCY_IDS.filter(id => id !== first)], language);
        expect(all.lists).toBe(1);
        expect(all.lines).toHaveLength(2);
        for (const line of all.lines) expect(line.length).toBeLessThanOrEqual(90);
      }
  });

  test('what the first already says is left out', () => {
    expect(shown(['lye-eruption', 'lye-skin'], 'en').lines).toEqual([]);
    expect(shown(['lye-skin', 'skin-reaction'], 'es').lines).toEqual([]);
    expect(shown(['lye-skin', 'lye-eruption'], 'es').lines).toHaveLength(1);
  });

  test('in words: the eye in full, the jug in a line', async () => {
    const words = 'the lye jug is boiling over and it went in my eye';
    const answer = await run('diagnose', { words });
    if (answer.kind !== 'reply') throw new Error('no first aid');
    expect(emergencyOf(answer)).toBe('lye-eye');
    expect(answer.blocks.filter(({ kind }) => kind === 'rows')).toHaveLength(1);
    expect(answer.blocks).toContainEqual({
      kind: 'text',
      text: 'Also: lye out of control: step back, add nothing.',
    });
  });
});
