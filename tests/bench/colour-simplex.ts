/** Downhill simplex of J. A. Nelder and R. Mead, Computer Journal 7 (1965) 308-313: needs values only, no slopes. */
export function downhillSimplex(
  value: (at: readonly number[]) => number,
  unknowns: number,
  mostSteps = 200 * unknowns,
): { at: readonly number[]; value: number } {
  const point = (at: readonly number[]) => ({ at, value: value(at) });
  const start = Array.from({ length: unknowns }, () => 0.15);
  const corners = [point(start), ...start.map((_, i) => point(start.map((v, j) => (i === j ? v + 0.2 : v))))];
  const worstAt = unknowns;
  for (let step = 0; step < mostSteps; step++) {
    corners.sort((a, b) => a.value - b.value);
    const [best, worst, second] = [corners[0]!, corners[worstAt]!, corners[worstAt - 1]!];
    if (worst.value - best.value < 1e-4) break;
    const middle = start.map(
      (_, i) => corners.slice(0, worstAt).reduce((sum, { at }) => sum + at[i]!, 0) / unknowns,
    );
    const along = (share: number) => point(middle.map((v, i) => v + share * (worst.at[i]! - v)));
    const reflected = along(-1);
    if (reflected.value < best.value) {
      const stretched = along(-2);
      corners[worstAt] = stretched.value < reflected.value ? stretched : reflected;
      continue;
    }
    if (reflected.value < second.value) {
      corners[worstAt] = reflected;
      continue;
    }
    const drawn = along(reflected.value < worst.value ? -0.5 : 0.5);
    if (drawn.value < Math.min(reflected.value, worst.value)) corners[worstAt] = drawn;
    else
      for (let i = 1; i <= unknowns; i++)
        corners[i] = point(corners[i]!.at.map((v, j) => (v + best.at[j]!) / 2));
  }
  corners.sort((a, b) => a.value - b.value);
  return corners[0]!;
}
