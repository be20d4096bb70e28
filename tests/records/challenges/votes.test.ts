import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { tally } from '../../../src/engine/challenges/voting/tally.ts';
import {
  asOf,
  ballotsOf,
  type ChallengeScope,
  cancelChallenge,
  castBallot,
  choiceOf,
  closeChallenge,
  disqualify,
  exportElection,
  extendChallenge,
  keepPlacings,
  placingsOf,
  readChallenge,
  resultAt,
} from '../../../src/records/challenges/index.ts';
import { duesBy } from '../../../src/records/dues/dues.ts';
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
} from './fair.ts';

let scope: ChallengeScope;
beforeEach(async () => {
  scope = await freshScope();
});

const during = entriesEnd + day;
const vote = (id: string, by: string, ranked: readonly string[], at = during) =>
  castBallot(scope, id, { chosen: ranked.map(entry => [entry]), joinedAt: 0 }, made(by, at));
const counted = async (id: string) => ballotsOf(scope, id, asOf((await readChallenge(scope, id))!, votesEnd));
const close = async (id: string, now = votesEnd + closingGrace) =>
  closeChallenge(scope, (await readChallenge(scope, id))!, now);

describe('a ballot in the records', () => {
  test('can be changed until the end, and the last one counts', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    const [a, b] = entries as [string, string];
    expect(await vote(id, 'cleo', [a, b])).toMatchObject({ changed: false });
    expect(await vote(id, 'cleo', [b, a], during + 1)).toMatchObject({ changed: true });
    expect(await counted(id)).toEqual([{ member: 'cleo', chosen: [[b], [a]] }]);
    expect(await choiceOf(scope, id, 'cleo')).toEqual([[b], [a]]);
    expect(await choiceOf(scope, id, 'dora')).toBeUndefined();
  });

  test('that was made earlier and comes in later does not undo the later one', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    const [a, b] = entries as [string, string];
    await vote(id, 'cleo', [b], during + 1);
    expect(await vote(id, 'cleo', [a], during)).toMatchObject({ superseded: true });
    expect(await counted(id)).toEqual([{ member: 'cleo', chosen: [[b]] }]);
  });

  test('delivered twice is one ballot', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    const once = made('cleo', during);
    const cast = () => castBallot(scope, id, { chosen: [[entries[0]!]], joinedAt: 0 }, once);
    await Promise.all([cast(), cast(), cast()]);
    expect(await counted(id)).toHaveLength(1);
  });

  test('is refused before and after the vote by the time of the interaction, and after the close by any', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    const refused = { id: 'challenge-not-now' };
    await expect(vote(id, 'cleo', entries, entriesEnd - 1)).rejects.toMatchObject(refused);
    await expect(vote(id, 'cleo', entries, votesEnd)).rejects.toMatchObject(refused);
    await vote(id, 'cleo', entries, votesEnd - 1);
    expect(await close(id, votesEnd + closingGrace - 1)).toBe(false);
    await vote(id, 'dora', entries, votesEnd - 1);
    expect(await close(id)).toBe(true);
    await expect(vote(id, 'eva', entries, votesEnd - 1)).rejects.toMatchObject({
      ...refused,
      values: { phase: 'closed', needs: 'voting' },
    });
    expect(await counted(id)).toHaveLength(2);
  });

  test('of one who joined late is refused', async () => {
    const { id, entries } = await fairOf(scope, ['ana'], { joinedBefore: opens });
    const late = castBallot(scope, id, { chosen: [[entries[0]!]], joinedAt: opens }, made('cleo', during));
    await expect(late).rejects.toMatchObject({ id: 'vote-joined-late' });
  });

  test('counts when the vote was extended, and the old deadline does not close', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await extendChallenge(
      scope,
      id,
      { votesUntil: votesEnd + day, reason: 'storm' },
      made('steward', during),
    );
    expect(await close(id)).toBe(false);
    await vote(id, 'cleo', entries, votesEnd + 1);
    expect(await close(id, votesEnd + day + closingGrace)).toBe(true);
    const challenge = (await readChallenge(scope, id))!;
    expect((await resultAt(scope, challenge, votesEnd + 2 * day)).tally!.ballots).toBe(1);
  });
});

