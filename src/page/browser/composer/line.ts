import {
  nextOption,
  OPENING,
  oneSpelling,
  quoted,
  quotedValue,
} from '../../../engine/text/lines/option-line.ts';
import type { Action } from '../declared.ts';

/** A line as far as it has been typed. */
export type Typed = {
  readonly action: Action | undefined;
  /** Values by option, in the order typed. */
  readonly values: ReadonlyMap<string, string>;
  /** Words that belong to no option. */
  readonly stray: string;
  /** Where the caret stands: what is being typed, and which stretch of the line a suggestion would replace. */
  readonly at: Spot;
};

export type Spot =
  | { readonly kind: 'command'; readonly typed: string; readonly from: number; readonly to: number }
  | { readonly kind: 'option'; readonly typed: string; readonly from: number; readonly to: number }
  | {
      readonly kind: 'value';
      readonly option: string;
      readonly typed: string;
      readonly from: number;
      readonly to: number;
    };

/** Reads a line that may not be finished, with the caret at `caret`. Never throws. */
export function readLine(line: string, actions: readonly Action[], caret = line.length): Typed {
  const action = actionIn(line, actions);
  if (!action) {
    const at = { kind: 'command', typed: line.trimStart(), from: 0, to: line.length } as const;
    return { action, values: new Map(), stray: '', at };
  }
  const names = action.options.map(({ name }) => name);
  const start = (/^\s*\/\S*/.exec(line)?.[0].length ?? 0) + pathRest(line, action);
  const values = new Map<string, string>();
  const strays: string[] = [];
  let at: Spot = { kind: 'option', typed: '', from: caret, to: caret };
  let from = start;
  while (from < line.length) {
    const found = nextOption(line, from, names);
    const gap = line.slice(from, found?.from ?? line.length);
    const word = /\S+\s*$/.exec(gap)?.[0] ?? '';
    const gapEnd = from + gap.length;
    if (caret >= from && caret <= gapEnd && word !== '' && !/\s$/.test(gap))
      at = { kind: 'option', typed: word, from: gapEnd - word.length, to: gapEnd };
    if (gap.trim() !== '') strays.push(gap.trim());
    if (!found) break;
    const { text, end } = readValue(line, found.to, names);
    values.set(found.name, text);
    if (caret >= found.to && caret <= end)
      at = { kind: 'value', option: found.name, typed: text, from: found.to, to: end };
    from = end;
  }
  return { action, values, stray: strays.join(' '), at };
}

/** The longest path that the line starts with. */
function actionIn(line: string, actions: readonly Action[]): Action | undefined {
  const words = oneSpelling(/^\s*\/([^:"“«]*)/.exec(line)?.[1] ?? '').split(/\s+/);
  const isEnded = /^\s*\/\S+(\s+\S+)*\s/.test(line) || words.length > 1;
  return actions.find(({ path }) => {
    const parts = path.split(' ');
    const fits = parts.every((part, index) => words[index] === part);
    return fits && (isEnded || parts.length === words.length);
  });
}

const pathRest = (line: string, { path }: Action): number => {
  const sub = path.split(' ')[1];
  return sub === undefined ? 0 : (new RegExp(`^\\s*/\\S+(\\s+${sub})`, 'i').exec(line)?.[1]?.length ?? 0);
};

function readValue(line: string, from: number, names: readonly string[]): { text: string; end: number } {
  if (OPENING.test(line[from] ?? '')) return quotedValue(line, from);
  const end = nextOption(line, from, names)?.from ?? line.length;
  return { text: line.slice(from, end).trim(), end };
}

/** The line that says all this. Options left empty are left out. */
export function writeLine(path: string, values: ReadonlyMap<string, string>): string {
  const options = [...values].flatMap(([name, value]) => (value === '' ? [] : [`${name}:${quoted(value)}`]));
  return [`/${path}`, ...options].join(' ');
}
