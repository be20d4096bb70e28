import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { challengeAt, mayExtend, standing } from '../../../src/engine/challenges/challenge.ts';
import type { ChallengeEvent } from '../../../src/engine/challenges/events.ts';
import {
  cancelled,
  closed,
  day,
  disqualified,
  entered,
  entriesEnd,
  extended,
  opened,
  opens,
  replaced,
  votesEnd,
  withdrawn,
} from './challenge-book.ts';

const phaseAt = (events: readonly ChallengeEvent[], time: number) => challengeAt(events, time).phase;

const running = (events: readonly ChallengeEvent[], at = votesEnd) =>
  standing(challengeAt(events, at)).map(({ entry }) => entry);

describe('a challenge', () => {
  test('goes from announced to entering, voting and counting at its own times, and is closed by an event only', () => {
    const events = [opened(), closed(votesEnd + 5000)];
    const phases = [opens - 1, opens, entriesEnd - 1, entriesEnd, votesEnd - 1, votesEnd, votesEnd + 5000];
    expect(phases.map(at => phaseAt(events, at))).toEqual([
      'announced',
      'entering',
      'entering',
      'voting',
      'voting',
      'counting',
      'closed',
    ]);
  });

  test('stays counting for as long as nobody closes it', () => {
    expect(phaseAt([opened()], votesEnd + 30 * day)).toBe('counting');
  });

  test('knows no event of the future', () => {
    const events = [opened(), entered('a', 'ana', opens + 2 * day)];
    expect(running(events, opens + day)).toEqual([]);
  });

  test('takes entries by the time they were made, not the time they came in', () => {
    const events = [entered('late', 'ana', entriesEnd), opened(), entered('early', 'bea', entriesEnd - 1)];
    expect(running(events)).toEqual(['early']);
  });

  test('lets a maker take an entry back, and a steward take one out with a reason', () => {
    const events = [
      opened(),
      entered('a', 'ana'),
      entered('b', 'bea'),
      withdrawn('a', 'ana'),
      disqualified('b'),
    ];
    expect(running(events)).toEqual([]);
    expect(challengeAt(events, votesEnd).entries.get('b')).toMatchObject({
      state: 'disqualified',
      reason: 'bought, not made',
    });
  });

  test('lets nobody take back what is not theirs', () => {
    expect(running([opened(), entered('a', 'ana'), withdrawn('a', 'bea')])).toEqual(['a']);
  });

  test('does not bring a disqualified bar back because it is replaced', () => {
    expect(
      running([opened(), entered('a', 'ana'), disqualified('a', opens + day + 1), replaced('a', 'ana')]),
    ).toEqual([]);
  });

  test('moves a deadline when a steward extends it in time', () => {
    const longer = [opened(), extended(votesEnd - 1, { votesUntil: votesEnd + day })];
    expect(phaseAt(longer, votesEnd)).toBe('voting');
    expect(phaseAt(longer, votesEnd + day)).toBe('counting');
  });

  test('stays over when a steward extends it too late, or to an earlier time', () => {
    expect(phaseAt([opened(), extended(votesEnd, { votesUntil: votesEnd + day })], votesEnd)).toBe(
      'counting',
    );
    expect(phaseAt([opened(), extended(opens, { votesUntil: votesEnd - day })], votesEnd - day)).toBe(
      'voting',
    );
  });

  test('keeps entries before votes when only one is extended', () => {
    const now = challengeAt([opened()], opens);
    expect(mayExtend(now, { at: opens, entriesUntil: votesEnd })).toBe(false);
    expect(mayExtend(now, { at: opens, entriesUntil: votesEnd, votesUntil: votesEnd + day })).toBe(true);
    expect(mayExtend(now, { at: opens })).toBe(false);
  });

  test('where colour decides alone ends both at once', () => {
    const now = challengeAt([opened({ decides: 'colour', votesUntil: entriesEnd })], opens);
    expect(mayExtend(now, { at: opens, entriesUntil: votesEnd })).toBe(false);
    expect(mayExtend(now, { at: opens, entriesUntil: votesEnd, votesUntil: votesEnd })).toBe(true);
  });

  test('once cancelled stays cancelled and takes nothing more', () => {
    const events = [
      opened(),
      cancelled(opens + day),
      entered('a', 'ana', opens + 2 * day),
      closed(votesEnd + 1),
    ];
    expect(phaseAt(events, votesEnd + day)).toBe('cancelled');
    expect(running(events)).toEqual([]);
  });

  test('once closed cannot be cancelled, but a bar can still be taken out', () => {
    const events = [
      opened(),
      entered('a', 'ana'),
      closed(votesEnd + 5000),
      cancelled(votesEnd + day),
      disqualified('a', votesEnd + day),
    ];
    expect(phaseAt(events, votesEnd + 2 * day)).toBe('closed');
    expect(running(events, votesEnd + 2 * day)).toEqual([]);
  });

  test('lists for the members what stewards did, and nothing that had no effect', () => {
    const events = [
      opened(),
      entered('a', 'ana'),
      disqualified('a'),
      disqualified('nobody'),
      extended(votesEnd, { votesUntil: votesEnd + 1 }),
    ];
    expect(challengeAt(events, votesEnd + day).audit.map(({ kind }) => kind)).toEqual([
      'opened',
      'disqualified',
    ]);
  });

  const anyEvents = fc
    .array(
      fc.oneof(
        fc
          .tuple(
            fc.constantFrom('a', 'b', 'c'),
            fc.constantFrom('ana', 'bea'),
            fc.integer({ min: -1, max: 11 }),
          )
          .map(([entry, by, days]) => entered(entry, by, opens + days * day)),
        fc
          .tuple(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: -1, max: 11 }))
          .map(([entry, days]) => withdrawn(entry, 'ana', opens + days * day)),
        fc
          .integer({ min: -1, max: 11 })
          .map(days => extended(opens + days * day, { votesUntil: votesEnd + day })),
        fc.integer({ min: -1, max: 11 }).map(days => disqualified('b', opens + days * day)),
      ),
      { maxLength: 8 },
    )
    .map(events => [opened(), ...events]);

  test.prop([anyEvents, fc.integer({ min: 0, max: 12 }), fc.nat()])(
    'is the same however its events are ordered in the list',
    (events, days, turn) => {
      const by = turn % events.length;
      const turned = [...events.slice(by), ...events.slice(0, by)].reverse();
      expect(challengeAt(turned, opens + days * day)).toEqual(challengeAt(events, opens + days * day));
    },
  );

  test('without its opening is a fault of ours', () => {
    expect(() => challengeAt([entered('a', 'ana')], votesEnd)).toThrow('opened it');
  });
});
