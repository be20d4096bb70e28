import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { addItem, findItem, showItem } from '../../src/records/shelf/index.ts';
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
      const beside = await store.range('beside/', 'beside0', 100_000);
      const kept = new Set(written.map(({ value }) => (value as { n: number }).n));
      expect(acknowledged.filter(n => !kept.has(n))).toEqual([]);
      expect(beside.map(({ value }) => value)).toEqual(written.map(({ value }) => value));
      await store.close();
    },
  );
});

describe('processes that take from one jar at once', () => {
  it('take what is there to the gram and never more, and every gram has its line', async () => {
    const address = `sqlite:${join(folder, 'shared.sqlite')}`;
    const store = await openStore(address, PATIENT);
    const mine = { store, member: '7' };
    await addItem(mine, { name: 'Ultramarine', grams: 100 }, { cause: 'add', at: new Date() });
    const told = await Promise.all(
      ['a', 'b', 'c'].map(async name => {
        const run = promisify(execFile);
        const { stdout } = await run(process.execPath, [script('store-shelf-user.ts'), address, name, '60']);
        return JSON.parse(stdout) as { taken: number; refused: number };
      }),
    );
    const sum = (field: 'taken' | 'refused') => told.reduce((total, one) => total + one[field], 0);
    expect({ taken: sum('taken'), refused: sum('refused') }).toEqual({ taken: 100, refused: 80 });
    expect((await findItem(mine, 'ultramarine')).stock.grams).toBe(0);
    const { history } = await showItem(mine, 'ultramarine', 500);
    expect(history.map(({ left }) => left)).toEqual(Array.from({ length: 101 }, (_, left) => left));
    await store.close();
  });

  it('open a new file together', async () => {
    const address = `sqlite:${join(folder, 'new.sqlite')}`;
    const stores = await Promise.all(Array.from({ length: 6 }, () => openStore(address, PATIENT)));
    expect(await Promise.all(stores.map(store => store.get(['a'])))).toEqual(stores.map(() => [undefined]));
    await Promise.all(stores.map(store => store.close()));
  });
});
