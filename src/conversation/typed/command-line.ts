import { refuse } from '../../engine/refusal.ts';
import { cut } from '../../engine/text/excerpt.ts';
import {
  type FoundOption,
  nextOption,
  OPENING,
  oneSpelling,
  quotedValue,
} from '../../engine/text/lines/option-line.ts';

declare module '../../engine/refusal.ts' {
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
    const start = nextOption(text, at);
    if (!start || text.slice(at, start.from).trim() !== '') {
      const stray = text.slice(at, start?.from).trim();
      if (stray === '') break;
      refuse('line-not-understood', { text: cut(stray, 60) });
    }
    const { name, to } = start as FoundOption;
    const { text: value, end } = OPENING.test(text[to] ?? '')
      ? closedValue(text, to, name)
      : bareValue(text, to, known);
    options.push({ name, text: value });
    at = end;
  }
  return options;
}

function closedValue(text: string, from: number, option: string) {
  const value = quotedValue(text, from);
  return value.closed ? value : refuse('line-quote-open', { option });
}

function bareValue(text: string, from: number, known: readonly string[] | undefined) {
  const end = nextOption(text, from, known)?.from ?? text.length;
  return { text: text.slice(from, end).trim(), end };
}
