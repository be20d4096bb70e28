import { expect, test } from 'vitest';
import { calendarDay, readDay, startOfDay } from '../../../src/engine/challenges/day.ts';

/** Ten past midnight in Madrid, ten past five in the evening before in Chicago. */
const now = Date.UTC(2026, 2, 29, 22, 10);
const madrid = { zone: 'Europe/Madrid', now };
const chicago = { zone: 'America/Chicago', now };

test.each([
  ['2026-11-03', { year: 2026, month: 11, day: 3 }],
  [' 2026-1-5 ', { year: 2026, month: 1, day: 5 }],
  ['2026-02-30', { year: 2026, month: 2, day: 30 }],
])('“%s” is a day as it is written (ISO 8601)', (text, day) => {
  expect(readDay(text)).toEqual(day);
});

test.each(['lately', '', '03/11/2026', '26-11-03', '2026-11-03 18:00', '2026-111-3', 'x2026-11-03', 'today'])(
  '“%s” is none',
  text => {
    expect(readDay(text)).toBeUndefined();
  },
);

test('“today” and “yesterday” are those of the clock on the wall, in both languages', () => {
  expect(readDay('Hoy', madrid)).toEqual({ year: 2026, month: 3, day: 30 });
  expect(readDay('today', chicago)).toEqual({ year: 2026, month: 3, day: 29 });
  expect(readDay('yesterday', chicago)).toEqual({ year: 2026, month: 3, day: 28 });
  // The clocks of Madrid went forward on the 29th: the day before was only 23 hours long.
  expect(readDay('ayer', madrid)).toEqual({ year: 2026, month: 3, day: 29 });
});

test('a day of the calendar is one that a calendar has', () => {
  expect(calendarDay('2028-02-29')).toEqual({ year: 2028, month: 2, day: 29 });
  expect(() => calendarDay('2026-02-29')).toThrow(expect.objectContaining({ id: 'date-impossible' }));
  expect(() => calendarDay('2026-00-10')).toThrow(expect.objectContaining({ id: 'date-impossible' }));
  expect(() => calendarDay('lately')).toThrow(
    expect.objectContaining({ id: 'challenge-date-unreadable', values: { text: 'lately' } }),
  );
});

test('a day begins at midnight where it is', () => {
  const day = { year: 2026, month: 7, day: 1 };
  expect(startOfDay(day, 'Europe/Madrid')).toBe(Date.UTC(2026, 5, 30, 22));
  expect(startOfDay(day, 'America/Chicago')).toBe(Date.UTC(2026, 6, 1, 5));
});
