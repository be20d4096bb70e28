import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterAll, expect, it } from 'vitest';
import { type Batch, listBatches } from '../../src/records/batches/index.ts';
import { lessonsOf } from '../../src/records/batches/lessons.ts';
import { duesBy } from '../../src/records/dues/dues.ts';
import { openStore } from '../../src/records/open.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { PATIENT } from '../records/patience.ts';
import { howMany, isDue } from '../walk.ts';

/** How many times the writer is killed: it loads every command before it writes. */
const kills = howMany(2, 100);
/** Answers after which it may be killed, and how much later at most, ms. */
const ANSWERS = 3;
const SPREAD = 250;

const folder = mkdtempSync(join(tmpdir(), 'batch-kills-'));
afterAll(() => rmSync(folder, { recursive: true }));

type Said = { readonly what: string; readonly name: string; readonly id: string };

async function killOnce(address: string, round: number): Promise<readonly Said[]> {
  const script = join(import.meta.dirname, 'store-batch-writer.ts');
  const writer = spawn(
    process.execPath,
    ['--disable-warning=ExperimentalWarning', script, address, String(round)],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  const exited = once(writer, 'exit');
  const said: Said[] = [];
  let timer: NodeJS.Timeout | undefined;
  for await (const line of createInterface({ input: writer.stdout })) {
    const [what = '', name = '', id = ''] = line.split(' ');
    said.push({ what, name, id });
    if (said.length >= ANSWERS) timer ??= setTimeout(() => writer.kill('SIGKILL'), Math.random() * SPREAD);
  }
  clearTimeout(timer);
  expect((await exited)[1]).toBe('SIGKILL');
  return said;
}

const takenOf = ({ taken }: Batch) => taken.reduce((sum, { milligrams }) => sum + milligrams, 0);
const curedOf = ({ events }: Batch) => events.filter(({ did }) => did.kind === 'cured').length;

const whenDue = isDue('batch kills') ? it : it.todo;
whenDue(
  `a batch book outlives ${kills} kills at random: nothing acknowledged is lost, nothing counts twice`,
  {
    timeout: 60_000 + kills * 30_000,
  },
  async () => {
    const address = `sqlite:${join(folder, 'killed.sqlite')}`;
    const said: Said[] = [];
    for (let round = 0; round < kills; round += 1) said.push(...(await killOnce(address, round)));
    const store = await openStore(address, PATIENT);
    const book = { store, member: '7' };
    const all = await listBatches(book);
    const byId = new Map(all.map(batch => [batch.id, batch]));
    const told = (what: string) => said.filter(one => one.what === what);
    const undone = new Set(told('undone').map(({ id }) => id));

    // What was poured is there once, and gone once it was said to be; only the undoing under way at a kill is open.
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    const missing = told('poured').filter(({ id }) => !byId.has(id) && !undone.has(id));
    expect(missing.length).toBeLessThanOrEqual(kills);
    for (const { name } of missing) expect(Number(name.split('-')[1]) % 3).toBeLessThan(2);
    for (const id of undone) expect(byId.has(id)).toBe(false);

    // The shelf lacks what the batches hold, to the milligram.
    const [jar] = await listShelf(book);
    const left = 900_000 - all.reduce((sum, batch) => sum + takenOf(batch), 0);
    expect(Math.round(jar!.stock.grams! * 1000)).toBe(left);
    for (const batch of all) expect(takenOf(batch)).toBeGreaterThan(0);

    // A lesson that was acknowledged counts once, and not after its batch was taken back; the jar knows of all that count.
    const { standing } = await lessonsOf(book);
    const lessonsOn = (id: string) => standing.filter(({ batch }) => batch === id).length;
    const cured = told('cured').map(({ id }) => id);
    for (const id of cured.filter(one => undone.has(one))) expect(lessonsOn(id)).toBe(0);
    for (const id of cured.filter(one => !undone.has(one) && byId.has(one)))
      expect([curedOf(byId.get(id)!), lessonsOn(id)]).toEqual([1, 1]);
    expect(new Set(standing.map(({ batch }) => batch)).size).toBe(standing.length);
    expect(jar!.lot.learnt?.bars ?? 0).toBe(standing.flatMap(({ bars }) => bars).length);

    // Every batch still tells its dates.
    const dues = await duesBy(store, new Date(Date.now() + 365 * 86_400_000));
    const uncured = all.filter(({ events }) => !events.some(({ did }) => did.kind === 'cured'));
    for (const { id } of uncured) expect(dues.map(due => due.id)).toContain(id);
    await store.close();
  },
);
