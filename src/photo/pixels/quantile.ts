/** The middle of some values; 0 of none. Does not change them. */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/** The value below which `share` of the values lie; 0 of none. Does not change them. */
export function quantile(values: ArrayLike<number>, share: number): number {
  if (values.length === 0) return 0;
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}
