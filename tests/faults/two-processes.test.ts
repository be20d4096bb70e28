/* Two processes over one store, as shards run: over a file, and over the servers that Debian has. */
import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { register } from '../../src/discord/register.ts';
import type { Guild, Member } from '../../src/loopback/interface.ts';
import { type Due, dropDue, duesBy, putDue } from '../../src/records/dues/dues.ts';
import { openStore } from '../../src/records/open.ts';
import { addItem, findItem, showItem } from '../../src/records/shelf/index.ts';
import type { Store } from '../../src/records/store.ts';
import { openJudgedHost } from '../loopback/judged-host.ts';
import { registry } from '../loopback/room.ts';
import { PATIENT } from '../records/patience.ts';
import { hasPostgres, hasRedis, type Server, startPostgres, startRedis } from '../records/servers.ts';
import { drawn, isDue, WHOLE } from '../walk.ts';

const TOKEN = 'bench-token';
const main = new URL('../../src/main.js', import.meta.url).pathname;
const script = join(import.meta.dirname, 'store-shelf-user.ts');
const day = 86_400_000;

const inFile = async (): Promise<Server> => {
  const folder = mkdtempSync(join(tmpdir(), 'two-'));
  return {
    address: `sqlite:${join(folder, 'records.sqlite')}`,
    stop: async () => rmSync(folder, { recursive: true }),
  };
};

const stores: readonly (readonly [string, boolean, () => Promise<Server>])[] = [
  ['an SQLite file', true, inFile],
  ['PostgreSQL', hasPostgres, () => startPostgres()],
  ['Redis', hasRedis, () => startRedis()],
];
for (const [store, isThere] of stores)
  if (!isThere) console.warn(`SKIPPED: no server here, so two processes over ${store} were not tested.`);

/** Four processes for each store take half a minute: what shards run over stands for all of them. */
const SHARDED = hasPostgres ? 'PostgreSQL' : 'an SQLite file';
const here = stores.filter(([, isThere]) => isThere);
/** Two processes on one shelf stand for each other's store as well: one in the usual run, besides what shards are to run over. */
const TAKEN_FROM = drawn(here, 1, 'two processes');
const OVER = here.filter(one => TAKEN_FROM.includes(one) || (one[0] === SHARDED && isDue('shards')));

