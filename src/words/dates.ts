import { byLanguage, type Language } from '../engine/language.ts';
import { dateLocaleOf } from './locales.ts';
import { instantMark, type ShowMark, withoutMarks } from './marks.ts';

/** Days and moments as one language writes them, by the clocks of a zone (IANA name). */
export type Dates = {
  /** A day: weekday, day, month, year. */
  readonly day: (at: number, zone: string) => string;
  /** A day and an hour with the zone's name, marked as an instant, so that fronts can show each reader's own clock. */
  readonly moment: (at: number, zone: string) => string;
  /** The same without the year, for what is near. */
  readonly soon: (at: number, zone: string) => string;
};

const DAY = { weekday: 'short', day: 'numeric', month: 'short' } as const;
const YEAR = { year: 'numeric' } as const;
const HOUR = { hour: '2-digit', minute: '2-digit', timeZoneName: 'short' } as const;

const dates = (language: Language): Dates => {
  const locale = dateLocaleOf(language);
  const written = (options: Intl.DateTimeFormatOptions) => (at: number, zone: string) =>
    new Intl.DateTimeFormat(locale, { ...options, timeZone: zone }).format(at);
  const marked = (write: Dates['day']) => (at: number, zone: string) => instantMark(at, write(at, zone));
  return {
    day: written({ ...DAY, ...YEAR }),
    moment: marked(written({ ...DAY, ...YEAR, ...HOUR })),
    soon: marked(written({ ...DAY, ...HOUR })),
  };
};

const all = byLanguage(dates);

/** The one place where dates of sentences are formatted. */
export const datesIn = (language: Language): Dates => all[language];

/** Marks for fronts that know no reader's zone, shown by the clocks that this reader goes by; other marks as they are. */
export const byClockOf =
  (zone: string, language: Language): ShowMark =>
  (meant, text) => {
    const seconds = /^t:(\d+):f$/.exec(meant)?.[1];
    return seconds === undefined
      ? text
      : withoutMarks(datesIn(language).moment(Number(seconds) * 1000, zone));
  };
