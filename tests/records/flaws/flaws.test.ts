import { beforeEach, describe, expect, test } from 'vitest';
import * as flaws from '../../../src/records/flaws/index.ts';
import { flawCases, under } from '../../../src/records/keys.ts';
import { openStore } from '../../../src/records/open.ts';
import { everything } from '../../../src/records/store.ts';

let scope: flaws.FlawScope;
beforeEach(async () => {
  scope = { store: await openStore('sqlite::memory:'), group: 'g' };
});

const opened = (at: string): flaws.FlawCase => ({ member: 'm', words: 'white spots', at: new Date(at) });
const told = (cause: flaws.Outcome, member: string, at = '2026-03-01T10:00:00Z') => ({
  cause,
  member,
  at: new Date(at),
});

describe('a case', () => {
  test('holds its answers one key each, the first of two presses, in the order they were given', async () => {
    await flaws.openCase(scope, '100', opened('2026-03-01T10:00:00Z'));
    const answer = (finding: 'soft' | 'greasy', say: flaws.Answer, at: string) =>
      flaws.keepAnswer(scope, '100', { finding, answer: say, at: new Date(at) });
    await Promise.all([
      answer('soft', 'yes', '2026-03-01T10:02:00Z'),
      answer('greasy', 'unsure', '2026-03-01T10:01:00Z'),
    ]);
    await answer('soft', 'no', '2026-03-01T10:03:00Z');
    await flaws.withdraw(scope, '100', ['greasy', 'greasy'], new Date('2026-03-01T10:04:00Z'));
    const file = await flaws.fileOf(scope, '100');
    expect(file.answers.map(({ finding, answer: say }) => [finding, say])).toEqual([
      ['greasy', 'unsure'],
      ['soft', 'yes'],
    ]);
    expect(file.withdrawn).toEqual(['greasy']);
  });

  test('a second delivery opens nothing anew', async () => {
    await flaws.openCase(scope, '100', opened('2026-03-01T10:00:00Z'));
    await flaws.openCase(scope, '100', { ...opened('2026-03-01T11:00:00Z'), words: 'other' });
    expect((await flaws.fileOf(scope, '100')).opened.words).toBe('white spots');
  });

  test('is dropped with its answers once newer cases come two days later, and says so', async () => {
    await flaws.openCase(scope, '100', opened('2026-03-01T10:00:00Z'));
    await flaws.keepAnswer(scope, '100', {
      finding: 'soft',
      answer: 'yes',
      at: new Date('2026-03-01T10:00:00Z'),
    });
    await flaws.openCase(scope, '200', opened('2026-03-02T10:00:00Z'));
    await flaws.openCase(scope, '300', opened('2026-03-03T12:00:00Z'));
    await expect(flaws.fileOf(scope, '100')).rejects.toMatchObject({ id: 'flaw-case-gone' });
    expect(await everything(scope.store, under(flawCases('g')))).toHaveLength(2);
    expect((await flaws.fileOf(scope, '200')).opened.member).toBe('m');
  });
});

describe('what cases turned out to be', () => {
  test('counts once a case, the later word', async () => {
    await flaws.keepOutcome(scope, '1', told('ricing', 'a', '2026-03-01T10:00:00Z'));
    await flaws.keepOutcome(scope, '1', told('soda-ash', 'a', '2026-03-05T10:00:00Z'));
    await flaws.keepOutcome(scope, '1', told('ricing', 'a', '2026-03-02T10:00:00Z'));
    expect(await flaws.learnedIn(scope)).toEqual({
      cases: 1,
      counts: { 'soda-ash': 1 },
      turnedOut: { 'soda-ash': 1 },
    });
  });

  test('one member alone moves little, and something else moves nothing', async () => {
    for (let n = 1; n <= 10; n += 1) await flaws.keepOutcome(scope, String(n), told('soda-ash', 'a'));
    await flaws.keepOutcome(scope, '11', told('soda-ash', 'b'));
    await flaws.keepOutcome(scope, '12', told('something-else', 'b'));
    const { counts, turnedOut } = await flaws.learnedIn(scope);
    expect(counts).toEqual({ 'soda-ash': 11, 'something-else': 1 });
    expect(turnedOut).toEqual({ 'soda-ash': flaws.MOST_OF_ONE_MEMBER + 1 });
  });

  test('stays in its group, and is forgotten there alone', async () => {
    const other = { ...scope, group: 'h' };
    await flaws.keepOutcome(scope, '1', told('ricing', 'a'));
    await flaws.keepOutcome(other, '2', told('soda-ash', 'a'));
    expect(await flaws.forgetOutcomes(scope)).toBe(1);
    expect((await flaws.learnedIn(scope)).cases).toBe(0);
    expect((await flaws.learnedIn(other)).cases).toBe(1);
  });
});
