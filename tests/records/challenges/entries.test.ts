import { beforeEach, describe, expect, test } from 'vitest';
import {
  asOf,
  type ChallengeScope,
  disqualify,
  enterBar,
  listChallenges,
  openChallenge,
  photosOf,
  readChallenge,
  replaceBar,
  standingBars,
  withdrawBar,
} from '../../../src/records/challenges/index.ts';
import { bar, day, entriesEnd, fairOf, freshScope, made, openOne, opens, terms, votesEnd } from './fair.ts';

let scope: ChallengeScope;
beforeEach(async () => {
  scope = await freshScope();
});

const barsOf = async (id: string, time = votesEnd) =>
  standingBars((await readChallenge(scope, id))!, time).map(({ bar: { title } }) => title);

describe('a challenge in the records', () => {
  test('comes back as it was opened', async () => {
    const opening = made('steward', opens - day);
    const full = {
      ...terms,
      palette: [{ hex: '#1f7a78', lab: { l: 46.5, a: -25.2, b: -8.1 }, share: 2 }],
      paletteSeed: 'moon',
      mostColourants: 3,
      madeFrom: '2026-10-20',
      leastCureDays: 28,
      joinedBefore: opens,
      quorum: 5,
      ties: { brokenBySeed: 'moon' },
      decides: 'both',
    } as const;
    await openChallenge(scope, { terms: full, channel: 'fair', language: 'es' }, opening);
    const found = await readChallenge(scope, opening.id);
    expect(found).toMatchObject({ channel: 'fair', language: 'es', openedAt: opening.at });
    expect(asOf(found!, opens)).toMatchObject({ terms: full, phase: 'entering' });
  });

  test('is opened once, however often the interaction is delivered', async () => {
    const opening = made('steward', opens - day);
    const asked = { terms, channel: 'fair', language: 'en' } as const;
    expect(await openChallenge(scope, asked, opening)).toEqual({ id: opening.id, repeated: false });
    expect(await openChallenge(scope, asked, opening)).toEqual({ id: opening.id, repeated: true });
    expect(await listChallenges(scope)).toHaveLength(1);
  });

  test('belongs to one group', async () => {
    const { id } = await openOne(scope);
    expect(await readChallenge({ ...scope, group: 'others' }, id)).toBeUndefined();
    await expect(
      enterBar({ ...scope, group: 'others' }, id, { bar: bar('x', 'ana') }, made('ana', opens)),
    ).rejects.toMatchObject({ id: 'challenge-unknown' });
  });

  test('is listed with the newest first', async () => {
    const older = await openChallenge(
      scope,
      { terms, channel: 'c', language: 'en' },
      made('s', opens - 2 * day),
    );
    const newer = await openOne(scope);
    expect((await listChallenges(scope)).map(({ id }) => id)).toEqual([newer.id, older.id]);
    expect(await listChallenges(scope, 1)).toHaveLength(1);
  });
});

