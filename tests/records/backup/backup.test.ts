import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SqliteAdapter } from '../../../src/records/adapters/sqlite.ts';
import { backUp, move, restore } from '../../../src/records/backup/backup.ts';
import { fill as fillFrom, tallyOf } from '../../../src/records/backup/lines.ts';
import { duesBy } from '../../../src/records/dues/dues.ts';
import { StoreFailure } from '../../../src/records/failure.ts';
import { openStore } from '../../../src/records/open.ts';
import { everything, instead, put, type Store } from '../../../src/records/store.ts';
import { StrictStore } from '../../../src/records/strict.ts';
import { PATIENT } from '../patience.ts';
import { hasPostgres, hasRedis, type Server, startPostgres, startRedis } from '../servers.ts';

const folder = mkdtempSync(join(tmpdir(), 'backup-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
const fresh = (ending: string) => {
  count += 1;
  return join(folder, `${count}.${ending}`);
};
const freshSqlite = () => `sqlite:${fresh('sqlite')}`;

/** Records of every shape; more than one page of them. */
const values = fc.sample(fc.jsonValue({ maxDepth: 3 }), { numRuns: 40, seed: 7 });
async function fill(address: string, records = 1_234): Promise<void> {
  const store = await openStore(address, PATIENT);
  const writes = Array.from({ length: records }, (_, n) =>
    put(`shelf/${n % 50}/${n}`, { n, value: values[n % values.length] }),
  );
  for (let from = 0; from < records; from += 500) await store.commit(writes.slice(from, from + 500));
  await store.close();
}

async function inStore<Result>(address: string, work: (store: Store) => Promise<Result>): Promise<Result> {
  const store = await openStore(address, PATIENT);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

const servers: { redis?: Server; other?: Server; postgres?: Server } = {};
beforeAll(async () => {
  if (hasRedis) [servers.redis, servers.other] = await Promise.all([startRedis(), startRedis()]);
  if (hasPostgres) servers.postgres = await startPostgres();
});
afterAll(() => Promise.all(Object.values(servers).map(server => server.stop())));

describe('a backup', () => {
  it('of an SQLite file holds what lies in the write-ahead log too, while it is used', async () => {
    const address = freshSqlite();
    await fill(address);
    const used = await openStore(address, PATIENT);
    await used.commit([put('late', { fresh: true })]);
    const file = fresh('backup');
    const tally = await backUp(address, file);
    expect(tally).toEqual(await tallyOf(used));
    expect(tally.records).toBe(1_236);
    await used.commit([put('later', 1)]);
    await used.close();
    expect(statSync(file).mode & 0o777).toBe(0o600);
    const target = freshSqlite();
    expect(await restore(file, target)).toEqual(tally);
    expect(await inStore(target, store => store.get(['late', 'later']))).toEqual([
      { fresh: true },
      undefined,
    ]);
  });

  it('copying the file alone would have been none', async () => {
    const address = freshSqlite();
    const used = await openStore(address, PATIENT);
    await used.commit([put('a', 1)]);
    const copy = fresh('sqlite');
    copyFileSync(address.slice('sqlite:'.length), copy);
    expect(await inStore(`sqlite:${copy}`, store => store.get(['a']))).toEqual([undefined]);
    await used.close();
  });

  it('is taken while others write, each commit in it whole or not at all', async () => {
    const address = freshSqlite();
    const used = await openStore(address, PATIENT);
    let n = 0;
    let writing = true;
    const writers = Array.from({ length: 4 }, async () => {
      while (writing) {
        n += 1;
        await used.commit([put(`left/${n}`, n), put(`right/${n}`, n)]);
      }
    });
    const file = fresh('backup');
    await new Promise(resolve => setTimeout(resolve, 100));
    const tally = await backUp(address, file);
    writing = false;
    await Promise.all(writers);
    await used.close();
    expect(tally.records).toBeGreaterThan(2);
    await inStore(`sqlite:${file}`, async store => {
      const left = await store.range('left/', 'left0', 1e6);
      const right = await store.range('right/', 'right0', 1e6);
      expect(right.map(({ value }) => value)).toEqual(left.map(({ value }) => value));
    });
  });

  it('never writes over a file', async () => {
    const address = freshSqlite();
    await fill(address, 3);
    const file = fresh('backup');
    writeFileSync(file, 'precious');
    await expect(backUp(address, file)).rejects.toMatchObject({ id: 'backup-exists' });
    expect(readFileSync(file, 'utf8')).toBe('precious');
  });

  it('of what is not there makes no file', async () => {
    const file = fresh('backup');
    await expect(backUp(freshSqlite(), file)).rejects.toMatchObject({ id: 'backup-missing' });
    await expect(backUp('sqlite::memory:', file)).rejects.toMatchObject({ id: 'backup-of-memory' });
    expect(existsSync(file)).toBe(false);
  });
});

/** Every kind of store there is a server for, by name. */
const stores = (): readonly (readonly [string, string])[] => [
  ['SQLite', freshSqlite()],
  ...(servers.postgres ? [['PostgreSQL', servers.postgres.address] as const] : []),
  ...(servers.redis ? [['Redis', servers.redis.address] as const] : []),
];

describe('from any store into any other', () => {
  it('every record arrives, counted and summed up', async () => {
    const first = freshSqlite();
    await fill(first);
    const expected = await inStore(first, tallyOf);
    let from = first;
    for (const [, to] of stores()) {
      expect(await move(from, to)).toEqual(expected);
      from = to;
    }
    for (const [name, address] of stores().slice(1)) {
      const file = fresh('lines');
      expect([name, await backUp(address, file)]).toEqual([name, expected]);
      expect(statSync(file).mode & 0o777).toBe(0o600);
      const target = freshSqlite();
      expect([name, await restore(file, target)]).toEqual([name, expected]);
      expect([name, await inStore(target, tallyOf)]).toEqual([name, expected]);
    }
  });

  it.skipIf(!hasRedis)('from a file into a server', async () => {
    const first = freshSqlite();
    await fill(first);
    const file = fresh('backup');
    const tally = await backUp(first, file);
    expect(await restore(file, servers.other!.address)).toEqual(tally);
  });

  it('goes on where it was stopped, and only from the same source', async () => {
    const [from, to, another] = [freshSqlite(), freshSqlite(), freshSqlite()];
    await fill(from);
    await fill(another, 5);
    const { sha256 } = await inStore(from, tallyOf);
    // As a copy leaves it that was killed after its first page.
    await inStore(to, async store => {
      const page = await inStore(from, source => source.range('-', '{', 500));
      await store.commit([
        ...page.map(({ key, value }) => put(key, value)),
        put('meta/filling', { v: 1, source: sha256 }),
      ]);
    });
    await expect(move(another, to)).rejects.toMatchObject({ id: 'restore-not-empty' });
    // Half of the records are nobody's to serve, nor to be backed up or moved on from.
    const file = fresh('backup');
    for (const use of [() => openStore(to), () => backUp(to, file), () => move(to, freshSqlite())])
      await expect(use()).rejects.toMatchObject({ name: 'Refusal', id: 'store-half-filled' });
    expect(existsSync(file)).toBe(false);
    expect((await move(from, to)).sha256).toBe(sha256);
    await (await openStore(to)).close();
  });
});

it('what an older program kept has its owners noted after a move into a store that was opened before', async () => {
  const [from, to] = [freshSqlite(), freshSqlite()];
  const older = new StrictStore(await SqliteAdapter.open(from.slice('sqlite:'.length)), PATIENT);
  await older.commit([
    put('season-vote/501/701', { v: 1 }),
    put('due/2026-12-02T01_3a56_3a00_2e000Z/501/ring/1', DUE),
  ]);
  await older.close();
  await (await openStore(to, PATIENT)).close();
  expect((await move(from, to)).records).toBe(3);
  const kept = await inStore(to, store => store.range('owned/', 'owned0', 9));
  expect(kept.map(({ key }) => key)).toEqual(['owned/701/season-vote/501/701']);
  expect(await inStore(to, store => duesBy(store, new Date('2027-01-01')))).toMatchObject([
    { group: '501', id: '1' },
  ]);
});
const DUE = { v: 1, at: '2026-12-02T01:56:00.000Z', group: '501', what: 'ring', id: '1' };

describe('a store that stalls while it is filled', () => {
  /** Takes all, and loses the receipt of as many writes in a row, of every page. */
  async function filled(lost: number, waits: readonly number[]) {
    const from = freshSqlite();
    await fill(from);
    const before = await inStore(from, tallyOf);
    const tries: number[] = [];
    const to = freshSqlite();
    return await inStore(from, source =>
      inStore(to, async store => {
        const stalling = instead(store, {
          async commit(writes) {
            const isPage = writes.length > 2;
            const result = await store.commit(writes);
            if (isPage && (tries.at(-1) ?? 0) < lost) {
              tries.push((tries.at(-1) ?? 0) + 1);
              throw new StoreFailure('unreachable', 'write', 'no answer', { saved: 'unknown' });
            }
            if (isPage) tries.push(0);
            return result;
          },
        });
        const records = async function* () {
          yield* await everything(source, { from: 'shelf/', to: 'shelf0' });
        };
        const tally = { ...before };
        return { tally: await fillFrom(stalling, { tally, records: records() }, waits), before, tries };
      }),
    );
  }

  it('is written again, each page as often as is waited', async () => {
    const { tally, before, tries } = await filled(2, [1, 1, 1]);
    expect(tally).toEqual(before);
    expect(tries.filter(one => one > 0).length).toBeGreaterThanOrEqual(4);
  });

  it('is given up where it does not come back', async () => {
    await expect(filled(9, [1, 1])).rejects.toMatchObject({ kind: 'unreachable' });
  });
});

describe('a store that is in use is not filled over', () => {
  it('by a move or a restore', async () => {
    const [from, to] = [freshSqlite(), freshSqlite()];
    await fill(from, 20);
    await inStore(to, store => store.commit([put('shelf/1/1', 'mine')]));
    const file = fresh('backup');
    await backUp(from, file);
    await expect(move(from, to)).rejects.toMatchObject({ id: 'restore-not-empty' });
    await expect(restore(file, to)).rejects.toMatchObject({ id: 'restore-not-empty' });
    expect(await inStore(to, store => store.get(['shelf/1/1', 'shelf/2/2']))).toEqual(['mine', undefined]);
    await expect(move(from, from)).rejects.toMatchObject({ id: 'move-onto-itself' });
  });
});

describe.skipIf(!hasRedis)('a file of lines that is broken', () => {
  it.each([
    ['cut short', (text: string) => text.slice(0, text.lastIndexOf('\n{') + 1), 'backup-cut-short'],
    ['cut within a line', (text: string) => text.slice(0, -90), 'backup-unreadable'],
    ['with a figure changed', (text: string) => text.replace('"n":7', '"n":8'), 'backup-changed'],
    ['with a line missing', (text: string) => text.split('\n').toSpliced(5, 1).join('\n'), 'backup-changed'],
    ['with a line that is none', (text: string) => text.replace('\n["', '\nxx["'), 'backup-unreadable'],
    ['of a newer kind', (text: string) => text.replace('"version":1', '"version":2'), 'backup-unreadable'],
  ])('%s restores nothing', async (_, spoil, id) => {
    const redis = await startRedis();
    await fill(redis.address, 30);
    const file = fresh('lines');
    await backUp(redis.address, file);
    await redis.stop();
    const before = readFileSync(file, 'utf8');
    writeFileSync(file, spoil(before));
    const target = freshSqlite();
    await expect(restore(file, target)).rejects.toMatchObject({ name: 'Refusal', id });
    expect((await inStore(target, tallyOf)).records).toBe(1);
  });
});

it('what is no backup restores nothing', async () => {
  const file = fresh('txt');
  writeFileSync(file, 'hello');
  await expect(restore(file, freshSqlite())).rejects.toMatchObject({ id: 'backup-unreadable' });
  await expect(restore(join(folder, 'nowhere'), freshSqlite())).rejects.toMatchObject({
    id: 'backup-missing',
  });
  const address = freshSqlite();
  await fill(address);
  const damaged = fresh('backup');
  await backUp(address, damaged);
  const bytes = readFileSync(damaged);
  bytes.fill(0xff, 8_192, 40_000);
  writeFileSync(damaged, bytes);
  await expect(restore(damaged, freshSqlite())).rejects.toMatchObject({ id: 'backup-changed' });
});

it('a copy of as many records that says something else is told from its source', async () => {
  const store = await openStore('sqlite::memory:', PATIENT);
  const records = async function* () {
    yield { key: 'a', value: 1 };
  };
  const tally = { records: 2, sha256: '0'.repeat(64) };
  await expect(fillFrom(store, { tally, records: records() })).rejects.toMatchObject({ id: 'backup-unlike' });
  await store.close();
});
