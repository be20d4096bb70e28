/** A cluster of points: its middle and its share of all. */
export type Cluster = { readonly centre: readonly number[]; readonly share: number };

const ROUNDS = 12;

/**
 * Clusters points of `dimensions` interleaved values: k-means (S. P. Lloyd, IEEE Trans. Information Theory 28 (1982)
 * 129-137), started from the points farthest apart (T. F. Gonzalez, Theoretical Computer Science 38 (1985) 293-306),
 * so that no chance is in it. Largest share first; empty ones dropped.
 */
export function kMeans(points: Float32Array, dimensions: number, k: number): Cluster[] {
  const count = Math.floor(points.length / dimensions);
  if (count === 0) return [];
  let centres = farthest(points, dimensions, Math.min(k, count));
  const counts = new Float64Array(k);
  for (let round = 0; round < ROUNDS; round++) {
    const sums = new Float64Array(centres.length);
    counts.fill(0);
    for (let i = 0; i < count; i++) {
      const best = closest(centres, dimensions, points, i * dimensions);
      counts[best]! += 1;
      for (let d = 0; d < dimensions; d++) sums[best * dimensions + d]! += points[i * dimensions + d]!;
    }
    const moved = centres.map((value, i) => {
      const members = counts[Math.floor(i / dimensions)]!;
      return members > 0 ? sums[i]! / members : value;
    });
    const still = moved.every((value, i) => Math.abs(value - centres[i]!) < 0.02);
    centres = moved;
    if (still) break;
  }
  return Array.from({ length: centres.length / dimensions }, (_, i) => ({
    centre: [...centres.subarray(i * dimensions, (i + 1) * dimensions)],
    share: counts[i]! / count,
  }))
    .filter(({ share }) => share > 0)
    .toSorted((one, other) => other.share - one.share);
}

function closest(centres: Float64Array, dimensions: number, points: Float32Array, at: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < centres.length; c += dimensions) {
    let distance = 0;
    for (let d = 0; d < dimensions; d++) {
      const difference = points[at + d]! - centres[c + d]!;
      distance += difference * difference;
    }
    if (distance < least) {
      least = distance;
      best = c / dimensions;
    }
  }
  return best;
}

function farthest(points: Float32Array, dimensions: number, k: number): Float64Array {
  const count = points.length / dimensions;
  const centres = new Float64Array(k * dimensions);
  for (let i = 0; i < points.length; i++) centres[i % dimensions]! += points[i]! / count;
  const away = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  for (let chosen = 1; chosen < k; chosen++) {
    let pick = 0;
    for (let i = 0; i < count; i++) {
      let distance = 0;
      for (let d = 0; d < dimensions; d++)
        distance += (points[i * dimensions + d]! - centres[(chosen - 1) * dimensions + d]!) ** 2;
      away[i] = Math.min(away[i]!, distance);
      if (away[i]! > away[pick]!) pick = i;
    }
    for (let d = 0; d < dimensions; d++) centres[chosen * dimensions + d] = points[pick * dimensions + d]!;
  }
  return centres;
}
