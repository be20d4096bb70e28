/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours, each 1
 * (Damerau 1964 as restricted by Wagner and Lowrance 1975). Only the first 200 letters count, so that work stays bounded.
 */
export function distance(one: string, other: string): number {
  const a = one.slice(0, LONGEST);
  const b = other.slice(0, LONGEST);
  if (a === b) return 0;
  const width = b.length + 1;
  let before = new Uint16Array(width);
  let above = Uint16Array.from({ length: width }, (_, j) => j);
  let row = new Uint16Array(width);
  for (let i = 1; i <= a.length; i += 1) {
    row[0] = i;
    const letter = a.charCodeAt(i - 1);
    for (let j = 1; j < width; j += 1) {
      const same = letter === b.charCodeAt(j - 1) ? 0 : 1;
      let best = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && letter === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1))
        best = Math.min(best, before[j - 2]! + 1);
      row[j] = best;
    }
    [before, above, row] = [above, row, before];
  }
  return above[b.length]!;
}

const LONGEST = 200;

/** Slips of the finger allowed in a word of that many letters: short words differ too little from one another. */
export const slipsIn = (length: number): number => (length < 5 ? 0 : length < 8 ? 1 : 2);
