import { refuse } from '../engine/refusal.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'line-not-a-command': Record<string, never>;
    'line-quote-open': { option: string };
    'line-not-understood': { text: string };
  }
}

/** A command as it was typed: where it leads, and each option's text. */
export type CommandLine = {
  readonly path: readonly string[];
  readonly options: readonly { readonly name: string; readonly text: string }[];
};

/** American and British spelling are one. */
const oneSpelling = (name: string) => name.toLowerCase().replaceAll('color', 'colour');

const OPENING = /["“«]/;
const CLOSING: Readonly<Record<string, string>> = { '"': '"', '“': '”', '«': '»' };
const OPTION = /(?:^|\s)([\p{L}][\p{L}\p{N}-]*):/gu;

/**
 * Reads `/command subcommand option:value option:"value with spaces"`. A value without quotes runs up to the
 * next option that the command has (`optionsOf` gives the names for a path, undefined for an unknown path).
 * Throws a Refusal on anything else.
 */
export function readCommandLine(
  line: string,
  optionsOf: (path: string) => readonly string[] | undefined,
): CommandLine {
  const typed = line.trim();
  if (!typed.startsWith('/')) refuse('line-not-a-command', {});
  const firstOption = typed.search(/\s[\p{L}][\p{L}\p{N}-]*:/u);
  const head = firstOption < 0 ? typed : typed.slice(0, firstOption);
  const path = head.slice(1).trim().split(/\s+/).map(oneSpelling);
  const known = optionsOf(path.join(' '));
  return { path, options: firstOption < 0 ? [] : readOptions(typed.slice(firstOption), known) };
}

function readOptions(text: string, known: readonly string[] | undefined): CommandLine['options'] {
  const options: { name: string; text: string }[] = [];
  let at = 0;
  while (at < text.length) {
    const start = nextOption(text, at, undefined);
    if (!start || text.slice(at, start.from).trim() !== '') {
      const stray = text.slice(at, start?.from).trim();
      if (stray === '') break;
      refuse('line-not-understood', { text: stray.slice(0, 60) });
    }
    const { name, to } = start as Found;
    const opening = text[to] ?? '';
    const end = OPENING.test(opening)
      ? closingQuote(text, to, name)
      : (nextOption(text, to, known)?.from ?? text.length);
    options.push({ name, text: valueBetween(text, to, end) });
    at = OPENING.test(opening) ? end + 1 : end;
  }
  return options;
}

type Found = { readonly name: string; readonly from: number; readonly to: number };

/** The next `name:`; only of the known names while a value without quotes runs. */
function nextOption(text: string, at: number, known: readonly string[] | undefined): Found | undefined {
  OPTION.lastIndex = at;
  for (let match = OPTION.exec(text); match; match = OPTION.exec(text)) {
    const name = oneSpelling(match[1] ?? '');
    if (!known || known.includes(name)) return { name, from: match.index, to: OPTION.lastIndex };
  }
  return undefined;
}

function closingQuote(text: string, opening: number, option: string): number {
  const closing = CLOSING[text[opening] ?? ''] ?? '"';
  for (let at = opening + 1; at < text.length; at++) {
    if (text[at] === '\\') at++;
    else if (text[at] === closing) return at;
  }
  return refuse('line-quote-open', { option });
}

const valueBetween = (text: string, from: number, to: number): string =>
  OPENING.test(text[from] ?? '')
    ? text.slice(from + 1, to).replaceAll(/\\(.)/g, '$1')
    : text.slice(from, to).trim();
