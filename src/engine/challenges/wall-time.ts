import { DateTime, IANAZone } from 'luxon';
import { refuse } from '../refusal.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'zone-unknown': { readonly zone: string };
    'date-impossible': { readonly date: string };
  }
}

/** A date and time of day as a clock on the wall shows it, somewhere. Months count from 1. */
export type WallTime = {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
};

/**
 * An instant and how it came about. `shift` says that the clocks of the zone skipped the wall time (`skipped`,
 * moved forward by `minutes`), or showed it twice (`twice`: the first is meant, the second comes `minutes`
 * later).
 */
export type Fixed = {
  /** Milliseconds since 1970 UTC. */
  readonly at: number;
  readonly zone: string;
  readonly shift?: { readonly kind: 'skipped' | 'twice'; readonly minutes: number } | undefined;
};

const MINUTE = 60_000;
const DAY = 86_400_000;

const utcOf = ({ year, month, day, hour, minute }: WallTime) => {
  const at = new Date(0);
  at.setUTCFullYear(year, month - 1, day);
  return at.setUTCHours(hour, minute);
};

/** The zone of an IANA name, in whatever capitals. Refuses a name nobody knows. */
export function zoneOf(name: string): IANAZone {
  const zone = IANAZone.create(name.trim());
  // `+02:00` would pass as a zone, and no clock change would ever be seen in it.
  if (!zone.isValid || /^[+-]/.test(zone.name)) refuse('zone-unknown', { zone: name });
  return zone;
}

/**
 * The instant at which the clocks of a zone show a wall time. A wall time that the clocks skip is read with the
 * offset before the change, one that they show twice is the first. Source: RFC 5545, 3.3.5, "local time with
 * time zone reference". Refuses an unknown zone and a date no calendar has.
 */
export function instantOf(wall: WallTime, zoneName: string): Fixed {
  const zone = zoneOf(zoneName);
  const asUtc = utcOf(wall);
  const [read] = new Date(asUtc).toISOString().split('T');
  if (read !== isoDate(wall)) refuse('date-impossible', { date: isoDate(wall) });
  // No zone lies a day from UTC, so any change that bears on this wall time falls between these two.
  const offsets = [zone.offset(asUtc - DAY), zone.offset(asUtc + DAY)];
  const [before, later] = offsets.map(offset => asUtc - offset * MINUTE) as [number, number];
  const fits = [before, later].filter((at, which) => zone.offset(at) === offsets[which]);
  const minutes = Math.abs(later - before) / MINUTE;
  if (fits.length === 0) return { at: before, zone: zone.name, shift: { kind: 'skipped', minutes } };
  if (fits.length === 2 && before !== later)
    return { at: Math.min(before, later), zone: zone.name, shift: { kind: 'twice', minutes } };
  return { at: fits[0]!, zone: zone.name };
}

/** What the clocks of a zone show at an instant (ms since 1970 UTC). */
export function wallTimeAt(at: number, zoneName: string): WallTime {
  const { year, month, day, hour, minute } = DateTime.fromMillis(at, { zone: zoneOf(zoneName) });
  return { year, month, day, hour, minute } as WallTime;
}

/** The date in a zone at an instant, `YYYY-MM-DD`. */
export function dateAt(at: number, zoneName: string): string {
  return isoDate(wallTimeAt(at, zoneName));
}

const digits = (n: number, many: number) => String(n).padStart(many, '0');
/** A day as records keep it, `YYYY-MM-DD`. */
export const isoDate = ({ year, month, day }: Pick<WallTime, 'year' | 'month' | 'day'>): string =>
  `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`;

/** The wall time some calendar days later, at the same time of day. */
export function daysLater(wall: WallTime, days: number): WallTime {
  const moved = new Date(utcOf(wall) + days * DAY);
  return { ...wall, year: moved.getUTCFullYear(), month: moved.getUTCMonth() + 1, day: moved.getUTCDate() };
}

/** Whole days from one `YYYY-MM-DD` to another; negative when the second is the earlier. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY);

/** The day of the week: 1 is Monday, 7 is Sunday (ISO 8601). */
export const weekdayOf = (wall: WallTime): number => new Date(utcOf(wall)).getUTCDay() || 7;
