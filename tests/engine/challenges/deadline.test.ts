import { describe, expect, test } from 'vitest';
import { readDeadline } from '../../../src/engine/challenges/deadline.ts';
import { dateAt, daysBetween } from '../../../src/engine/challenges/wall-time.ts';

/** Wednesday 25 November 2026, 10:30 in Madrid. */
const now = Date.UTC(2026, 10, 25, 9, 30);
const madrid = { zone: 'Europe/Madrid', now };
const utc = (text: string, writing = madrid) =>
  new Date(readDeadline(text, writing).at).toISOString().slice(0, 16);

describe('a deadline', () => {
  test.each([
    ['2026-12-01 18:00', '2026-12-01T17:00'],
    ['2026-12-01T18:00', '2026-12-01T17:00'],
    ['2026-12-01 at 6pm', '2026-12-01T17:00'],
    ['2026-12-01 6:30 p.m.', '2026-12-01T17:30'],
    ['2026-12-01 12am', '2026-11-30T23:00'],
    ['in 3 days', '2026-11-28T09:30'],
    ['in 3 days at 18:00', '2026-11-28T17:00'],
    ['In 2 weeks', '2026-12-09T09:30'],
    ['in 36 hours', '2026-11-26T21:30'],
    ['in 90 minutes', '2026-11-25T11:00'],
    ['en 5 minutos', '2026-11-25T09:35'],
    ['friday 18:00', '2026-11-27T17:00'],
    ['Fri, 18.00', '2026-11-27T17:00'],
    ['wednesday 18:00', '2026-11-25T17:00'],
    ['wednesday 10:30', '2026-12-02T09:30'],
    ['today 18:00', '2026-11-25T17:00'],
    ['tomorrow 7am', '2026-11-26T06:00'],
    ['en 3 días', '2026-11-28T09:30'],
    ['en 3 días a las 18:00', '2026-11-28T17:00'],
    ['el viernes a las 18:00', '2026-11-27T17:00'],
    ['MIÉRCOLES 18:00', '2026-11-25T17:00'],
    ['mañana 18h', '2026-11-26T17:00'],
    ['dentro de 2 semanas', '2026-12-09T09:30'],
  ])('“%s” is read in the writer’s zone', (text, expected) => {
    expect(utc(text)).toBe(expected);
  });

  test('in another zone is another instant', () => {
    expect(utc('2026-12-01 18:00', { zone: 'America/Chicago', now })).toBe('2026-12-02T00:00');
  });

  test('some days on keeps the time of day over a clock change, some hours on does not', () => {
    // Madrid turns its clocks back on 25 October 2026 at 3:00.
    const before = { zone: 'Europe/Madrid', now: Date.UTC(2026, 9, 24, 16) };
    expect(utc('in 1 day', before)).toBe('2026-10-25T17:00');
    expect(utc('in 24 hours', before)).toBe('2026-10-25T16:00');
  });

  test('at a time the clocks skip or show twice says so', () => {
    expect(readDeadline('2027-03-28 02:30', madrid)).toEqual({
      at: Date.UTC(2027, 2, 28, 1, 30),
      zone: 'Europe/Madrid',
      shift: { kind: 'skipped', minutes: 60 },
    });
    expect(readDeadline('2027-10-31 02:30', madrid)).toEqual({
      at: Date.UTC(2027, 9, 31, 0, 30),
      zone: 'Europe/Madrid',
      shift: { kind: 'twice', minutes: 60 },
    });
  });

  test.each([
    ['soon', 'deadline-unreadable'],
    ['', 'deadline-unreadable'],
    ['01/12/2026 18:00', 'deadline-unreadable'],
    ['friday evening', 'deadline-unreadable'],
    ['friday 25:00', 'deadline-unreadable'],
    ['friday 18', 'deadline-unreadable'],
    ['friday 13pm', 'deadline-unreadable'],
    ['2026-12-01', 'deadline-time-missing'],
    ['friday', 'deadline-time-missing'],
    ['2026-02-30 18:00', 'date-impossible'],
    ['2027-13-01 18:00', 'date-impossible'],
    ['2026-11-25 10:30', 'deadline-past'],
    ['today 9:00', 'deadline-past'],
    ['in 0 hours', 'deadline-past'],
  ])('“%s” is refused', (text, id) => {
    expect(() => readDeadline(text, madrid)).toThrow(expect.objectContaining({ id }));
  });

  test.each(['Madrid', '+02:00', ''])('in the zone “%s” is refused', zone => {
    expect(() => readDeadline('friday 18:00', { zone, now })).toThrow(
      expect.objectContaining({ id: 'zone-unknown' }),
    );
  });
});

describe('days', () => {
  test('are those of the zone', () => {
    expect(dateAt(Date.UTC(2026, 10, 30, 23, 30), 'Europe/Madrid')).toBe('2026-12-01');
    expect(dateAt(Date.UTC(2026, 10, 30, 23, 30), 'America/Chicago')).toBe('2026-11-30');
  });

  test('are counted over leap days and clock changes', () => {
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2026-10-24', '2026-10-26')).toBe(2);
    expect(daysBetween('2026-11-02', '2026-11-01')).toBe(-1);
  });
});
