import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Snapshot } from '../../src/page/model.ts';
import { HOME } from '../../src/page/seats.ts';
import { isDue } from '../walk.ts';

const main = new URL('../../src/main.js', import.meta.url).pathname;

let folder: string;
let running: ChildProcess[];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  running = [];
});
afterEach(async () => {
  for (const child of running) child.kill('SIGKILL');
  await rm(folder, { recursive: true, force: true });
});

/** `npm start` as somebody has it who has no chat server, with or without something piped in. */
function start(piped?: string, args: readonly string[] = []) {
  const child = spawn(process.execPath, ['--disable-warning=ExperimentalWarning', main, ...args], {
    env: {
      ...process.env,
      DISCORD_TOKEN: '',
      LANG: 'en_GB.UTF-8',
      TINTMOOT_PORT: '0',
      TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}`,
    },
    stdio: [piped === undefined ? 'ignore' : 'pipe', 'pipe', 'pipe'],
  });
  running.push(child);
  const said = { out: '', err: '' };
  const { promise: url, resolve } = Promise.withResolvers<string>();
  child.stdout?.on('data', piece => {
    said.out += String(piece);
    const [address] = /http:\/\/127\.0\.0\.1:\d+\/[0-9a-f]+(?=\s)/.exec(said.out) ?? [];
    if (address) resolve(address);
  });
  child.stderr?.on('data', piece => {
    said.err += String(piece);
  });
  if (piped !== undefined) child.stdin?.end(piped);
  return { child, said, url, exited: once(child, 'exit') as Promise<[number | null, string | null]> };
}

const seat = new URLSearchParams(HOME);

/** What a page that opens now is told first; waits until the assistant answers. */
async function snapshotAt(url: string): Promise<Snapshot> {
  const response = await fetch(`${url}/changes?${seat}`);
  let heard = '';
  let snapshot: Snapshot | undefined;
  for await (const piece of response.body ?? []) {
    heard += Buffer.from(piece).toString();
    const changes = heard.split('\n\n').slice(0, -1);
    for (const line of changes) {
      const change = JSON.parse(line.replace(/^data: /, '')) as Change;
      if (change.kind === 'everything') snapshot = change.snapshot;
      if (snapshot && (snapshot.ready || change.kind === 'ready')) return snapshot;
    }
  }
  throw new Error('the room closed before it was ready');
}

async function run(url: string, command: string, options: Record<string, string>) {
  const body = new FormData();
  body.set('say', JSON.stringify({ do: 'run', command, options, line: command }));
  return await (await fetch(`${url}/actions?${seat}`, { method: 'POST', body })).json();
}

describe('npm start without a chat server', () => {
  const whenDue = isDue('room at home') ? test : test.todo;

  whenDue(
    'opens the room, answers in it, ends well when told to stop, and finds it as it was left, with the same shelf',
    async () => {
      const first = start();
      const address = await first.url;
      expect((await snapshotAt(address)).messages).toEqual([]);
      expect(await run(address, '/shelf add', { item: 'Plum', amount: '25 g' })).toEqual({ done: true });
      first.child.kill('SIGTERM');
      expect(await first.exited).toEqual([0, null]);
      expect(first.said.err).toBe('');
      expect(await readdir(join(folder, 'room'))).not.toContain('open-in');

      // It stays open when nothing is piped in.
      const second = start('');
      const again = await second.url;
      const before = await snapshotAt(again);
      expect(before.messages).toHaveLength(1);
      expect(before.messages[0]).toMatchObject({ asked: { by: 'Me', line: '/shelf add' }, onlyYou: true });
      await run(again, '/shelf list', {});
      expect(JSON.stringify((await snapshotAt(again)).messages.at(-1)?.components)).toContain('Plum');
      expect((await fetch(again)).status).toBe(200);
      second.child.kill('SIGINT');
      expect(await second.exited).toEqual([0, null]);
    },
  );

  test('answers what is piped in, plainly, and ends with it', async () => {
    const lines = '/shelf add item:Plum amount:"25 g"\n/dose colourant:"ultramarine blue" portion:"2 cups"\n';
    const { exited, said } = start(lines, ['--plain']);
    expect(await exited).toEqual([0, null]);
    expect(said.out).toMatch(/^25 g of “Plum” on your shelf/);
    expect(said.out).toContain('1/2 tsp ultramarine blue for 2 cups');
    expect(said.out).not.toMatch(/›|Goodbye|The room/);
    expect(said.err).toContain('The room is open at http://127.0.0.1:');
  });
});
