import { fork } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { challengeActs } from '../../../commands/challenge/deadlines.ts';
import type { Outbox } from '../../../src/conversation/unasked/outbox.ts';
import { startScheduler } from '../../../src/deadlines/scheduler.ts';
import {
  asOf,
  type ChallengeScope,
  cancelChallenge,
  castBallot,
  disqualify,
  extendChallenge,
  placingsOf,
  postOf,
  readChallenge,
} from '../../../src/records/challenges/index.ts';
import { duesBy } from '../../../src/records/dues/dues.ts';
import { noticesFor } from '../../../src/records/notices.ts';
import type { Store } from '../../../src/records/store.ts';
import {
  closingGrace,
  day,
  entriesEnd,
  fairOf,
  freshScope,
  made,
  openOne,
  opens,
  scopeAt,
  votesEnd,
} from '../../records/challenges/fair.ts';
import { Platform } from './platform.ts';

const during = entriesEnd + day;
let scope: ChallengeScope;
let platform: Platform;
beforeEach(async () => {
  scope = await freshScope();
  platform = new Platform(group => group === scope.group);
});

/** One start of a process at a time: does what is due, and ends. */
async function runAt(
  now: number,
  { store = scope.store, outbox = platform as Outbox } = {},
): Promise<readonly string[]> {
  const faults: string[] = [];
  const watch = startScheduler({
    store,
    serves: group => outbox.serves(group),
    acts: challengeActs({ store, outbox, now: () => now }),
    now: () => now,
    onFault: fault => faults.push((fault as Error).message),
  });
  await watch.check();
  await watch.stop();
  return faults;
}

const vote = (id: string, by: string, ranked: readonly string[], at = during) =>
  castBallot(scope, id, { chosen: ranked.map(entry => [entry]), joinedAt: 0 }, made(by, at));
const phase = async (id: string) => asOf((await readChallenge(scope, id))!, Number.MAX_SAFE_INTEGER).phase;
const left = async () =>
  (await duesBy(scope.store, new Date(votesEnd + 99 * day))).filter(({ group }) => group === scope.group);

