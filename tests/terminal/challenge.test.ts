import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readAskArguments } from '../../src/terminal/ask.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { jsonOf } from '../../src/terminal/shown.ts';
import { photoOf } from '../commands/challenge/room.ts';
import { openConversation } from '../sets/open-conversation.ts';
import { isDue } from '../walk.ts';

const main = new URL('../../src/main.js', import.meta.url).pathname;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rehearsal-'));
  await writeFile(join(folder, 'bar.jpg'), (await photoOf(['#3f6fa8'])).bytes);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const argumentsOf = (member: string, at: string, line: string, more: readonly string[] = []) => [
  '--json',
  '--member',
  member,
  '--at',
  at,
  '--pictures',
  folder,
  ...more,
  line,
];
const store = () => `sqlite:${join(folder, 'records.sqlite')}`;

/** Asks as a member at a time, in a process of its own; gives the answer as `ask --json` prints it. */
async function askApart(...[member, at, line, more]: Parameters<typeof argumentsOf>) {
  const args = [main, 'ask', ...argumentsOf(member, at, line, more)];
  const { stdout } = await promisify(execFile)(process.execPath, args, {
    env: { ...process.env, TINTMOOT_STORE: store() },
  });
  return JSON.parse(stdout);
}

/** The same in this process, over the store opened anew, so that all that goes on is what was written there. */
async function ask(member: string, at: string, line: string) {
  await using conversation = await openConversation(store());
  const { seat, pictures } = readAskArguments(argumentsOf(member, at, line))!;
  return JSON.parse(JSON.stringify(await jsonOf(await askLine(line, seat, conversation), pictures)));
}

const whenDue = isDue('challenge at the terminal') ? test : test.todo;

whenDue(
  'a whole challenge runs in the terminal: opened, entered, voted by numbers and by menu, closed when looked at',
  async () => {
    const opened = await askApart(
      'odile',
      '2026-12-01T10:00Z',
      '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days"',
      ['--steward'],
    );
    expect(opened).toMatchObject({ ok: true, data: { phase: 'entering' } });
    const photo = join(folder, 'bar.jpg');
    const enter = (member: string, at: string, title: string) =>
      ask(member, at, `/challenge enter photo:${photo} title:${title} colourants:"ultramarine blue"`);
    expect(await enter('ana', '2026-12-01T11:00Z', 'Deep')).toMatchObject({ ok: true, data: { number: 1 } });
    expect(await enter('bea', '2026-12-01T12:00Z', 'Pale')).toMatchObject({ ok: true, data: { number: 2 } });

    const voting = '2026-12-04T12:00Z';
    expect(await ask('cleo', voting, '/challenge vote ranking:"2,1"')).toMatchObject({
      data: { ranking: [[2], [1]] },
    });
    const ballot = await ask('ana', voting, '/challenge vote');
    const [menu] = ballot.choices;
    expect(menu.items.map(({ value }: { value: string }) => value)).toEqual(['2']);
    expect(await ask('ana', voting, `choose ${menu.follow} 2`)).toMatchObject({ data: { ranking: [[2]] } });
    expect(await ask('cleo', voting, '/challenge results')).toMatchObject({
      ok: false,
      id: 'challenge-not-now',
    });

    const results = await ask('cleo', '2026-12-05T12:00Z', '/challenge results');
    expect(results.headline).toBe('First in “Blue hour”: “Pale” by bea');
    expect(results.data.tally).toMatchObject({ ballots: 2, method: 'schulze' });
    expect(await ask('bea', '2026-12-06T12:00Z', '/challenge history')).toMatchObject({ data: { wins: 1 } });
  },
);
