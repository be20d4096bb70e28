import { refuse } from '../refusal.ts';
import { unaccented } from '../text/unaccented.ts';
import { readDay } from './day.ts';
import {
  daysLater,
  type Fixed,
  instantOf,
  type WallTime,
  wallTimeAt,
  weekdayOf,
  zoneOf,
} from './wall-time.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'deadline-unreadable': { readonly text: string };
    'deadline-time-missing': { readonly text: string };
    'deadline-past': { readonly text: string; readonly zone: string };
  }
}

/** Where and when a deadline is written: the zone of the one who writes it, and now, ms since 1970 UTC. */
export type Writing = { readonly zone: string; readonly now: number };

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** English and Spanish names of the days, from Monday, by their first letters without accents. */
const DAYS: readonly (readonly string[])[] = [
  ['monday', 'mon', 'lunes', 'lun'],
  ['tuesday', 'tue', 'tues', 'martes', 'mar'],
  ['wednesday', 'wed', 'miercoles', 'mie'],
  ['thursday', 'thu', 'thur', 'thurs', 'jueves', 'jue'],
  ['friday', 'fri', 'viernes', 'vie'],
  ['saturday', 'sat', 'sabado', 'sab'],
  ['sunday', 'sun', 'domingo', 'dom'],
];

const folded = (text: string) =>
  unaccented(text)
    .replace(/\b(at|a las|a la|on|el|este|this)\b|,/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** `18:00`, `6pm`, `6:30 p.m.`; undefined when the text is something else. */
function timeOfDay(text: string): { hour: number; minute: number } | undefined {
  const found = /^(\d{1,2})(?:[:.h](\d{2}))? ?(am|pm|a\.m\.|p\.m\.|h)?$/.exec(text);
  if (!found) return undefined;
  const [, hourText = '', minuteText, mark = ''] = found;
  const half = mark.replaceAll('.', '');
  if (minuteText === undefined && half === '') return undefined;
  const hour = Number(hourText);
  const minute = Number(minuteText ?? 0);
  if (minute > 59 || hour > 23) return undefined;
  if (half !== 'am' && half !== 'pm') return { hour, minute };
  if (hour < 1 || hour > 12) return undefined;
  return { hour: (hour % 12) + (half === 'pm' ? 12 : 0), minute };
}

type Span = { readonly count: number; readonly unit: 'minute' | 'hour' | 'day' | 'week' };

/** `in 3 days`, `en 2 semanas`; undefined when the text is something else. */
function span(text: string): (Span & { readonly rest: string }) | undefined {
  const found =
    /^(?:in|en|dentro de) (\d{1,4}) (minutes?|minutos?|hours?|horas?|days?|dias?|weeks?|semanas?)(?: (.+))?$/.exec(
      text,
    );
  if (!found) return undefined;
  const [, count = '', word = '', rest = ''] = found;
  const unit = /^m/.test(word) ? 'minute' : /^h/.test(word) ? 'hour' : /^d/.test(word) ? 'day' : 'week';
  return { count: Number(count), unit, rest };
}

/** How many days from today, for `today`, `tomorrow` and the days of the week; and what follows the word. */
function namedDay(
  text: string,
  today: WallTime,
): { days: number; weekday: boolean; rest: string } | undefined {
  const [word = '', ...others] = text.split(' ');
  const rest = others.join(' ');
  if (/^(today|hoy)$/.test(word)) return { days: 0, weekday: false, rest };
  if (/^(tomorrow|manana)$/.test(word)) return { days: 1, weekday: false, rest };
  const day = DAYS.findIndex(names => names.includes(word));
  return day === -1 ? undefined : { days: (day + 1 - weekdayOf(today) + 7) % 7, weekday: true, rest };
}

/**
 * Reads a deadline: `2026-12-01 18:00`, `in 3 days`, `in 3 days 18:00`, `in 36 hours`, `in 90 minutes`, `friday 18:00`,
 * `tomorrow 6pm`, and the same in Spanish. A day of the week is the next one whose time is still to come. Days
 * keep the time of day over a clock change, hours are counted as they pass. Throws a Refusal for what cannot be
 * read, for a day without its time, for an unknown zone, and for a time that has passed.
 */
export function readDeadline(text: string, { zone, now }: Writing): Fixed {
  const fixed = read(folded(text), text, { zone, now });
  if (fixed.at <= now) refuse('deadline-past', { text, zone: fixed.zone });
  return fixed;
}

function read(asked: string, text: string, { zone, now }: Writing): Fixed {
  const today = wallTimeAt(now, zone);
  const on = (wall: WallTime, time: string) => {
    const at = timeOfDay(time);
    if (at) return instantOf({ ...wall, ...at }, zone);
    return refuse(time === '' ? 'deadline-time-missing' : 'deadline-unreadable', { text });
  };

  const [, written = asked, time = ''] = /^([\d-]+)[t ](.+)$/u.exec(asked) ?? [];
  const date = readDay(written);
  if (date) return on({ ...date, hour: 0, minute: 0 }, time);

  const later = span(asked);
  if ((later?.unit === 'minute' || later?.unit === 'hour') && later.rest === '')
    return { at: now + later.count * (later.unit === 'minute' ? MINUTE : HOUR), zone: zoneOf(zone).name };
  if (later?.unit === 'day' || later?.unit === 'week') {
    const wall = daysLater(today, later.count * (later.unit === 'week' ? 7 : 1));
    return later.rest === '' ? instantOf(wall, zone) : on(wall, later.rest);
  }

  const day = namedDay(asked, today);
  if (!day) return refuse('deadline-unreadable', { text });
  const fixed = on(daysLater(today, day.days), day.rest);
  return day.weekday && fixed.at <= now ? on(daysLater(today, day.days + 7), day.rest) : fixed;
}
