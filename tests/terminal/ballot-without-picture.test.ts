import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { askLine } from '../../src/terminal/seat.ts';
import type { Workers } from '../../src/workers/workers.ts';
import { photoOf } from '../commands/challenge/room.ts';
import { openConversation } from '../sets/open-conversation.ts';

let open: Awaited<ReturnType<typeof openConversation>>;
let folder: string;
beforeAll(async () => {
  open = await openConversation();
  folder = await mkdtemp(join(tmpdir(), 'ballot-'));
  await writeFile(join(folder, 'bar.jpg'), (await photoOf(['#3f6fa8'])).bytes);
});
afterAll(async () => {
  await open[Symbol.asyncDispose]();
  await rm(folder, { recursive: true, force: true });
});

test('a ballot is shown and cast while the group’s pictures are all taken up', async () => {
  const { workers } = open.services;
  const crowded: Workers = Object.create(workers, {
    run: {
      value: (...job: Parameters<Workers['run']>) =>
        job[0] === 'challengeBars'
          ? Promise.reject(new Refusal('workers-busy', { full: 'group', seconds: 9 }))
          : workers.run(...job),
    },
  });
  const conversation: Conversation = { ...open, services: { ...open.services, workers: crowded } };
  const ask = async (member: string, day: number, line: string) => {
    const at = Date.UTC(2026, 11, day, 10);
    const seat = {
      member,
      group: 'bench',
      language: 'en',
      manages: member === 'odile',
      roles: [],
      at,
    } as const;
    const { answer } = await askLine(line, seat, conversation);
    return answer.kind === 'reply' ? answer : { headline: `${answer.kind}`, choices: [] };
  };
  await ask('odile', 1, '/challenge open title:Dusk entries-until:"in 2 days" votes-until:"in 4 days"');
  for (const maker of ['ana', 'bram'])
    await ask(
      maker,
      2,
      `/challenge enter photo:${join(folder, 'bar.jpg')} title:${maker} colourants:"gold mica"`,
    );
  const ballot = await ask('cleo', 4, '/challenge vote');
  expect(ballot.headline).toMatch(/“Dusk”/);
  const menu = ballot.choices?.find(({ kind }) => kind === 'menu');
  expect(
    (await ask('cleo', 4, `choose ${menu?.follow} ${menu?.kind === 'menu' ? menu.items[0]?.value : ''}`))
      .headline,
  ).toMatch(/^Saved: 1 bar/);
  expect((await ask('dana', 4, '/challenge vote ranking:"1, 2"')).headline).toMatch(/^Saved: 2 bars/);
});
