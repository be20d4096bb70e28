import { expect, test } from 'vitest';
import { type AskReply, leansOnTalk, shown, type Understood } from '../../../commands/ask/understood.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';

/* What answers of /ask tell programs: our own form, which buttons, talks and other programs read. */

const reply = (understood: Understood, more: Partial<AskReply> = {}): AskReply => ({
  kind: 'reply',
  headline: '',
  data: { grams: 3 },
  blocks: [],
  cautions: [],
  understood,
  ...more,
});
const { facts } = readQuestion('');

test('what was understood stands beside what the command tells', () =>
  expect(shown(reply({ kind: 'lye', lye: 'scale', chance: 0.9 }))).toEqual({
    kind: 'reply',
    headline: '',
    data: { grams: 3, understood: { lye: 'scale', chance: 0.9 } },
    blocks: [],
    cautions: [],
  }));

test.each<[string, Understood, object]>([
  [
    'a question back',
    { kind: 'asked-back', command: 'ask', given: {} },
    { command: 'ask', given: {}, askedBack: true },
  ],
  ['nothing', { kind: 'nothing', facts }, { facts, nothing: true }],
  ['a doubt', { kind: 'doubt', facts }, { facts, job: 'doubt', command: 'help' }],
])('%s says so', (_, understood, told) =>
  expect(shown(reply(understood)).data).toEqual({ grams: 3, understood: told }),
);

test('first aid and a "no" are understood as nothing else', () => {
  expect(shown(reply({ kind: 'first-aid' })).data).toEqual({ grams: 3 });
  expect(shown(reply({ kind: 'refused' }, { short: { problem: 'scent-barred' } })).data).toEqual({
    grams: 3,
    problem: 'scent-barred',
  });
});

test('what a command lacks is told, and what only the talk goes on from is not', () => {
  const dose: Understood = { kind: 'command', job: 'dose', command: 'dose', given: {} };
  const told = shown(
    reply(dose, { short: { lacking: ['colourant'] }, doses: [], flaw: { causes: [], doNotUse: false } }),
  );
  expect(told).not.toHaveProperty('doses');
  expect(told).not.toHaveProperty('flaw');
  expect(told.data).toEqual({
    grams: 3,
    lacking: ['colourant'],
    understood: { job: 'dose', command: 'dose', given: {} },
  });
});

test('an answer that leans on the talk says so', () =>
  expect(shown(leansOnTalk(reply({ kind: 'lye', lye: 'scale' }))).data).toMatchObject({
    understood: { lye: 'scale', leans: true },
  }));