describe('an entry in the records', () => {
  test('counts once, however often the interaction is delivered', async () => {
    const { id } = await openOne(scope, { entriesPerMember: 3 });
    const entering = made('ana', opens);
    const first = await enterBar(scope, id, { bar: bar('dusk', 'ana') }, entering);
    const again = await enterBar(scope, id, { bar: bar('dusk', 'ana') }, entering);
    expect([first.repeated, again.repeated, again.entry]).toEqual([false, true, first.entry]);
    expect(await barsOf(id)).toEqual(['dusk']);
  });

  test('is refused outside the time for entries, by the time of the interaction', async () => {
    const { id } = await openOne(scope);
    const enter = (at: number) => enterBar(scope, id, { bar: bar('dusk', 'ana') }, made('ana', at));
    await expect(enter(opens - 1)).rejects.toMatchObject({
      id: 'challenge-not-now',
      values: { phase: 'announced' },
    });
    await expect(enter(entriesEnd)).rejects.toMatchObject({ values: { phase: 'voting', needs: 'entering' } });
    await expect(enter(entriesEnd - 1)).resolves.toMatchObject({ repeated: false });
  });

  test('takes one of as many places as a member has, also when all come at once', async () => {
    const { id } = await openOne(scope, { entriesPerMember: 2 });
    const tries = await Promise.allSettled(
      Array.from({ length: 8 }, (_, i) =>
        enterBar(scope, id, { bar: bar(`bar ${i}`, 'ana') }, made('ana', opens + i)),
      ),
    );
    expect(tries.filter(({ status }) => status === 'fulfilled')).toHaveLength(2);
    expect(await barsOf(id)).toHaveLength(2);
    const refused = tries.find(one => one.status === 'rejected');
    expect(refused?.reason).toMatchObject({ id: 'challenge-entries-full', values: { most: 2 } });
  });

  test('is replaced whole, photo included; before that it was what it was', async () => {
    const { id } = await openOne(scope);
    const photo = Uint8Array.of(1, 2, 3);
    const { entry } = await enterBar(scope, id, { bar: bar('dusk', 'ana'), photo }, made('ana', opens));
    await replaceBar(
      scope,
      id,
      { entry, bar: bar('dawn', 'ana'), photo: Uint8Array.of(4, 5) },
      made('ana', opens + day),
    );
    expect(await barsOf(id)).toEqual(['dawn']);
    expect(await barsOf(id, opens + 1)).toEqual(['dusk']);
    const found = (await readChallenge(scope, id))!;
    const [now] = await photosOf(scope, id, standingBars(found, votesEnd));
    const [before] = await photosOf(scope, id, standingBars(found, opens + 1));
    expect([[...now!], [...before!]]).toEqual([
      [4, 5],
      [1, 2, 3],
    ]);
  });

  test('is replaced by its maker only, and only in time', async () => {
    const { id, entries } = await fairOf(scope, ['ana']);
    const replace = (by: string, at: number) =>
      replaceBar(scope, id, { entry: entries[0]!, bar: bar('mine now', by) }, made(by, at));
    await expect(replace('bea', opens + 2 * day)).rejects.toMatchObject({ id: 'challenge-entry-unknown' });
    await expect(replace('ana', entriesEnd)).rejects.toMatchObject({ id: 'challenge-not-now' });
    expect(await barsOf(id)).toEqual(['bar of ana']);
  });

  test('taken back makes room for another one', async () => {
    const { id, entries } = await fairOf(scope, ['ana']);
    const at = opens + 2 * day;
    await expect(enterBar(scope, id, { bar: bar('two', 'ana') }, made('ana', at))).rejects.toMatchObject({
      id: 'challenge-entries-full',
    });
    await withdrawBar(scope, id, entries[0]!, made('ana', at));
    await enterBar(scope, id, { bar: bar('two', 'ana') }, made('ana', at + 1));
    expect(await barsOf(id)).toEqual(['two']);
  });

  test('taken out by a steward is gone, keeps its place taken, and the reason stands in the audit list', async () => {
    const { id, entries } = await fairOf(scope, ['ana', 'bea']);
    const out = made('steward', opens + 2 * day);
    await disqualify(scope, id, { entry: entries[0]!, reason: ' bought ' }, out);
    expect(await disqualify(scope, id, { entry: entries[0]!, reason: 'bought' }, out)).toEqual({
      repeated: true,
    });
    expect(await barsOf(id)).toEqual(['bar of bea']);
    const { audit } = asOf((await readChallenge(scope, id))!, votesEnd);
    expect(audit.at(-1)).toMatchObject({ kind: 'disqualified', by: 'steward', reason: 'bought' });
    await expect(
      enterBar(scope, id, { bar: bar('again', 'ana') }, made('ana', opens + 3 * day)),
    ).rejects.toMatchObject({ id: 'challenge-entries-full' });
    await expect(
      disqualify(scope, id, { entry: entries[1]!, reason: ' ' }, made('steward', opens + 3 * day)),
    ).rejects.toMatchObject({ id: 'challenge-reason-missing' });
  });
});
