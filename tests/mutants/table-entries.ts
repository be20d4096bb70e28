import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { declaredAt, isInFunction } from './changes.ts';
import type { Edit } from './project-copy.ts';

/** A number or a quoted word, where it is no part of a name, of a longer figure or of a text with blanks to fill. */
const ENTRY = /(?<![\w.$`'"{])(?:\d+(?:\.\d+)?(?![\w.'"])|'[^'\\\n]+')/gu;
/** Declarations that hold no entry: what is imported, and what only the compiler reads. */
const NO_ENTRY = /^(?:import\b|export [*{]|(?:export )?(?:type|interface|declare)\b)/u;
const REMARK = /^\s*(?:\/?\*|\/\/)|^\} from /u;
const WORD = /[\p{L}]{3,}/gu;

/** A quarter more of a figure, one for none; of words the one in the middle with a letter that it has not. */
function changed(entry: string): string {
  if (!entry.startsWith("'")) return Number(entry) === 0 ? '1' : String(Number(entry) * 1.25);
  const words = [...entry.matchAll(WORD)];
  const word = words[Math.floor(words.length / 2)];
  const end = word ? word.index + word[0].length : entry.length - 1;
  return `${entry.slice(0, end)}q${entry.slice(end)}`;
}

/** Figures and words of a file that are read once, while it is loaded: its tables and constants. */
export function entriesIn(root: string, file: string): readonly Edit[] {
  const text = readFileSync(join(root, file), 'utf8');
  const lines = text.split('\n');
  const found: Edit[] = [];
  let offset = 0;
  for (const [row, line] of lines.entries()) {
    if (!REMARK.test(line) && !NO_ENTRY.test(lines[declaredAt(lines, row)]!))
      for (const { 0: from, index } of line.matchAll(ENTRY))
        if (!isInFunction(lines, { line: row + 1, column: index }))
          found.push({ file, from, to: changed(from), at: offset + index });
    offset += line.length + 1;
  }
  return found;
}

/** One entry of each of so many of these files, drawn by chance: the same each time while the files stay as they are. */
export function drawnEntries(root: string, files: readonly string[], most: number): readonly Edit[] {
  const rankOf = ({ file, from, at }: Edit) =>
    createHash('sha256').update(`${file} ${from} ${at}`).digest('hex');
  const first = (edits: readonly Edit[]) =>
    edits
      .map(edit => ({ edit, rank: rankOf(edit) }))
      .sort((one, other) => (one.rank < other.rank ? -1 : 1))[0];
  return files
    .flatMap(file => first(entriesIn(root, file)) ?? [])
    .sort((one, other) => (one.rank < other.rank ? -1 : 1))
    .slice(0, most)
    .map(({ edit }) => edit);
}
