import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { register } from '../../src/discord/register.ts';
import type { Host } from '../../src/loopback/index.ts';
import { wordsIn } from '../../src/words/index.ts';
import { openJudgedHost } from '../loopback/judged-host.ts';
import { registry } from '../loopback/room.ts';
import { PATIENT } from '../records/patience.ts';
import { isDue } from '../walk.ts';

const TOKEN = 'very-secret-token';
const main = new URL('../../src/main.js', import.meta.url).pathname;

let folder: string;
let host: Host;
let running: ChildProcess[];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  // The platform's three seconds are not what is tested: a process that has just started on a crowded machine needs more.
  host = await openJudgedHost({ acknowledgeWithinMs: PATIENT });
  running = [];
  await register(registry, { token: TOKEN, api: host.api });
});
afterEach(async () => {
  for (const child of running) child.kill('SIGKILL');
  await host.close();
  await rm(folder, { recursive: true, force: true });
});

/** The assistant as it runs in production, on a store of its own in a file. */
async function start() {
  const child = spawn(process.execPath, [main], {
    env: {
      ...process.env,
      DISCORD_TOKEN: TOKEN,
      DISCORD_API: host.api,
      TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}`,
    },
    stdio: 'ignore',
  });
  running.push(child);
  await host.whenReady();
  return { child, exited: once(child, 'exit') };
}

const group = () => host.addGuild({ name: 'Sunday soapers' });

describe('a process', () => {
  test('told to stop while it answers finishes the answer, then ends well', async () => {
    const { child, exited } = await start();
    const member = group().addMember({ name: 'Bram' });
    host.delayNext('POST', /callback/, 600);
    const answering = member.run('/dose', { colourant: 'gold mica', portion: '2 cups' });
    await expect.poll(() => host.requests.some(({ path }) => path.endsWith('/callback'))).toBe(true);
    child.kill('SIGTERM');
    expect((await answering).text).toContain('1 tsp gold mica');
    expect(await exited).toEqual([0, null]);
  });

  const whenDue = isDue('killed process') ? test : test.todo;

  whenDue(
    'killed in the middle comes back: remembers all it said it had noted, goes on from an answer with a command that nobody has asked since, and turned away by the platform for good ends with an error, not in silence',
    async () => {
      const first = await start();
      const member = group().addMember({ name: 'Bram' });
      await member.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
      expect((await member.run('/shelf use', { item: 'Moss', amount: '5 g' })).text).toContain('15 g');
      first.child.kill('SIGKILL');
      await first.exited;
      // Until the platform has heard of it, a member's command goes to the dead process, and `start` would not wait.
      await expect.poll(() => host.connections).toBe(0);
      const { exited } = await start();
      expect((await member.run('/shelf show', { item: 'Moss' })).text).toContain('15 g');

      const dose = await member.run('/dose', { colourant: 'gold mica', portion: '2 cups' });
      const see = dose.controls.find(({ label }) => label === wordsIn('en').folds.next.preview);
      expect((await member.press(dose, see?.customId ?? '')).text).toMatch(/gold/i);
      const other = dose.controls.find(({ label }) => label === wordsIn('en').folds.next.otherStrength);
      const [strength] = other?.options ?? [];
      const chosen = await member.choose(dose, other?.customId ?? '', [strength?.value ?? '']);
      expect(chosen.text).toContain('gold mica');

      host.dropConnections(4004);
      const [code] = await exited;
      expect(code).not.toBe(0);
    },
  );

  test('that still starts is alive and not ready, and ends well when it is told to stop', async () => {
    // A platform that takes the connection and says nothing.
    const silent = createServer(() => undefined).listen(0, '127.0.0.1');
    const spare = createServer().listen(0, '127.0.0.1');
    await Promise.all([once(silent, 'listening'), once(spare, 'listening')]);
    const [api, port] = [silent, spare].map(one => (one.address() as AddressInfo).port);
    spare.close();
    const child = spawn(process.execPath, [main], {
      env: {
        ...process.env,
        DISCORD_TOKEN: TOKEN,
        DISCORD_API: `http://127.0.0.1:${api}`,
        TINTMOOT_STORE: `sqlite:${join(folder, 'records.sqlite')}`,
        TINTMOOT_OPERATIONS: `127.0.0.1:${port}`,
      },
      stdio: 'ignore',
    });
    running.push(child);
    const exited = once(child, 'exit');
    const look = async (path: string) => {
      const response = await fetch(`http://127.0.0.1:${port}${path}`);
      return [response.status, await response.text()];
    };
    await expect.poll(() => look('/healthz').catch(() => 'not served')).toEqual([200, 'ok\n']);
    expect(await look('/readyz')).toEqual([503, 'starting\n']);
    child.kill('SIGTERM');
    expect(await exited).toEqual([0, null]);
    silent.close();
  });

  test('with an environment that makes no sense says what is wrong and ends', async () => {
    const child = spawn(process.execPath, [main], {
      env: { ...process.env, DISCORD_TOKEN: '', TINTMOOT_PORT: 'seven' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    child.stderr.on('data', piece => {
      said += String(piece);
    });
    expect(await once(child, 'exit')).toEqual([1, null]);
    expect(said).toContain('TINTMOOT_PORT');
  });
});