describe('a challenge keeps its own time', () => {
  test('from the announcement to the results, each told once', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await runAt(opens - day);
    expect(platform.headlines).toEqual(['“Dusk over the lagoon” has not begun.']);
    for (const at of [opens, entriesEnd - day, entriesEnd]) await runAt(at);
    expect(platform.headlines[0]).toBe('“Dusk over the lagoon” is being voted on.');
    await vote(id, 'cleo', entries);
    for (const at of [votesEnd - day, votesEnd, votesEnd + closingGrace, votesEnd + day]) await runAt(at);
    expect(platform.headlines.map(line => line.replace(/(until|end|ends) .*/, '$1 …'))).toEqual([
      '“Dusk over the lagoon” is over.',
      '“Dusk over the lagoon” is open: enter your bar until …',
      '“Dusk over the lagoon”: entries end …',
      '“Dusk over the lagoon”: 2 entries are in, vote until …',
      '“Dusk over the lagoon”: the vote ends …',
      'First in “Dusk over the lagoon”: “bar of ana” by ana',
    ]);
    expect(await left()).toEqual([]);
    expect(await phase(id)).toBe('closed');
    expect(await placingsOf(scope, 'bea')).toMatchObject([{ place: 2, of: 2 }]);
  });

  test('is not closed before its grace is over', async () => {
    const { id } = await openOne(scope);
    await runAt(votesEnd + closingGrace - 1);
    expect(await phase(id)).toBe('counting');
    await runAt(votesEnd + closingGrace);
    expect(await phase(id)).toBe('closed');
  });

  test('and was the process down, closes on start, says when, and skips news that is stale', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await vote(id, 'cleo', entries);
    await runAt(votesEnd + 3 * day);
    expect(platform.headlines).toEqual([
      '“Dusk over the lagoon” is over.',
      'First in “Dusk over the lagoon”: “bar of ana” by ana',
    ]);
    const told = JSON.stringify(platform.messages.at(-1)!.shown.blocks);
    expect(told).toContain('I was away and closed it');
    expect(await left()).toEqual([]);
  });

  test('says nothing of being late when it was not', async () => {
    const { id, entries } = await fairOf(scope, ['ana']);
    await vote(id, 'cleo', entries);
    await runAt(votesEnd + closingGrace + 15_000);
    expect(JSON.stringify(platform.messages.at(-1)!.shown.blocks)).not.toContain('I was away');
  });

  test('moves with an extension, whatever was noted for the old deadline', async () => {
    const { id } = await openOne(scope);
    await extendChallenge(
      scope,
      id,
      { votesUntil: votesEnd + day, reason: 'storm' },
      made('steward', during),
    );
    await runAt(votesEnd + closingGrace);
    expect(await phase(id)).toBe('counting');
    await runAt(votesEnd + day + closingGrace);
    expect(await phase(id)).toBe('closed');
  });

  test('once cancelled is told so, and nothing else follows', async () => {
    const { id } = await openOne(scope);
    await runAt(opens);
    await cancelChallenge(scope, id, 'storm', made('steward', opens + day));
    await runAt(opens + day);
    await runAt(votesEnd + day);
    expect(platform.headlines.filter(line => line.includes('cancelled'))).toHaveLength(2);
    expect(platform.messages.at(-1)!.shown.headline).toBe('“Dusk over the lagoon” was cancelled: storm');
    expect(await phase(id)).toBe('cancelled');
    expect(await left()).toEqual([]);
  });

  test('puts a result right in its place when a bar is taken out afterwards', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await vote(id, 'cleo', entries);
    await runAt(votesEnd + closingGrace);
    const count = platform.messages.length;
    await disqualify(scope, id, { entry: entries[0]!, reason: 'bought' }, made('steward', votesEnd + day));
    await runAt(votesEnd + day);
    expect(platform.messages).toHaveLength(count);
    const results = platform.messages.at(-1)!.shown;
    expect(results.headline).toBe('First in “Dusk over the lagoon”: “bar of bea” by bea');
    expect(JSON.stringify(results.blocks)).toContain('“bar of ana” by ana: bought');
  });

  test('tells whoever made a bar that it was taken out and why, once and in private', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await disqualify(scope, id, { entry: entries[0]!, reason: 'a copy' }, made('steward', during));
    const posted = platform.messages.length;
    await runAt(during);
    await runAt(during + day);
    expect(platform.told.map(({ member, shown }) => [member, shown.headline])).toEqual([
      ['ana', 'Your bar “bar of ana” was taken out by a steward: a copy.'],
    ]);
    expect(
      platform.messages
        .slice(posted)
        .map(({ shown }) => shown.headline)
        .join(),
    ).not.toContain('a copy');
    expect(await noticesFor(scope.store, 'ana')).toEqual([]);
  });

  test('tells them with their next answer where nothing reaches them in private', async () => {
    // Notices wait for a member wherever they are: nobody else here is told of this one.
    const { id, entries } = await fairOf(scope, ['nell']);
    platform.closed = true;
    await disqualify(scope, id, { entry: entries[0]!, reason: 'a copy' }, made('steward', during));
    await runAt(during);
    expect(await noticesFor(scope.store, 'nell')).toMatchObject([{ title: 'bar of nell', reason: 'a copy' }]);
  });

  test('closes all the same where the channel is gone for good', async () => {
    const { id } = await openOne(scope);
    platform.barred = true;
    expect(await runAt(votesEnd + day)).toEqual([]);
    expect(await phase(id)).toBe('closed');
    expect(await left()).toEqual([]);
  });

  test('tells the results later when the platform did not answer', async () => {
    const { id } = await fairOf(scope, ['ana']);
    platform.failing = true;
    expect((await runAt(votesEnd + closingGrace)).length).toBeGreaterThan(0);
    expect(await phase(id)).toBe('closed');
    platform.failing = false;
    expect(await runAt(votesEnd + day)).toEqual([]);
    expect(platform.headlines.at(-1)).toBe('First in “Dusk over the lagoon”: “bar of ana” by ana');
  });
});

