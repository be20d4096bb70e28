import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const main = new URL('../../src/main.js', import.meta.url).pathname;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reader-gone-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test('who has seen enough of many answers, as `ask --lines | head -1` has, is told of no fault', async () => {
  const child = spawn(process.execPath, [main, 'ask', '--lines'], {
    env: { ...process.env, TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}` },
  });
  let said = '';
  child.stderr.setEncoding('utf8').on('data', text => {
    said += text;
  });
  // What is written to a process that has ended is lost.
  child.stdin.on('error', () => {});
  const asked = '/dose colourant:"ultramarine blue" portion:"2 cups"\n';
  child.stdin.write(asked);
  const [first] = (await once(child.stdout, 'data')) as [Buffer];
  expect(JSON.parse(String(first))).toMatchObject({ ok: true, command: 'dose' });
  child.stdout.destroy();
  // It may end at the first, and does not wait for the end of what it is asked.
  child.stdin.write(asked.repeat(3));
  const [code] = (await once(child, 'exit')) as [number];
  expect({ code, said }).toEqual({ code: 0, said: '' });
});
