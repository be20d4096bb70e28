/**
 * The threshold that parts values into two classes with the greatest variance between them (N. Otsu, "A threshold
 * selection method from gray-level histograms", IEEE Trans. SMC 9 (1979) 62-66), over a histogram of `bins` bins
 * from `low` to `high`; where several do equally well (an empty stretch), the middle of them.
 */
export function otsu(values: Float32Array, low: number, high: number, bins = 128): number {
  const histogram = new Float64Array(bins);
  const scale = bins / (high - low);
  for (let i = 0; i < values.length; i++)
    histogram[Math.min(Math.max(Math.floor((values[i]! - low) * scale), 0), bins - 1)]! += 1;
  const total = values.length;
  let whole = 0;
  for (let bin = 0; bin < bins; bin++) whole += bin * histogram[bin]!;
  let count = 0;
  let sum = 0;
  let best = -1;
  let first = 0;
  let last = 0;
  for (let bin = 0; bin < bins - 1; bin++) {
    count += histogram[bin]!;
    sum += bin * histogram[bin]!;
    if (count === 0 || count === total) continue;
    const difference = sum / count - (whole - sum) / (total - count);
    const between = count * (total - count) * difference * difference;
    if (between > best * (1 + 1e-9)) {
      best = between;
      first = bin;
      last = bin;
    } else if (between >= best * (1 - 1e-9)) last = bin;
  }
  return low + ((first + last) / 2 + 1) / scale;
}
