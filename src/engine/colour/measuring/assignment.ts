/** What goes to what: for each row the number of its column, undefined where there were too few columns. */
export type Assignment = { readonly columnOf: readonly (number | undefined)[]; readonly total: number };

/**
 * Gives each row a column of its own so that the sum of the costs is least; with more rows than columns some
 * rows go without. Costs are finite. The Hungarian method by shortest augmenting paths, in time rows x rows x
 * columns. Source: R. Jonker and A. Volgenant, "A shortest augmenting path algorithm for dense and sparse
 * linear assignment problems", Computing 38 (1987).
 */
export function leastAssignment(costs: readonly (readonly number[])[]): Assignment {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  if (rows <= columns) {
    const columnOf = assignRows(costs, columns);
    return { columnOf, total: columnOf.reduce((sum, column, row) => sum + costs[row]![column]!, 0) };
  }
  const turned = Array.from({ length: columns }, (_, column) => costs.map(row => row[column]!));
  const rowOf = assignRows(turned, rows);
  const columnOf = new Array<number | undefined>(rows).fill(undefined);
  for (const [column, row] of rowOf.entries()) columnOf[row] = column;
  return { columnOf, total: rowOf.reduce((sum, row, column) => sum + costs[row]![column]!, 0) };
}

const FREE = -1;

/** The column of each row, for at most as many rows as columns. */
function assignRows(costs: readonly (readonly number[])[], columns: number): readonly number[] {
  const rowAt = new Int32Array(columns).fill(FREE);
  const rowPrice = new Float64Array(costs.length);
  const columnPrice = new Float64Array(columns);
  for (let row = 0; row < costs.length; row++) admit(row);
  const columnOf = new Array<number>(costs.length).fill(FREE);
  for (let column = 0; column < columns; column++)
    if (rowAt[column] !== FREE) columnOf[rowAt[column]!] = column;
  return columnOf;

  /** Finds the cheapest chain of moves that ends in a free column, makes them, and reprices what it passed. */
  function admit(newcomer: number): void {
    const reach = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
    const cameFrom = new Int32Array(columns).fill(FREE);
    const passed: number[] = [];
    const isPassed = new Uint8Array(columns);
    let row = newcomer;
    let paid = 0;
    let from = FREE;
    while (true) {
      let next = FREE;
      for (let column = 0; column < columns; column++) {
        if (isPassed[column]) continue;
        const cost = paid + costs[row]![column]! - rowPrice[row]! - columnPrice[column]!;
        if (cost < reach[column]!) {
          reach[column] = cost;
          cameFrom[column] = from;
        }
        if (next === FREE || reach[column]! < reach[next]!) next = column;
      }
      paid = reach[next]!;
      from = next;
      if (rowAt[next] === FREE) break;
      isPassed[next] = 1;
      passed.push(next);
      row = rowAt[next]!;
    }
    rowPrice[newcomer]! += paid;
    for (const column of passed) {
      rowPrice[rowAt[column]!]! += paid - reach[column]!;
      columnPrice[column]! -= paid - reach[column]!;
    }
    for (let column = from; column !== FREE; ) {
      const before = cameFrom[column]!;
      rowAt[column] = before === FREE ? newcomer : rowAt[before]!;
      column = before;
    }
  }
}
