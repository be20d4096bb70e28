import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Instrumenter } from '@stryker-mutator/instrumenter';

/** One change of Stryker's; lines from 1, columns from 0, `end` behind the last sign. */
export type Change = {
  readonly file: string;
  readonly start: { readonly line: number; readonly column: number };
  readonly end: { readonly line: number; readonly column: number };
  readonly replacement: string;
};

/** The kind of change that is not made: spellings are for the sets that other hands wrote, not for one letter of a pattern. */
export const NOT_MADE: readonly string[] = ['Regex'];

const silent = new Proxy({}, { get: () => () => false });

/** All changes of these files, which are told from the root. */
export async function changesIn(root: string, files: readonly string[]): Promise<readonly Change[]> {
  const { mutants } = await new Instrumenter(silent as never).instrument(
    files.map(name => ({ name, content: readFileSync(join(root, name), 'utf8'), mutate: true })),
    { ignorers: [], excludedMutations: [...NOT_MADE], plugins: null, noHeader: false } as never,
  );
  return mutants
    .filter(({ status }) => status !== 'Ignored')
    .map(({ fileName, location: { start, end }, replacement }) => ({
      file: fileName,
      start: { line: start.line + 1, column: start.column },
      end: { line: end.line + 1, column: end.column },
      replacement,
    }));
}

/** The same words for the same change wherever it is spoken of. */
export const keyOf = ({ file, start, end, replacement }: Change): string =>
  `${file}:${start.line}:${start.column}-${end.line}:${end.column} ${replacement}`;

/** The text that a change takes away, of a file by its lines. */
export function taken(lines: readonly string[], { start, end }: Change): string {
  const own = lines.slice(start.line - 1, end.line);
  own[own.length - 1] = own.at(-1)!.slice(0, end.column);
  own[0] = own[0]!.slice(start.column);
  return own.join('\n');
}

/** What begins at the edge of a file: declarations, each up to the next. */
const DECLARES = /^[a-z]/u;
/** Says that what follows is done when it is called. */
const CALLED = /=>|\bfunction\b|^(?:export )?class\b/u;

/** Where the declaration that a line is part of begins; lines are counted from 0. */
export function declaredAt(lines: readonly string[], row: number): number {
  let first = row;
  while (first > 0 && !DECLARES.test(lines[first]!)) first -= 1;
  return first;
}

/**
 * True where a change stands in a function, as far as a look at the text tells. What stands in none is computed once, while its file is
 * loaded, and no runner that keeps files loaded can try it (`tables.ts` does).
 */
export function isInFunction(lines: readonly string[], start: Change['start']): boolean {
  const first = declaredAt(lines, start.line - 1);
  const before = lines.slice(first, start.line);
  before[before.length - 1] = before.at(-1)!.slice(0, start.column);
  return CALLED.test(before.join('\n'));
}

/**
 * So many of the changes that stand in functions, drawn by chance: the same each time, and also after an edit elsewhere, since a change
 * is drawn by what it takes away and puts there, not by its line. A larger sample holds the smaller one; with another `seed` it is another.
 */
export function drawnOf(
  root: string,
  changes: readonly Change[],
  most: number,
  seed = '',
): { readonly drawn: readonly Change[]; readonly of: number } {
  const texts = new Map<string, readonly string[]>();
  const seen = new Map<string, number>();
  const ranked: (readonly [rank: string, change: Change])[] = [];
  for (const change of changes) {
    const lines = texts.get(change.file) ?? readFileSync(join(root, change.file), 'utf8').split('\n');
    texts.set(change.file, lines);
    if (!isInFunction(lines, change.start)) continue;
    const word = `${change.file} ${taken(lines, change)} ${change.replacement}`;
    const before = seen.get(word) ?? 0;
    seen.set(word, before + 1);
    ranked.push([createHash('sha256').update(`${seed}${word} ${before}`).digest('hex'), change]);
  }
  ranked.sort(([one], [other]) => (one < other ? -1 : 1));
  return { drawn: ranked.slice(0, most).map(([, change]) => change), of: ranked.length };
}
