import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterAll, describe, expect, it } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { PATIENT } from '../records/patience.ts';

const folder = mkdtempSync(join(tmpdir(), 'records-'));
afterAll(() => rmSync(folder, { recursive: true }));
const script = (name: string) => join(import.meta.dirname, name);

/** Runs a writer, kills it without warning after so many acknowledgements, and gives those it printed. */
async function killAfter(address: string, acknowledgements: number): Promise<readonly number[]> {
  const writer = spawn(process.execPath, [script('store-writer.ts'), address], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const exited = once(writer, 'exit');
  const acknowledged: number[] = [];
  for await (const line of createInterface({ input: writer.stdout })) {
    acknowledged.push(Number(line));
    if (acknowledged.length === acknowledgements) writer.kill('SIGKILL');
  }
  expect((await exited)[1]).toBe('SIGKILL');
  return acknowledged;
}

describe('a process killed while it writes', () => {
  it.each([1, 57, 400])(
    'loses nothing that was acknowledged, and leaves nothing by halves (%i writes in)',
    async count => {
      const address = `sqlite:${join(folder, `killed-${count}.sqlite`)}`;
      const acknowledged = await killAfter(address, count);
      expect(acknowledged.length).toBeGreaterThanOrEqual(count);
      const store = await openStore(address, PATIENT);
      const written = await store.range('written/', 'written0', 100_000);
      const beside = await store.range('season-vote/beside/', 'season-vote/beside0', 100_000);
      const kept = new Set(written.map(({ value }) => (value as { n: number }).n));
      expect(acknowledged.filter(n => !kept.has(n))).toEqual([]);
      expect(beside.map(({ value }) => value)).toEqual(written.map(({ value }) => value));
      await store.close();
    },
  );
});

describe('processes', () => {
  it('open a new file together', async () => {
    const address = `sqlite:${join(folder, 'new.sqlite')}`;
    const stores = await Promise.all(Array.from({ length: 6 }, () => openStore(address, PATIENT)));
    expect(await Promise.all(stores.map(store => store.get(['a'])))).toEqual(stores.map(() => [undefined]));
    await Promise.all(stores.map(store => store.close()));
  });
});
