/*
 * Long texts over several lines, so that a change of one word is a change of one line. Where the lines end is no part of the
 * text, nor is how far they are set in; what is said beside a text inside the same quotation (`${}`) stays as it is.
 */

/** Where a line ends, and how far the next one is set in. */
const BREAK = /\n\s*/gu;

const filled = (parts: readonly string[], values: readonly unknown[]): string =>
  parts.map((part, at) => (at < values.length ? `${part}${String(values[at])}` : part)).join('');

/**
 * A sentence or a list of words, its lines joined by one space each. What begins or ends with a space begins or ends beside
 * its quotation mark.
 * @example spaced`
 *   lye, soda,
 *   potash
 * ` // 'lye, soda, potash'
 */
export function spaced(parts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const known = joinedBySpaces.get(parts);
  if (known) return filled(known, values);
  const last = parts.length - 1;
  const joined = parts.map((part, at) => {
    const begun = at === 0 ? part.replace(/^\n\s*/u, '') : part;
    return (at === last ? begun.replace(/\n\s*$/u, '') : begun).replace(BREAK, ' ');
  });
  joinedBySpaces.set(parts, joined);
  return filled(joined, values);
}

/** Sentences are said again and again, each from the same place of the program, which has one list of its parts. */
const joinedBySpaces = new WeakMap<TemplateStringsArray, readonly string[]>();

/**
 * The source of a pattern, its lines joined by nothing; a backslash is one, as in a pattern between slashes.
 * @example unbroken`
 *   (?:lye|
 *   soda)\b
 * ` // '(?:lye|soda)\\b'
 */
export function unbroken(parts: TemplateStringsArray, ...values: readonly unknown[]): string {
  return filled(
    parts.raw.map(part => part.replace(BREAK, '')),
    values,
  );
}
