import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { challengeAt } from '../../../src/engine/challenges/challenge.ts';
import { type Measured, resultOf } from '../../../src/engine/challenges/result.ts';
import type { Terms } from '../../../src/engine/challenges/terms.ts';
import { ballotOf, checkChoice, requireVoter } from '../../../src/engine/challenges/voting/voting.ts';
import { disqualified, entered, opened, opens, votesEnd } from './challenge-book.ts';

const entries = [entered('a', 'ana'), entered('b', 'bea'), entered('c', 'cleo')];
const challenge = (more: Partial<Terms> = {}, out: readonly string[] = []) =>
  challengeAt([opened(more), ...entries, ...out.map(entry => disqualified(entry))], votesEnd);
const measured = (score: number, plusMinus = 1): Measured => ({
  score: { score, plusMinus, matches: [], stray: { share: 0, adds: 0 } },
});
const colour = new Map([
  ['a', measured(20)],
  ['b', measured(10)],
  ['c', measured(2)],
]);
const vote = (member: string, ...ranked: readonly string[]) => ({
  member,
  chosen: ranked.map(entry => [entry]),
});
const votes = [vote('dora', 'a', 'b', 'c'), vote('eva', 'a', 'b', 'c'), vote('fay', 'b', 'a', 'c')];

describe('a choice', () => {
  test('keeps no vote for the voter’s own bar', () => {
    expect(checkChoice(challenge(), 'ana', [['a'], ['b']])).toEqual([['b']]);
    expect(ballotOf(challenge(), vote('ana', 'b'))).toEqual({ count: 1, ranking: [['b']], omit: ['a'] });
  });

  test('of somebody without a bar leaves nothing out', () => {
    expect(ballotOf(challenge(), vote('dora', 'b', 'a'))).toEqual({ count: 1, ranking: [['b'], ['a']] });
  });

  test('keeps those liked alike together, less the voter’s own', () => {
    expect(checkChoice(challenge(), 'ana', [['b', 'a'], ['c']])).toEqual([['b'], ['c']]);
    expect(checkChoice(challenge(), 'dora', [['c'], ['b', 'a']])).toEqual([['c'], ['b', 'a']]);
    const kept = { member: 'ana', chosen: [['b', 'a'], ['c']] };
    expect(ballotOf(challenge(), kept)).toEqual({ count: 1, ranking: [['b'], ['c']], omit: ['a'] });
  });

  test('of one bar is what a single choice asks for, the own bar beside it not counted', () => {
    const single = challenge({ method: 'single' });
    expect(checkChoice(single, 'dora', [['b']])).toEqual([['b']]);
    expect(checkChoice(single, 'ana', [['a'], ['b']])).toEqual([['b']]);
  });

  type Case = readonly [string, Partial<Terms>, readonly string[][], string, Record<string, unknown>];
  const refused: readonly Case[] = [
    ['of nothing but the own bar', {}, [['a']], 'vote-own-only', {}],
    ['of nothing', {}, [], 'vote-empty', {}],
    ['of no bar in two ranks', {}, [[], []], 'vote-empty', {}],
    ['of a bar that is not there', {}, [['b'], ['z']], 'vote-entry-unknown', { entry: 'z' }],
    ['of one bar twice', {}, [['b'], ['c', 'b']], 'vote-entry-twice', { entry: 'b' }],
    ['of two where one is asked', { method: 'single' }, [['b'], ['c']], 'vote-one-only', { chosen: 2 }],
  ];
  test.each(refused)('%s is refused', (_, more, chosen, id, values) => {
    expect(() => checkChoice(challenge(more), 'ana', chosen)).toThrow(
      expect.objectContaining({ id, values }),
    );
  });

  test('of several by approval counts all of them alike', () => {
    expect(checkChoice(challenge({ method: 'approval' }), 'dora', [['a'], ['b']])).toEqual([['a', 'b']]);
  });

  test('loses the bars that were taken out since', () => {
    expect(ballotOf(challenge({}, ['a']), vote('dora', 'a', 'b')).ranking).toEqual([['b']]);
    expect(ballotOf(challenge({}, ['a']), vote('ana', 'b', 'c'))).toEqual({
      count: 1,
      ranking: [['b'], ['c']],
    });
  });
});

