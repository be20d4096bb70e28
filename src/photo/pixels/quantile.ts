/** The value below which `share` of the values lie; 0 of none. Does not change them. */
export function quantile(values: ArrayLike<number>, share: number): number {
  if (values.length === 0) return 0;
  const place = Math.min(values.length - 1, Math.floor(share * values.length));
  return selected(new Float64Array(values), place);
}

/** The value that sorting would bring to `place`, found without sorting (C. A. R. Hoare, "Find", CACM 4 (1961) 321). */
function selected(values: Float64Array, place: number): number {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = values[(low + high) >> 1]!;
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i <= j) {
        const swap = values[i]!;
        values[i++] = values[j]!;
        values[j--] = swap;
      }
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return values[place]!;
}
