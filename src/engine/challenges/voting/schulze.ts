import type { Table } from './count.ts';

/**
 * The strength of the strongest path from each candidate to each other, and round to itself. A step of a path goes from the winner
 * of a pair to its loser and is as strong as the votes for the winner; a path is as strong as its weakest
 * step; no path is 0. Source: M. Schulze, "A new monotonic, clone-independent, reversal symmetric, and
 * Condorcet-consistent single-winner election method", Social Choice and Welfare 36 (2011), with winning votes;
 * found by the algorithm of Floyd and Warshall as given there.
 */
export function strongestPaths({ size, cells: votes }: Table): Table {
  const cells = new Float64Array(size * size);
  for (let from = 0; from < size; from++)
    for (let to = 0; to < size; to++) {
      const won = votes[from * size + to]!;
      if (won > votes[to * size + from]!) cells[from * size + to] = won;
    }
  for (let over = 0; over < size; over++)
    for (let from = 0; from < size; from++) {
      const first = cells[from * size + over]!;
      // Without a first step there is no way over here.
      if (first === 0) continue;
      for (let to = 0; to < size; to++) {
        const whole = Math.min(first, cells[over * size + to]!);
        if (whole > cells[from * size + to]!) cells[from * size + to] = whole;
      }
    }
  return { size, cells };
}

/** True when the first stands above the second: its strongest path there is stronger than the one back. */
export const above = ({ size, cells }: Table, first: number, second: number): boolean =>
  cells[first * size + second]! > cells[second * size + first]!;
