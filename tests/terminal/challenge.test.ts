import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { photoOf } from '../commands/challenge/room.ts';

const main = new URL('../../src/main.ts', import.meta.url).pathname;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rehearsal-'));
  await writeFile(join(folder, 'bar.jpg'), (await photoOf(['#3f6fa8'])).bytes);
}, 60_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Asks as a member at a time; gives the answer as `ask --json` prints it. */
async function ask(member: string, at: string, line: string, ...more: readonly string[]) {
  const args = [main, 'ask', '--json', '--member', member, '--at', at, '--pictures', folder, ...more, line];
  const env = { ...process.env, TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}` };
  const { stdout } = await promisify(execFile)(process.execPath, args, { env }).catch(
    (failed: { stdout: string }) => failed,
  );
  return JSON.parse(stdout);
}

test('a whole challenge runs in the terminal: opened, entered, voted by numbers and by menu, closed when looked at', async () => {
  const opened = await ask(
    'odile',
    '2026-12-01T10:00Z',
    '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days"',
    '--steward',
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
}, 120_000);
