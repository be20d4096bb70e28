import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { receive } from '../../src/conversation/receive.ts';
import { mostBatches, mostEvents } from '../../src/records/batches/batch.ts';
import { listBatches } from '../../src/records/batches/index.ts';
import { noteEvent } from '../../src/records/batches/mutations.ts';
import { batch, recipe } from '../../src/records/keys.ts';
import { mostRecipes } from '../../src/records/recipes/recipe.ts';
import { put } from '../../src/records/store.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

/* Refusals that no short conversation leads to: books that are full, and messages that a menu points at in vain. */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const at = Date.UTC(2026, 10, 20, 12);
const asked = async (member: string, line: string) => {
  const seat = { member, group: 'home', language: 'en', manages: false, roles: [], at } as const;
  const { answer } = await askLine(line, seat, conversation);
  return answer.kind === 'problem' ? { id: answer.id, text: answer.text } : { id: answer.kind };
};
/** Puts so many records where nobody reads them: how many there are is what counts. */
const fill = (keyOf: (n: string) => string, count: number) =>
  conversation.services.store.commit(
    Array.from({ length: count }, (_, n) => put(keyOf(String(n)), { v: 1 })),
  );
const pour = '/batch poured made:"1 cup ultramarine blue 1/4 tsp" name:Tide';

test('a batch more than are kept', async () => {
  await fill(n => batch('full-of-batches', n), mostBatches - 1);
  expect(await asked('full-of-batches', pour)).toEqual({ id: 'reply' });
  const told = await asked('full-of-batches', pour.replace('Tide', 'Foam'));
  expect(told).toEqual({ id: 'batches-full', text: expect.stringContaining('1000 batches are the most') });
});

test('a note more than are kept beside one batch', async () => {
  const member = 'full-of-notes';
  await asked(member, pour);
  const book = { store: conversation.services.store, member };
  const [poured] = await listBatches(book);
  for (let n = 0; n < mostEvents - 1; n += 1)
    await noteEvent(
      book,
      poured!,
      { kind: 'noted', text: 'thick' },
      { at: new Date(at + n), cause: `n${n}` },
    );
  expect(await asked(member, '/batch note text:"the last one" batch:Tide')).toEqual({ id: 'reply' });
  const told = await asked(member, '/batch note text:"one more" batch:Tide');
  expect(told).toEqual({ id: 'batch-events-full', text: expect.stringContaining('500 notes are the most') });
});

test('a recipe more than are kept', async () => {
  const save = '/plan oils:"olive 100%" size:"500 g oils" save-as:Loaf';
  await fill(n => recipe('full-of-recipes', n), mostRecipes - 1);
  expect(await asked('full-of-recipes', save)).toEqual({ id: 'reply' });
  const told = await asked('full-of-recipes', save.replace('Loaf', 'Slab'));
  expect(told).toEqual({ id: 'recipes-full', text: expect.stringContaining('remove one first') });
});

test('a message without words, and one without a picture, that a menu points at', async () => {
  const told = new Map<string, string>();
  for (const [n, entry] of [...conversation.registry.menuEntries.keys()].entries()) {
    const answer = await receive(
      {
        id: String(910_000_000_000 + n),
        at,
        asker: { id: 'pointing', name: 'Ana', manages: false, roles: [] },
        group: 'home',
        channel: 'bench',
        language: 'en',
        locale: 'en-US',
        kind: 'point',
        entry,
        message: { id: '1', channel: 'bench', text: '', attachments: [] },
      },
      conversation,
    );
    if (answer.kind === 'problem') told.set(answer.id, answer.text);
  }
  expect(told.get('question-empty')).toMatch(/nothing to answer/);
  expect(told.get('flaw-message-without-picture')).toMatch(/picture/);
});