/** A store and an outbox that die at the n-th step of whatever they are asked to do, and stay dead. */
function dyingAt(step: number, store: Store, outbox: Outbox) {
  let steps = 0;
  const alive = async <Value>(act: () => Promise<Value>): Promise<Value> => {
    // Twice a call: before it takes effect, and after it has but before we hear of it.
    if (++steps >= step) throw new Error('killed');
    const value = await act();
    if (++steps >= step) throw new Error('killed');
    return value;
  };
  return {
    died: () => steps >= step,
    store: {
      get: (keys: readonly string[]) => store.get(keys),
      range: (from: string, to: string, limit: number) => store.range(from, to, limit),
      commit: (writes: Parameters<Store['commit']>[0]) => alive(() => store.commit(writes)),
      close: () => store.close(),
    },
    outbox: {
      serves: (group: string) => outbox.serves(group),
      post: (...args: Parameters<Outbox['post']>) => alive(() => outbox.post(...args)),
      edit: (...args: Parameters<Outbox['edit']>) => alive(() => outbox.edit(...args)),
    },
  };
}

describe('a process that dies while closing', () => {
  test('at whatever step leaves the next one to finish: one close, one result, nothing left to do', async () => {
    let step = 1;
    for (let died = true; died; step++) {
      scope = await freshScope();
      platform = new Platform(group => group === scope.group);
      const { id, entries } = await fairOf(scope, ['ana', 'bea']);
      await runAt(opens);
      await vote(id, 'cleo', entries);
      const dying = dyingAt(step, scope.store, platform);
      await runAt(votesEnd + closingGrace, dying);
      died = dying.died();
      await runAt(votesEnd + closingGrace + 60_000);
      expect(platform.headlines.filter(line => line.startsWith('First in'))).toEqual([
        'First in “Dusk over the lagoon”: “bar of ana” by ana',
      ]);
      expect(await left()).toEqual([]);
      expect(await phase(id)).toBe('closed');
      expect(await postOf(scope, id, 'results')).toBeDefined();
      const { closedAt } = asOf((await readChallenge(scope, id))!, Number.MAX_SAFE_INTEGER);
      expect([votesEnd + closingGrace, votesEnd + closingGrace + 60_000]).toContain(closedAt);
    }
    // Claiming the end, placings, announcement, results, their note, the due: or this checked too little.
    expect(step).toBeGreaterThan(12);
  });

  test('and another at the same time: still one close, one result', async () => {
    for (let round = 0; round < 5; round++) {
      scope = await freshScope();
      platform = new Platform(group => group === scope.group);
      const { id, entries } = await fairOf(scope, ['ana', 'bea']);
      await vote(id, 'cleo', entries);
      await Promise.all([
        runAt(votesEnd + closingGrace),
        runAt(votesEnd + closingGrace + 1),
        runAt(votesEnd + closingGrace + 2),
      ]);
      expect(platform.headlines.filter(line => line.startsWith('First in'))).toHaveLength(1);
      expect(await left()).toEqual([]);
    }
  });

  test('by a real kill, again and again: the vote is closed once and told in the same words', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'closers-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const address = `sqlite:${join(folder, 'fair.sqlite')}`;
    const channel = join(folder, 'channel.jsonl');
    scope = await scopeAt(address);
    const { id, entries } = await fairOf(scope, ['ana', 'bea', 'cleo']);
    await vote(id, 'dora', entries);
    const closer = (killAt: string) =>
      new Promise<NodeJS.Signals | null>(resolve => {
        const child = fork(new URL('closer.ts', import.meta.url), [address, channel, killAt], {
          execArgv: [],
        });
        child.on('exit', (_, signal) => resolve(signal));
      });
    expect([await closer('post'), await closer('results'), await closer('never')]).toEqual([
      'SIGKILL',
      'SIGKILL',
      null,
    ]);
    const posted = readFileSync(channel, 'utf8')
      .trim()
      .split('\n')
      .map(line => JSON.parse(line));
    const results = posted.filter(({ nonce }) => nonce === `r${id}`);
    expect(new Set(results.map(({ headline }) => headline))).toEqual(
      new Set(['First in “Dusk over the lagoon”: “bar of ana” by ana']),
    );
    expect(await phase(id)).toBe('closed');
    expect(await left()).toEqual([]);
    await scope.store.close();
  });
});