describe.each(OVER)('over %s', (name, _isThere, start) => {
  let server: Server;
  let store: Store;
  let running: ChildProcess[] = [];
  beforeAll(async () => {
    server = await start();
    store = await openStore(server.address, PATIENT);
  });
  afterEach(() => {
    for (const child of running) child.kill('SIGKILL');
    running = [];
  });
  afterAll(async () => {
    await store.close();
    await server.stop();
  });

  describe('processes on one shelf', () => {
    const TAKERS = WHOLE ? ['a', 'b', 'c'] : ['a', 'b'];
    const TAKEN = 40;
    /** Less than they ask for together. */
    const THERE = 60;
    const own = () => ({ store, member: '7' });
    const both = () => ({ store, member: '8' });
    /** What each was told: of a jar that all take from, then of changes that have the same cause whoever makes them. */
    let told: readonly (readonly { readonly taken: number; readonly refused: number }[])[];
    beforeAll(async () => {
      for (const mine of [own(), both()])
        await addItem(mine, { name: 'Ultramarine', grams: THERE }, { cause: 'add', at: new Date() });
      told = await Promise.all(
        TAKERS.map(async who => {
          const turns = [`${who}:${TAKEN}:${own().member}`, `same:20:${both().member}`];
          const { stdout } = await promisify(execFile)(process.execPath, [script, server.address, ...turns]);
          return JSON.parse(stdout) as (typeof told)[number];
        }),
      );
    });

    it('take from one jar at once what is there to the gram, and every gram has its line', async () => {
      const sum = (field: 'taken' | 'refused') => told.reduce((total, [first]) => total + first![field], 0);
      const refused = TAKERS.length * TAKEN - THERE;
      expect({ taken: sum('taken'), refused: sum('refused') }).toEqual({ taken: THERE, refused });
      expect((await findItem(own(), 'ultramarine')).stock.grams).toBe(0);
      const { history } = await showItem(own(), 'ultramarine', 500);
      expect(history.map(({ left }) => left)).toEqual(
        Array.from({ length: THERE + 1 }, (_line, left) => left),
      );
    });

    // The same causes from all: what a redelivery to another process is.
    it('make one change once that each of them makes', async () => {
      expect(told.map(([, second]) => second)).toEqual(TAKERS.map(() => ({ taken: 20, refused: 0 })));
      expect((await findItem(both(), 'ultramarine')).stock.grams).toBe(THERE - 20);
      expect((await showItem(both(), 'ultramarine', 500)).history).toHaveLength(21);
    });
  });

  if (!WHOLE && name !== SHARDED) return;

  (isDue('shards') ? it : it.todo)(
    'two shards tell each due of their own groups once, and see what a member has through either',
    async () => {
      // The platform's three seconds are not what is tested: a process that has just started on a crowded machine needs more.
      const host = await openJudgedHost({ shards: 2, acknowledgeWithinMs: 120_000 });
      await register(registry, { token: TOKEN, api: host.api });
      const shard = (id: number): ChildProcess => {
        const child = spawn(process.execPath, [main], {
          env: {
            ...process.env,
            DISCORD_TOKEN: TOKEN,
            DISCORD_API: host.api,
            DISCORD_SHARDS: `${id}/2`,
            TINTMOOT_STORE: server.address,
            TINTMOOT_SIGNING_KEY: Buffer.alloc(32, 7).toString('base64'),
            TINTMOOT_LOG: 'error',
          },
          stdio: ['ignore', 'ignore', 'inherit'],
        });
        running.push(child);
        return child;
      };
      // One group of each shard: (id >> 22) % 2. Source: platform documentation, Gateway > Sharding.
      const groups = [4n, 5n].map(n => host.addGuild({ name: `Group ${n}`, id: String(n << 22n) }));
      const [even, odd] = groups as [Guild, Guild];
      const here = even.addMember({ name: 'Bram' });
      const there = odd.addMember({ name: 'Bram', id: here.id });
      const makers = groups.map(group => group.addMember({ name: `Maker of ${group.name}` }));

      const [, ofOdd] = [0, 1].map(shard);
      await host.whenReady(2);
      await here.run('/shelf add', { item: 'Moss', amount: '20 g', colourant: 'chromium oxide green' });
      const used = await Promise.all(
        [here, there].map(at => at.run('/shelf use', { item: 'Moss', amount: '4 g' })),
      );
      expect(new Set(used.map(({ text }) => /1[26] g/.exec(text)?.[0]))).toEqual(new Set(['12 g', '16 g']));
      expect((await there.run('/shelf show', { item: 'Moss' })).text).toContain('12 g');
      const shown = await Promise.all([here, there].map(async at => (await at.run('/privacy show')).text));
      const shelves = shown.map(text => /^- Your shelf: (\d+)\./m.exec(text)?.[1]);
      // One jar, as its owner would count, through either.
      expect(shelves).toEqual(['1', '1']);
      for (const [n, maker] of makers.entries())
        await maker.run('/batch poured', { made: '2 cups ultramarine blue 1/2 tsp', name: `Evening ${n}` });
      // Nobody has two days: what is due then is due now.
      const makeDue = async () => {
        const soon = await duesBy(store, new Date(Date.now() + 3 * day));
        const unmoulding = soon.filter(
          ({ what, at }) => what.endsWith('unmould') && at.getTime() > Date.now(),
        );
        const moved = unmoulding.map((due): Due => ({ ...due, at: new Date(Date.now() - 60_000) }));
        await store.commit([...unmoulding.map(dropDue), ...moved.map(putDue)]);
        return unmoulding.map(({ group }) => group).toSorted();
      };
      const both = groups.map(({ id }) => id).toSorted();
      expect(await makeDue()).toEqual(both);
      // Each looks with whatever makes a due, and once more when all was told.
      const pour = async (name: string) => {
        for (const at of [here, there]) await at.run('/batch poured', { made: '1 cup Moss 1/4 tsp', name });
      };
      await pour('First');
      const letters = (maker: Member) =>
        maker.sees({ context: 'bot-dm' }).map(({ text }) => text.split('\n')[0]?.replace(/^#+ /, ''));
      await expect
        .poll(() => makers.map(letters))
        .toEqual([['Unmould “Evening 0”'], ['Unmould “Evening 1”']]);
      await pour('Second');
      const left = async () =>
        (await duesBy(store, new Date())).filter(({ what }) => what.endsWith('unmould'));
      await expect.poll(left).toEqual([]);
      expect(makers.map(maker => letters(maker).length)).toEqual([1, 1]);
      const tellings = host.requests.filter(
        ({ method, path }) => method === 'POST' && /^\/channels\/\d+\/messages$/.test(path),
      );
      expect(tellings).toHaveLength(2);

      // Whose shard is away waits for it: the other one, which looks at the same store, leaves it alone.
      for (const [n, maker] of makers.entries())
        await maker.run('/batch poured', { made: '2 cups ultramarine blue 1/2 tsp', name: `Later ${n}` });
      const gone = once(ofOdd as ChildProcess, 'exit');
      ofOdd?.kill('SIGTERM');
      await gone;
      expect((await makeDue()).filter(id => both.includes(id))).toEqual(expect.arrayContaining(both));
      await here.run('/batch poured', { made: '1 cup Moss 1/4 tsp', name: 'Third' });
      await expect.poll(() => letters(makers[0] as Member)).toContain('Unmould “Later 0”');
      await here.run('/batch poured', { made: '1 cup Moss 1/4 tsp', name: 'Fourth' });
      expect((await left()).map(({ group }) => group)).toContain(odd.id);
      expect(letters(makers[1] as Member)).not.toContain('Unmould “Later 1”');
      shard(1);
      await expect.poll(() => letters(makers[1] as Member)).toContain('Unmould “Later 1”');
      await expect.poll(left).toEqual([]);
      for (const child of running) child.kill('SIGKILL');
      await host.close();
    },
  );
});
