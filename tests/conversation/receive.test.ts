import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { responseModeOf } from '../../src/conversation/answering/response-mode.ts';
import { action, command, followUp } from '../../src/conversation/command.ts';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { choice, picture, several, text, whole, yesNo } from '../../src/conversation/option.ts';
import type { Question } from '../../src/conversation/question.ts';
import { receive, suggest } from '../../src/conversation/receive.ts';
import { indexCommands } from '../../src/conversation/registry/registry.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { StoreFailure } from '../../src/records/failure.ts';
import { emptyStore } from './empty-store.ts';

const says = { en: 'x', es: 'x' };
const reply = (data: object): Reply => ({ kind: 'reply', headline: 'h', data, blocks: [], cautions: [] });

const poured = followUp({
  seenBy: 'asker',
  args: { cups: z.string() },
  answer: ({ cups }, { idempotencyKey }) => reply({ cups, idempotencyKey }),
});
const pour = command(
  'pour',
  action({
    purpose: says,
    seenBy: 'group',
    options: {
      what: text(says, { most: 10 }),
      cups: whole(says, { least: 1, most: 20 }).optional(),
      tool: choice({ says, choices: { whisk: says, spoon: says } }).optional(),
      warm: yesNo(says).optional(),
      photo: picture(says).optional(),
      with: several(says, { most: 3 }),
    },
    completes: { what: typed => [{ name: `${typed}!`, value: typed }] },
    answer: asked => ({
      ...reply(asked),
      choices: [{ kind: 'button', label: 'again', follow: poured.with({ cups: '2' }) }],
    }),
  }),
  { followUps: { poured } },
);
const broken = command(
  'broken',
  action({
    purpose: says,
    seenBy: 'group',
    options: {},
    answer: () => {
      throw new TypeError('secret detail');
    },
  }),
);
const lost = command(
  'lost',
  action({
    purpose: says,
    seenBy: 'group',
    options: {},
    answer: () => {
      throw new StoreFailure('full', 'write', 'no room');
    },
  }),
);
const ours = command(
  'ours',
  action({ purpose: says, seenBy: 'group', access: 'steward', options: {}, answer: () => reply({}) }),
);

const faults: unknown[] = [];
const conversation: Conversation = {
  registry: indexCommands([pour, broken, lost, ours]),
  services: {
    store: emptyStore,
    workers: { run: () => Promise.reject(new Error('no workers here')), close: async () => {} },
  },
  key: new Uint8Array(32),
  onFault: fault => faults.push(fault),
};

const origin = {
  id: '1234567890',
  at: Date.UTC(2026, 0, 1),
  asker: { id: 'bram', name: 'Bram', manages: false, roles: [] },
  group: 'g',
  channel: 'c',
  language: 'en' as const,
};
const asking = (path: string, given = {}): Question => ({
  ...origin,
  kind: 'command',
  path: path.split(' '),
  given,
});

describe('a question', () => {
  test('reaches its command with what was given, repeated options gathered', async () => {
    const answer = await receive(
      asking('pour', { what: 'batter', cups: 2, 'with-1': 'gold', 'with-3': 'blue' }),
      conversation,
    );
    expect(answer).toMatchObject({
      kind: 'reply',
      data: { what: 'batter', cups: 2, with: ['gold', 'blue'] },
    });
  });

  test.each([
    ['a required option is missing', {}, 'option-missing'],
    ['a required option is only spaces', { what: '   ' }, 'option-missing'],
    ['an option is not one of ours', { what: 'x', colour: 'red' }, 'option-unknown'],
    ['a text is too long', { what: 'x'.repeat(11) }, 'option-too-long'],
    ['a number is a word', { what: 'x', cups: 'two' }, 'option-not-a-number'],
    ['a number is out of range', { what: 'x', cups: 21 }, 'option-out-of-range'],
    ['a whole number is not whole', { what: 'x', cups: 1.5 }, 'option-out-of-range'],
    ['a choice is not offered', { what: 'x', tool: 'drill' }, 'option-not-offered'],
    ['yes or no is neither', { what: 'x', warm: 'maybe' }, 'option-not-yes-or-no'],
    ['a picture is a text', { what: 'x', photo: 'bar.jpg' }, 'option-needs-a-file'],
  ])('is answered with one sentence when %s', async (_, given, id) => {
    const answer = await receive(asking('pour', given), conversation);
    expect(answer).toMatchObject({ kind: 'problem', id });
  });

  test('for a command that is not there names the nearest', async () => {
    const answer = await receive(asking('poor'), conversation);
    expect(answer).toMatchObject({
      kind: 'problem',
      id: 'command-unknown',
      text: expect.stringContaining('/pour'),
    });
  });

  test('that hits a fault of ours shows a reference, and never what went wrong inside', async () => {
    const answer = await receive(asking('broken'), conversation);
    expect(answer).toMatchObject({
      kind: 'problem',
      id: 'our-fault',
      text: expect.stringContaining('567890'),
    });
    expect(JSON.stringify(answer)).not.toContain('secret');
    expect(faults.at(-1)).toBeInstanceOf(TypeError);
  });

  test('whose record could not be kept says that nothing was saved', async () => {
    expect(await receive(asking('lost'), conversation)).toMatchObject({
      kind: 'problem',
      id: 'records-not-saved',
    });
  });

  test('for stewards is refused to others and answered to those who manage the group', async () => {
    expect(await receive(asking('ours'), conversation)).toMatchObject({ id: 'stewards-only' });
    const question = { ...asking('ours'), asker: { ...origin.asker, manages: true } };
    expect(await receive(question, conversation)).toMatchObject({ kind: 'reply' });
  });

  test('in Spanish is answered in Spanish', async () => {
    const answer = await receive({ ...asking('pour'), language: 'es' }, conversation);
    expect(answer).toMatchObject({ text: expect.stringContaining('Falta') });
  });
});

describe('a button', () => {
  const press = async () => {
    const answer = await receive(asking('pour', { what: 'x' }), conversation);
    if (answer.kind !== 'reply') throw new Error(answer.kind);
    return answer.choices?.[0]?.follow ?? '';
  };

  test('pressed twice has one effect id, which is not that of either press', async () => {
    const sealed = await press();
    const pressed = (id: string) =>
      receive({ ...origin, id, kind: 'follow', sealed, values: [], fields: {} }, conversation);
    const [first, second] = [await pressed('1'), await pressed('2')];
    expect(first).toMatchObject({ data: { cups: '2' } });
    expect(second).toEqual(first);
  });

  test('in other hands is refused, and that is known before answering', async () => {
    const asker = { ...origin.asker, id: 'nele' };
    const question: Question = {
      ...origin,
      asker,
      kind: 'follow',
      sealed: await press(),
      values: [],
      fields: {},
    };
    expect(await responseModeOf(question, conversation)).toMatchObject({ seenBy: 'asker', pace: 'quick' });
    expect(await receive(question, conversation)).toMatchObject({ id: 'follow-up-not-yours' });
  });
});

test('suggestions come from the command, and none from where there are none', async () => {
  const typing = (option: string) =>
    ({ ...origin, kind: 'typing', path: ['pour'], given: {}, option, typed: 'ul' }) as const;
  expect(await suggest(typing('what'), conversation)).toEqual([{ name: 'ul!', value: 'ul' }]);
  expect(await suggest(typing('tool'), conversation)).toEqual([]);
});

test('two commands of one name are a fault at start', () => {
  expect(() => indexCommands([pour, pour])).toThrow(/two things are called pour/);
});