describe('a voter', () => {
  test('joined the group before the day that counts', () => {
    const strict = challenge({ joinedBefore: opens });
    expect(() => requireVoter(strict, { member: 'dora', joinedAt: opens - 1 })).not.toThrow();
    expect(() => requireVoter(strict, { member: 'dora', joinedAt: opens })).toThrow(
      expect.objectContaining({ id: 'vote-joined-late', values: { before: opens, zone: 'Europe/Madrid' } }),
    );
    expect(() => requireVoter(strict, { member: 'dora', joinedAt: undefined })).toThrow(
      expect.objectContaining({ id: 'vote-joined-unknown' }),
    );
    expect(() => requireVoter(challenge(), { member: 'dora', joinedAt: undefined })).not.toThrow();
  });
});

describe('a result', () => {
  test('by votes follows the ballots', () => {
    const result = resultOf({ challenge: challenge(), ballots: votes, colour });
    expect(result).toMatchObject({ decidedBy: 'votes', ranking: [['a'], ['b'], ['c']], sums: [] });
    expect(result.tally!.ballots).toBe(3);
  });

  test('by colour follows the measurements and names what could not be placed', () => {
    const unscored = new Map(colour).set('b', { unscored: 'neon' });
    const result = resultOf({ challenge: challenge({ decides: 'colour' }), ballots: [], colour: unscored });
    expect(result).toMatchObject({
      ranking: [['c'], ['a']],
      unplaced: [{ entry: 'b', why: 'neon' }],
      tally: undefined,
    });
  });

  test('by both adds the places', () => {
    const result = resultOf({ challenge: challenge({ decides: 'both' }), ballots: votes, colour });
    expect(result.ranking).toEqual([['a', 'b', 'c']]);
    expect(result.sums).toContainEqual({ entry: 'a', byVotes: 1, byColour: 3 });
  });

  test('below the quorum is decided by colour alone, or by nothing', () => {
    const few = { quorum: 4 };
    const both = resultOf({ challenge: challenge({ ...few, decides: 'both' }), ballots: votes, colour });
    expect(both).toMatchObject({ decidedBy: 'colour', ranking: [['c'], ['b'], ['a']], sums: [] });
    const none = resultOf({ challenge: challenge(few), ballots: votes, colour });
    expect(none).toMatchObject({
      decidedBy: 'nothing',
      ranking: [],
      quorum: { needed: 4, cast: 3, met: false },
    });
  });

  test('moves everybody up when a bar is taken out', () => {
    const result = resultOf({ challenge: challenge({}, ['a']), ballots: votes, colour });
    expect(result.ranking).toEqual([['b'], ['c']]);
  });

  test('of a challenge nobody entered is empty', () => {
    const empty = challengeAt([opened({ decides: 'both' })], votesEnd);
    expect(resultOf({ challenge: empty, ballots: [], colour: new Map() })).toMatchObject({
      ranking: [],
      sums: [],
    });
  });

  test.prop([fc.shuffledSubarray(votes, { minLength: 3 })])(
    'is the same in whatever order ballots come',
    ballots => {
      const broken = challenge({ decides: 'both', ties: { brokenBySeed: 's' } });
      expect(resultOf({ challenge: broken, ballots, colour })).toEqual(
        resultOf({ challenge: broken, ballots: votes, colour }),
      );
    },
  );
});

test('bars without a measured colour are left unplaced where colour decides, and nowhere else', () => {
  const some = new Map([['b', measured(10)]]);
  const unplacedOf = (decides: Terms['decides']) =>
    resultOf({ challenge: challenge({ decides }), ballots: votes, colour: some }).unplaced.map(
      one => one.entry,
    );
  expect(unplacedOf('colour')).toEqual(['a', 'c']);
  expect(unplacedOf('votes')).toEqual([]);
});
