import { describe, expect, test } from 'vitest';
import { instantOf, type WallTime, wallTimeAt } from '../../src/engine/challenges/wall-time.ts';

/* The transitions of the IANA zones, found in the platform's own data by asking it what the clocks show. */

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Zones with whole and half hours, midnight changes, changes around Ramadan, and a day that never was. */
const spans: readonly (readonly [string, number, number])[] = [
  ['Europe/Madrid', 2025, 2027],
  ['Europe/London', 2025, 2027],
  ['America/New_York', 2025, 2027],
  ['America/Chicago', 2025, 2027],
  ['America/Santiago', 2025, 2027],
  ['America/St_Johns', 2025, 2027],
  ['Australia/Lord_Howe', 2025, 2027],
  ['Pacific/Chatham', 2025, 2027],
  ['Africa/Casablanca', 2024, 2026],
  ['Africa/Cairo', 2024, 2026],
  ['Asia/Tehran', 2020, 2022],
  ['Pacific/Apia', 2011, 2012],
];

function offsetIn(zone: string) {
  const clock = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  return (at: number) => {
    const part = Object.fromEntries(clock.formatToParts(at).map(({ type, value }) => [type, Number(value)]));
    const shown = Date.UTC(part.year!, part.month! - 1, part.day!, part.hour!, part.minute!, part.second!);
    return (shown - at) / MINUTE;
  };
}

type Transition = { readonly at: number; readonly before: number; readonly after: number };

function transitions(zone: string, from: number, to: number): readonly Transition[] {
  const offset = offsetIn(zone);
  const found: Transition[] = [];
  const last = Date.UTC(to, 0, 1);
  for (let start = Date.UTC(from, 0, 1); start < last; start += 24 * HOUR) {
    let [low, high] = [start, start + 24 * HOUR];
    if (offset(low) === offset(high)) continue;
    while (high - low > MINUTE) {
      const middle = low + Math.floor((high - low) / 2 / MINUTE) * MINUTE;
      if (offset(middle) === offset(low)) low = middle;
      else high = middle;
    }
    found.push({ at: high, before: offset(low), after: offset(high) });
  }
  return found;
}

/** What a clock with this offset (minutes) would show at an instant. */
function shown(at: number, offset: number): WallTime {
  const local = new Date(at + offset * MINUTE);
  return {
    year: local.getUTCFullYear(),
    month: local.getUTCMonth() + 1,
    day: local.getUTCDate(),
    hour: local.getUTCHours(),
    minute: local.getUTCMinutes(),
  };
}

describe.each(spans)('the clocks of %s from %i to %i', (zone, from, to) => {
  const changes = transitions(zone, from, to);

  test('change at least once, or this checks nothing', () => {
    expect(changes.length).toBeGreaterThan(0);
  });

  test('skip times, which move on by as much as the clocks did', () => {
    for (const { at, before, after } of changes.filter(change => change.after > change.before)) {
      const minutes = after - before;
      const skipped = shown(at + (minutes / 2) * MINUTE, before);
      expect(instantOf(skipped, zone)).toEqual({
        at: at + (minutes / 2) * MINUTE,
        zone,
        shift: { kind: 'skipped', minutes },
      });
    }
  });

  test('show times twice, of which the first is meant', () => {
    for (const { at, before, after } of changes.filter(change => change.after < change.before)) {
      const minutes = before - after;
      const twice = shown(at - (minutes / 2) * MINUTE, before);
      expect(instantOf(twice, zone)).toEqual({
        at: at - (minutes / 2) * MINUTE,
        zone,
        shift: { kind: 'twice', minutes },
      });
    }
  });

  test('show every other time once, and tell it back', () => {
    for (const { at, before, after } of changes)
      for (const away of [-30 * HOUR, -5 * HOUR, 5 * HOUR, 30 * HOUR]) {
        const wall = shown(at + away, away < 0 ? before : after);
        expect(instantOf(wall, zone)).toEqual({ at: at + away, zone });
        expect(wallTimeAt(at + away, zone)).toEqual(wall);
      }
  });

  test('change on the very minute', () => {
    for (const { at, before } of changes)
      expect(instantOf(shown(at - MINUTE, before), zone).at).toBe(at - MINUTE);
    for (const { at, after } of changes.filter(change => change.after > change.before))
      expect(instantOf(shown(at, after), zone).at).toBe(at);
  });
});

test('a day that a zone never had moves on by a day', () => {
  // Samoa went from 29 to 31 December 2011: announced by its government, kept in the IANA file `australasia`.
  expect(instantOf({ year: 2011, month: 12, day: 30, hour: 12, minute: 0 }, 'Pacific/Apia')).toEqual({
    at: Date.UTC(2011, 11, 30, 22),
    zone: 'Pacific/Apia',
    shift: { kind: 'skipped', minutes: 24 * 60 },
  });
});
