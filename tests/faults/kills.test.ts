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

/** How many times the writer is killed; `KILLS=200` for the whole ordeal. */
const kills = Number(process.env.KILLS ?? 6);

const folder = mkdtempSync(join(tmpdir(), 'kills-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs a writer whose keys begin with `round` and kills it at a random time; gives what it was told is saved. */
async function killOnce(address: string, round: number): Promise<readonly string[]> {
  const script = join(import.meta.dirname, 'store-writer.ts');
  const writer = spawn(process.execPath, [script, address, String(round)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const exited = once(writer, 'exit');
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
  for (let round = 0; round < kills; round += 1) acknowledged.push(...(await killOnce(address, round)));
  const store = await openStore(address, PATIENT);
  const named = async (kind: string) =>
    (await everything(store, { from: `${kind}/`, to: `${kind}0` })).map(({ key }) =>
      key.slice(kind.length + 1),
    );
  const written = await named('written');
  expect(await named('beside')).toEqual(written);
  const kept = new Set(written);
  expect(acknowledged.length).toBeGreaterThanOrEqual(kills);
  expect(acknowledged.filter(one => !kept.has(one))).toEqual([]);
  await store.close();
});
