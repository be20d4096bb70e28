import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { duesBy, putDue } from '../../src/records/dues/dues.ts';
import { groupShelf } from '../../src/records/keys.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, listShelf } from '../../src/records/shelf/index.ts';
import { type Entry, everything, put, type Store, type Write } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';
import { hasPostgres, hasRedis, startPostgres, startRedis } from '../records/servers.ts';
import { median } from './bots/side-by-side.ts';
import { hold } from './figures.ts';

/** `SCALE=1000000` is the whole of it: minutes, and gigabytes. */
const MEMBERS = Number(process.env.SCALE ?? 50_000);
/** A hundred members a group. */
const GROUPS = MEMBERS / 100;
/** Records at once, as a restore writes them: five thousand hold a Redis up for a second and more. */
const A_COMMIT = 500;
/** A log that doubles is rewritten, and while it is, every flush waits for it: for seconds here, where a store grows a thousandfold in minutes. */
const NO_REWRITING = ['--auto-aof-rewrite-percentage', '0'];
/** A million in some minutes. */
const MOST_FILLING_MS = 2;
/** A process that serves every group looks four times a minute. */
const MOST_LOOK_MS = 50;
/** Divides the number of buckets. */
const SHARDS = 16;
const patient = { timeout: 3_600_000 };
const noon = Date.UTC(2026, 4, 3, 12);

/** A member's shelf as it is really written, to be copied to every other member under keys of their own. */
async function patternOf(store: Store): Promise<readonly Entry[]> {
  const change = { cause: '1', at: new Date(noon), byName: 'Bram' };
  await addItem(
    { store, member: 'pattern' },
    { name: 'Moss', colourant: 'chromium-oxide-green', grams: 20 },
    change,
  );
  return await everything(store, { from: 'shelf/pattern/', to: 'shelf/pattern0' });
}

/** The same records under keys of another member. */
const copied = (pattern: readonly Entry[], member: string): Write[] =>
  pattern.map(({ key, value }) => put(key.replace('/pattern/', `/${member}/`), value));

async function fill(store: Store): Promise<void> {
  const pattern = await patternOf(store);
  let writes: Write[] = [];
  const flush = async () => {
    if (writes.length > 0) await store.commit(writes);
    writes = [];
  };
  for (let member = 0; member < MEMBERS; member += 1) {
    const id = String(100_000_000_000 + member);
    const group = String(900_000_000_000 + (member % GROUPS));
    writes.push(...copied(pattern, id), put(groupShelf(group, id), { v: 1, member: id }));
    if (writes.length >= A_COMMIT) await flush();
  }
  await flush();
}

/** Groups that have dues, whatever the number of members. */
const DUE_GROUPS = Math.max(GROUPS, 10_000);

/** Dues of a year, one a group and day at most, of which one group in ten has one in this minute. */
async function fillDues(store: Store): Promise<number> {
  const writes: Write[] = [];
  let now = 0;
  for (let group = 0; group < DUE_GROUPS; group += 1) {
    // As the platform numbers them: milliseconds above the lowest 22 bits.
    const id = String((BigInt(900_000_000_000 + 7_919 * group) << 22n) + 1n);
    const due = (at: number) => putDue({ at: new Date(at), group: id, what: 'test', id: '1' });
    writes.push(due(noon + 86_400_000 * (1 + (group % 365))));
    if (group % 10 === 0) writes.push(due(noon - (group % 60) * 1000));
    if (group % 10 === 0) now += 1;
  }
  for (let from = 0; from < writes.length; from += A_COMMIT)
    await store.commit(writes.slice(from, from + A_COMMIT));
  return now;
}

async function timeOf(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

type Opened = { readonly store: Store; close(): Promise<void> };

type Kind = {
  readonly there: boolean;
  /** How many times as long as in an empty store a read may take. */
  readonly most: number;
  readonly open: () => Promise<Opened>;
};

const stores: Readonly<Record<string, Kind>> = {
  SQLite: {
    there: true,
    most: 1.3,
    async open() {
      const folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
      const store = await openStore(`sqlite:${join(folder, 'records.sqlite')}`, PATIENT);
      return {
        store,
        async close() {
          await store.close();
          await rm(folder, { recursive: true, force: true });
        },
      };
    },
  },
  // Rows that were never vacuumed are looked up twice: 1.4 right after the filling.
  PostgreSQL: { there: hasPostgres, most: 1.8, open: () => onServer(startPostgres) },
  Redis: { there: hasRedis, most: 1.3, open: () => onServer(() => startRedis(NO_REWRITING)) },
};

async function onServer(start: () => Promise<{ address: string; stop(): Promise<void> }>): Promise<Opened> {
  const server = await start();
  // How long the disk of a crowded machine holds up one write of the filling is not what is looked at.
  const store = await openStore(server.address, PATIENT);
  return {
    store,
    async close() {
      await store.close();
      await server.stop();
    },
  };
}

test.for(Object.entries(stores).filter(([, { there }]) => there))(
  'many members in %s',
  patient,
  async ([name, { open, most }], { task }) => {
    const [empty, full] = [await open(), await open()];
    await empty.store.commit(copied(await patternOf(empty.store), '100000000007'));
    const filling = await timeOf(() => fill(full.store));
    const dues = await fillDues(full.store);
    const read = ({ store }: Opened) =>
      timeOf(async () => expect(await listShelf({ store, member: '100000000007' })).toHaveLength(1));
    for (let warm = 0; warm < 300; warm += 1) await Promise.all([read(empty), read(full)]);
    const [few, many]: [number[], number[]] = [[], []];
    for (let turn = 0; turn < 1_000; turn += 1) {
      few.push(await read(empty));
      many.push(await read(full));
    }
    const ratio = median(many) / median(few);
    let found = 0;
    const due = await timeOf(async () => {
      found = (await duesBy(full.store, new Date(noon))).length;
    });
    const before = new Date(noon - 3_600_000);
    const idle: number[] = [];
    for (let turn = 0; turn < 20; turn += 1)
      idle.push(await timeOf(async () => expect(await duesBy(full.store, before)).toEqual([])));
    let ofShards = 0;
    const dueOfShard: number[] = [];
    for (let shard = 0; shard < SHARDS; shard += 1)
      dueOfShard.push(
        await timeOf(async () => {
          ofShards += (await duesBy(full.store, new Date(noon), { ids: [shard], of: SHARDS })).length;
        }),
      );
    await Promise.all([empty.close(), full.close()]);
    expect(found).toBe(dues);
    // Each shard reads its own and no other's.
    expect(ofShards).toBe(dues);
    hold(task, [
      {
        what: `${name}: ${MEMBERS} shelves in ${GROUPS} groups written`,
        seen: filling / MEMBERS,
        most: MOST_FILLING_MS,
        unit: 'ms each',
      },
      {
        what: `${name}: a shelf among them (${(median(many) * 1000).toFixed(0)} us) as in an empty store`,
        seen: ratio,
        most,
        unit: 'times',
      },
      {
        what: `${name}: ${found} dues of a minute, ${DUE_GROUPS} groups`,
        seen: due,
        most: 1_000,
        unit: 'ms',
      },
      { what: `${name}: a look when nothing is due`, seen: median(idle), most: MOST_LOOK_MS, unit: 'ms' },
      {
        what: `${name}: one of ${SHARDS} shards its own dues`,
        seen: median(dueOfShard),
        most: 1_000,
        unit: 'ms',
      },
    ]);
  },
);
