import { describe, expect, test } from 'vitest';
import { datesIn } from '../../src/words/dates.ts';
import { withoutMarks } from '../../src/words/marks.ts';

/** Sunday, 4 March 2029, 08:05 in UTC; 17:05 the same day in Tokyo (UTC+9, no summer time: IANA time zone database). */
const AT = Date.UTC(2029, 2, 4, 8, 5);

describe.each([
  ['en', 'Sun', '4 Mar', 'UTC'],
  ['es', 'dom', '4 mar', 'UTC'],
] as const)('dates in %s', (language, weekday, date, zone) => {
  const { day, moment, soon } = datesIn(language);

  test('a day has its weekday, the day before the month, and the year', () => {
    expect(day(AT, 'UTC').toLowerCase()).toContain(weekday.toLowerCase());
    expect(day(AT, 'UTC')).toContain(date);
    expect(day(AT, 'UTC')).toContain('2029');
    expect(day(AT, 'UTC')).not.toContain('08:05');
  });

  test('a moment has the hour of its zone besides, and the zone', () => {
    expect(withoutMarks(moment(AT, 'UTC'))).toContain('2029');
    expect(withoutMarks(moment(AT, 'UTC'))).toMatch(/0?8:05/);
    expect(withoutMarks(moment(AT, 'UTC'))).toContain(zone);
    expect(withoutMarks(moment(AT, 'Asia/Tokyo'))).toContain('17:05');
  });

  test('what is soon needs no year, but its hour', () => {
    expect(withoutMarks(soon(AT, 'UTC'))).toContain(date);
    expect(withoutMarks(soon(AT, 'UTC'))).toMatch(/0?8:05/);
    expect(withoutMarks(soon(AT, 'UTC'))).not.toContain('2029');
  });

  test('both carry the instant, for fronts that know the reader’s clock', () => {
    expect(moment(AT, 'UTC')).toContain(`t:${AT / 1000}:f`);
    expect(soon(AT, 'UTC')).toContain(`t:${AT / 1000}:f`);
  });
});
