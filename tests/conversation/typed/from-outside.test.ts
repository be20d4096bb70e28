import { expect, test } from 'vitest';
import { z } from 'zod';
import { runBackup } from '../../../src/backup.ts';
import type { Question } from '../../../src/conversation/question.ts';
import { receive } from '../../../src/conversation/receive.ts';
import { validArgs } from '../../../src/conversation/typed/validate.ts';
import { matchColour } from '../../../src/engine/colour/matching/match.ts';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { readPowder } from '../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { refusalOf } from '../../engine/batch/asked.ts';
import { openConversation } from '../../sets/open-conversation.ts';

test('a button of an older version, signed by us, is said to be old', () => {
  expect(refusalOf(() => validArgs(z.object({ cups: z.string() }), { spoons: '2' })).id).toBe(
    'follow-up-invalid',
  );
});

test.for([
  ['backup', [], 'npm run backup'],
  ['restore', [], 'npm run restore'],
  ['move', ['--from', 'sqlite:a'], 'npm run move'],
  ['move', ['--whither'], 'npm run move'],
] as const)('%s %j is told how', async ([mode, args, says]) => {
  const say = wordsIn('en');
  const refusal = await runBackup(mode, args, { store: 'sqlite::memory:', say }).catch(error => error);
  expect(refusal).toMatchObject({ id: 'backup-how', values: { mode } });
  expect(say.refusal(refusal)).toContain(says);
});

test('a powder without an amount is asked for one', () => {
  expect(refusalOf(() => readPowder('rose clay'))).toMatchObject({
    id: 'powder-without-amount',
    values: { text: 'rose clay' },
  });
});

test('no more colourants in a mix than can be told apart in spoons', () => {
  const candidate = {
    id: 'blue',
    optics: [],
    gramsPerTeaspoon: 2.6,
    ceilingTspPerCup: 0.5,
    white: false,
    risk: 0,
  };
  const request = { target: labOfHex('#3f6fa8'), candidates: [candidate], most: 9 };
  expect(refusalOf(() => matchColour(request as never)).id).toBe('match-too-many-colourants');
});

const asks = (path: readonly string[], more: Partial<Question> = {}): Question =>
  ({
    kind: 'command',
    path,
    given: {},
    id: '1',
    at: Date.UTC(2026, 10, 20, 12),
    asker: { id: 'odile', name: 'odile', manages: false, roles: [], joinedAt: 0 },
    group: 'elsewhere',
    channel: undefined,
    language: 'en',
    ...more,
  }) as Question;

test('what belongs to a group is not done where a member only brought us along', async () => {
  await using conversation = await openConversation();
  const here = { letInBy: 'member', lacks: [], lacksBeside: [], betterPlaces: () => [] } as const;
  expect(await receive(asks(['challenge', 'list'], { here }), conversation)).toMatchObject({
    kind: 'problem',
    id: 'group-only',
    text: expect.stringContaining('brought me along'),
  });
});

test('a member is picked, not typed', async () => {
  await using conversation = await openConversation();
  const question = { ...asks(['challenge', 'history']), given: { member: 'Odile' } };
  expect(await receive(question as Question, conversation)).toMatchObject({
    kind: 'problem',
    id: 'option-names-nobody',
    text: expect.stringContaining('member of this group'),
  });
});
