import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { register } from '../../src/discord/register.ts';
import { openJudgedHost } from '../loopback/judged-host.ts';
import { registry } from '../loopback/room.ts';
import { PATIENT } from '../records/patience.ts';

const TOKEN = 'very-secret-token';
let child: ChildProcess | undefined;
afterEach(() => child?.kill('SIGKILL'));

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  server.close();
  return port;
}

test('a process in production tells that it is ready, what it answered, and logs neither content nor the token', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  // The platform's three seconds are not what is tested: a process that has just started on a crowded machine needs more.
  const host = await openJudgedHost({ acknowledgeWithinMs: PATIENT });
  await register(registry, { token: TOKEN, api: host.api });
  const port = await freePort();
  child = spawn(process.execPath, [new URL('../../src/main.js', import.meta.url).pathname], {
    env: {
      ...process.env,
      DISCORD_TOKEN: TOKEN,
      DISCORD_API: host.api,
      TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}`,
      TINTMOOT_OPERATIONS: `127.0.0.1:${port}`,
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let log = '';
  child.stderr?.on('data', piece => {
    log += String(piece);
  });
  const look = async (path: string) => {
    const response = await fetch(`http://127.0.0.1:${port}${path}`);
    return { status: response.status, body: await response.text() };
  };
  await host.whenReady();
  await expect.poll(() => look('/readyz')).toMatchObject({ status: 200 });
  const member = host.addGuild({ name: 'Sunday soapers' }).addMember({ name: 'Bram' });
  await member.run('/dose', { colourant: 'gold mica', portion: '2 cups' });
  await member.run('/dose', { colourant: 'my grandmother’s violet', portion: '2 cups' });
  await member.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
  const { body } = await look('/metrics');
  expect(body).toContain('tintmoot_answers_total{command="dose",outcome="answered"} 1');
  expect(body).toContain('tintmoot_answers_total{command="dose",outcome="refused"} 1');
  expect(body).toContain('tintmoot_answers_total{command="shelf add",outcome="answered"} 1');
  expect(body).not.toContain('grandmother');

  const exited = once(child, 'exit');
  child.kill('SIGTERM');
  expect(await exited).toEqual([0, null]);
  expect(log).not.toContain('grandmother');
  expect(log).not.toContain(TOKEN);
  const lines = log
    .trim()
    .split('\n')
    .map(line => JSON.parse(line) as Record<string, unknown>);
  const answered = lines.filter(({ msg }) => msg === 'answered');
  expect(answered).toHaveLength(3);
  for (const line of answered)
    expect(Object.keys(line).sort()).toEqual(
      ['command', 'hostname', 'interaction', 'kind', 'level', 'ms', 'msg', 'outcome', 'pid', 'time'].sort(),
    );
  await host.close();
  await rm(folder, { recursive: true, force: true });
});
