/**
 * Marks in a sentence that a chat platform shows in its own way: an instant in each reader's own zone, a role or a
 * channel by its name. Every other front shows the plain text that a mark carries. They travel inside the sentence,
 * between characters that no keyboard has (Unicode private use).
 */
const BEGIN = '\uE000';
const MIDDLE = '\uE001';
const END = '\uE002';
const pattern = /\uE000([^\uE000-\uE002]*)\uE001([^\uE000-\uE002]*)\uE002/g;

const mark = (meant: string, text: string) => `${BEGIN}${meant}${MIDDLE}${text}${END}`;

/** An instant, ms since 1970 UTC, with its text for fronts that know no reader's zone. */
export const instantMark = (at: number, text: string): string => {
  const seconds = Math.floor(at / 1000);
  return mark(`t:${seconds}:f`, text);
};
/** A role, by its id on the platform. */
export const roleMark = (id: string) => mark(`@&${id}`, id);

/** Puts something in the place of each mark: `meant` is what the platform writes between angle brackets. */
export const replaceMarks = (text: string, show: (meant: string, text: string) => string): string =>
  text.includes(BEGIN)
    ? text.replace(pattern, (_, meant: string, plain: string) => show(meant, plain))
    : text;

/** What stands in the place of a mark: what it means to the platform, and the text it carries. */
export type ShowMark = (meant: string, text: string) => string;
const asCarried: ShowMark = (_, plain) => plain;

/** The text as it is read where there are no marks. */
export const withoutMarks = (text: string): string => replaceMarks(text, asCarried);

/** A whole answer without marks: every text in it, at whatever depth; bytes and functions stay as they are. */
export function plainThroughout<Value>(value: Value, show: ShowMark = asCarried): Value {
  if (typeof value === 'string') return replaceMarks(value, show) as Value;
  if (Array.isArray(value)) return value.map(one => plainThroughout(one, show)) as Value;
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype)
    return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, plainThroughout(inner, show)]),
  ) as Value;
}
