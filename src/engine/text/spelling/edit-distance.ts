const LONGEST = 200;

/* Where it is worked out: made once, since names are compared by the thousand. */
const rowOf = () => new Uint16Array(LONGEST + 1);
const ROWS: readonly [Uint16Array, Uint16Array, Uint16Array] = [rowOf(), rowOf(), rowOf()];
const codes = rowOf();

/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours, each 1
 * (Damerau 1964 as restricted by Wagner and Lowrance 1975). Only the first 200 letters count, so that work stays bounded.
 * Who has no use for a distance beyond `most` is given some number beyond it (Ukkonen 1985: rows only grow).
 */
export function distance(one: string, other: string, most = Number.POSITIVE_INFINITY): number {
  const a = one.slice(0, LONGEST);
  const b = other.slice(0, LONGEST);
  if (a === b) return 0;
  const width = b.length;
  const apart = Math.abs(a.length - width);
  if (apart > most) return apart;
  let [before, above, row] = ROWS;
  above[0] = 0;
  for (let j = 1; j <= width; j += 1) {
    above[j] = j;
    codes[j - 1] = b.charCodeAt(j - 1);
  }
  let earlier = -1;
  for (let i = 1; i <= a.length; i += 1) {
    row[0] = i;
    const letter = a.charCodeAt(i - 1);
    let left = i;
    let least = i;
    for (let j = 1; j <= width; j += 1) {
      const there = codes[j - 1]!;
      let best = above[j - 1]! + (letter === there ? 0 : 1);
      if (left + 1 < best) best = left + 1;
      const removed = above[j]! + 1;
      if (removed < best) best = removed;
      if (i > 1 && j > 1 && letter === codes[j - 2] && earlier === there) {
        const swapped = before[j - 2]! + 1;
        if (swapped < best) best = swapped;
      }
      row[j] = best;
      left = best;
      if (best < least) least = best;
    }
    // A swap reaches over one row, which lies at most one below this one, and costs one itself.
    if (least > most) return least;
    earlier = letter;
    [before, above, row] = [above, row, before];
  }
  return above[width]!;
}

/** Slips of the finger allowed in a word of that many letters: short words differ too little from one another. */
export const slipsIn = (length: number): number => (length < 5 ? 0 : length < 8 ? 1 : 2);
