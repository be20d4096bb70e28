/* How a command is written in a line: `name:value name:"value with spaces"`. Whoever reads one reads it by this. */

/** American and British spelling are one. */
export const oneSpelling = (name: string): string => name.toLowerCase().replaceAll('color', 'colour');

export const OPENING = /["“«]/u;
const CLOSING: Readonly<Record<string, string>> = { '"': '"', '“': '”', '«': '»' };
const OPTION = /(?<=^|\s)([\p{L}][\p{L}\p{N}-]*):/gu;

/** An option's name as it stands in a text: from its first letter to behind its colon. */
export type FoundOption = { readonly name: string; readonly from: number; readonly to: number };

/** The next `name:` from a place on; only of the known names, where some are known (`with:` counts as `with-1:`). */
export function nextOption(text: string, from: number, known?: readonly string[]): FoundOption | undefined {
  OPTION.lastIndex = from;
  for (let match = OPTION.exec(text); match; match = OPTION.exec(text)) {
    const typed = oneSpelling(match[1] ?? '');
    const name = !known || known.includes(typed) ? typed : `${typed}-1`;
    if (!known || known.includes(name)) return { name, from: match.index, to: OPTION.lastIndex };
  }
  return undefined;
}

/** The value that begins at a place: in quotes of either language, with `\` before what stands for itself. */
export function quotedValue(
  text: string,
  from: number,
): { readonly text: string; readonly end: number; readonly closed: boolean } {
  const closing = CLOSING[text[from] ?? ''] ?? '"';
  let value = '';
  let at = from + 1;
  for (; at < text.length && text[at] !== closing; at++) {
    if (text[at] === '\\') at++;
    value += text[at] ?? '';
  }
  return { text: value, end: Math.min(at + 1, text.length), closed: at < text.length };
}

const PLAIN_WORD = /^[^\s"“«\\:]+$/u;

/** A value as it stands in a line: in quotes unless it is one plain word. */
export const quoted = (value: string): string =>
  PLAIN_WORD.test(value) ? value : `"${value.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`;