describe('what stewards may do', () => {
  test('leaves something to do at every new deadline, and nothing at the old', async () => {
    const { id } = await openOne(scope);
    const closings = async () =>
      (await duesBy(scope.store, new Date(votesEnd + 9 * day))).filter(
        ({ what, group }) => what === 'challenge-close' && group === scope.group,
      );
    expect((await closings()).map(({ at }) => at.getTime())).toEqual([votesEnd + closingGrace]);
    await extendChallenge(
      scope,
      id,
      { votesUntil: votesEnd + day, reason: 'storm' },
      made('steward', during),
    );
    expect((await closings()).map(({ at }) => at.getTime())).toEqual([votesEnd + day + closingGrace]);
  });

  test('does not include moving a deadline back, or one that has passed', async () => {
    const { id } = await openOne(scope);
    const extend = (votesUntil: number, at: number) =>
      extendChallenge(scope, id, { votesUntil, reason: 'storm' }, made('steward', at));
    await expect(extend(votesEnd - 1, during)).rejects.toMatchObject({ id: 'challenge-extension-unfit' });
    await expect(extend(votesEnd + day, votesEnd)).rejects.toMatchObject({ id: 'challenge-extension-unfit' });
    await close(id);
    await expect(extend(votesEnd + day, votesEnd + 2 * day)).rejects.toMatchObject({ id: 'challenge-over' });
  });

  test('ends in one way only when closing and cancelling meet', async () => {
    for (let round = 0; round < 10; round++) {
      const { id } = await openOne(scope);
      const [closed, cancelled] = await Promise.allSettled([
        close(id),
        cancelChallenge(scope, id, 'storm', made('steward', votesEnd + closingGrace)),
      ]);
      const { phase } = asOf((await readChallenge(scope, id))!, votesEnd + day);
      const byClose = closed.status === 'fulfilled' && closed.value;
      const byCancel = cancelled.status === 'fulfilled';
      expect([byClose, byCancel]).toEqual(phase === 'closed' ? [true, false] : [false, true]);
    }
  });

  test('once cancelled takes no ballot', async () => {
    const { id, entries } = await fairOf(scope, ['ana']);
    const stop = made('steward', during);
    expect(await cancelChallenge(scope, id, 'storm', stop)).toEqual({ repeated: false });
    expect(await cancelChallenge(scope, id, 'storm', stop)).toEqual({ repeated: true });
    await expect(vote(id, 'cleo', entries, during - 1)).rejects.toMatchObject({
      values: { phase: 'cancelled' },
    });
  });
});

describe('a result from the records', () => {
  test('exports in the form that anyone can count again', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea', 'cleo']);
    const [a, b, c] = entries as [string, string, string];
    await vote(id, 'dora', [a, b]);
    await vote(id, 'eva', [a, b]);
    await vote(id, 'ana', [c, b]);
    const challenge = (await readChallenge(scope, id))!;
    const exported = await exportElection(scope, challenge, votesEnd);
    expect(exported.candidates).toEqual(entries);
    expect(exported.ballots).toContainEqual({ count: 2, ranking: [[a], [b]] });
    expect(exported.ballots).toContainEqual({ count: 1, ranking: [[c], [b]], omit: [a] });
    const { tally: shown } = await resultAt(scope, challenge, votesEnd);
    expect(tally(exported, exported.method, exported.ties)).toEqual(shown);
  });

  test('is kept for every maker, and put right when a bar is taken out', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    await vote(id, 'cleo', entries);
    await close(id);
    const keep = async () => {
      const challenge = (await readChallenge(scope, id))!;
      await keepPlacings(scope, challenge, await resultAt(scope, challenge, votesEnd + 2 * day));
    };
    await keep();
    expect(await placingsOf(scope, 'bea')).toMatchObject([
      { challenge: id, place: 2, of: 2, bar: 'bar of bea' },
    ]);
    await disqualify(scope, id, { entry: entries[0]!, reason: 'bought' }, made('steward', votesEnd + day));
    await keep();
    expect(await placingsOf(scope, 'bea')).toMatchObject([{ place: 1, of: 1 }]);
    expect(await placingsOf(scope, 'ana')).toEqual([]);
  });
});

/** A process of its own that votes or closes; resolves with what it said it had done. */
function elsewhere(...args: readonly string[]): Promise<readonly unknown[]> {
  return new Promise((resolve, reject) => {
    const said: unknown[] = [];
    const child = fork(new URL('elsewhere.ts', import.meta.url), args, { execArgv: [] });
    child.on('message', message => said.push(message));
    child.on('error', reject);
    child.on('exit', code => (code === 0 ? resolve(said) : reject(new Error(`ended with ${code}`))));
  });
}

describe('several processes at once', () => {
  test('lose no acknowledged ballot while two others close, and count none after', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'votes-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const address = `sqlite:${join(folder, 'fair.sqlite')}`;
    scope = await scopeAt(address);
    const { id, entries } = await fairOf(scope, ['ana', 'bea', 'cleo']);
    const [one, two, ...closers] = await Promise.all([
      elsewhere('vote', address, id, 'x', ...entries),
      elsewhere('vote', address, id, 'y', ...entries),
      elsewhere('close', address, id, '60'),
      elsewhere('close', address, id, '61'),
    ]);
    const acknowledged = [one, two].flat().map(String).sort();
    const challenge = (await readChallenge(scope, id))!;
    const result = await resultAt(scope, challenge, Number.MAX_SAFE_INTEGER);
    const inTally = await ballotsOf(scope, id, asOf(challenge, Number.MAX_SAFE_INTEGER));
    expect(inTally.map(({ member }) => member).sort()).toEqual(acknowledged);
    expect(closers).toEqual([[result.tally], [result.tally]]);
    expect(acknowledged.length).toBeGreaterThanOrEqual(60);
    await scope.store.close();
  });
});
