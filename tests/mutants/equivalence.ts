import { type Change, taken } from './changes.ts';
import { EQUIVALENT, type Equivalent } from './equivalent.ts';

/** What a change takes away, on one line. */
export const takenOnOneLine = (lines: readonly string[], change: Change): string =>
  taken(lines, change).replaceAll(/\s+/g, ' ');

/** True where a change of a file, told by its lines, is the one that is named there. */
export const isNamedBy = (one: Equivalent, change: Change, lines: readonly string[]): boolean =>
  one.file === change.file &&
  one.to === change.replacement &&
  one.from === takenOnOneLine(lines, change) &&
  lines[change.start.line - 1]!.includes(one.on ?? '');

/** True where a change is named as one that does the same: it is not counted. */
export const isEquivalent = (change: Change, lines: readonly string[]): boolean =>
  EQUIVALENT.some(one => isNamedBy(one, change, lines));
