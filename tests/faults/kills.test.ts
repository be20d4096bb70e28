import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterAll, expect, it } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { everything } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';
import { howMany } from '../walk.ts';

/** How many times the writer is killed: a start takes most of a second. */
const kills = howMany(4, 200);

const folder = mkdtempSync(join(tmpdir(), 'kills-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Starts a writer whose keys begin with `round`; it opens the store, and writes once it is told to. */
function startWriter(address: string, round: number) {
  const script = join(import.meta.dirname, 'store-writer.ts');
  return spawn(process.execPath, [script, address, String(round)], { stdio: ['pipe', 'pipe', 'inherit'] });
}

/** Lets a writer write, and kills it at a random time; gives what it was told is saved. */
async function killOnce(writer: ReturnType<typeof startWriter>, round: number): Promise<readonly string[]> {
  const exited = once(writer, 'exit');
  writer.stdin.write('go\n');
  const acknowledged: string[] = [];
  let timer: NodeJS.Timeout | undefined;
  for await (const line of createInterface({ input: writer.stdout })) {
    acknowledged.push(`${round}-${line}`);
    timer ??= setTimeout(() => writer.kill('SIGKILL'), Math.random() * 150);
  }
  clearTimeout(timer);
  expect((await exited)[1]).toBe('SIGKILL');
  return acknowledged;
}

it(`one store outlives ${kills} kills at random: nothing acknowledged is lost, nothing is there by halves`, {
  timeout: 20_000 + kills * 15_000,
}, async () => {
  const address = `sqlite:${join(folder, 'killed.sqlite')}`;
  const acknowledged: string[] = [];
  let next = startWriter(address, 0);
  for (let round = 0; round < kills; round += 1) {
    const writer = next;
    // The next one starts while this one writes.
    if (round + 1 < kills) next = startWriter(address, round + 1);
    acknowledged.push(...(await killOnce(writer, round)));
  }
  const store = await openStore(address, PATIENT);
  const named = async (under: string) =>
    (await everything(store, { from: `${under}/`, to: `${under}0` })).map(
      ({ key }) => key.slice(under.length + 1).split('/')[0],
    );
  const written = await named('written');
  expect(await named('season-vote/beside')).toEqual(written);
  expect(await named('owned')).toEqual(written);
  const kept = new Set(written);
  expect(acknowledged.length).toBeGreaterThanOrEqual(kills);
  console.info(`${kills} kills: ${acknowledged.length} commits acknowledged, ${written.length} there`);
  expect(acknowledged.filter(one => !kept.has(one))).toEqual([]);
  await store.close();
});
