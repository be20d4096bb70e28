/**
 * Onset of gel (neat soap) in mixed-oil cold-process soap, C, by water in percent of soap and water together. From memory, common
 * practice; the shape follows the boundary of neat soap (lower water, higher temperature). Measure your own batches.
 */
const ONSET: readonly (readonly [waterPercent: number, celsius: number])[] = [
  [20, 88],
  [25, 78],
  [30, 71],
  [35, 66],
  [40, 62],
];
/** How far the onset may lie off either way, K. */
export const GEL_ONSET_SPREAD = 6;

/** The typical temperature at which soap of that water content turns to gel, C; held at the ends of the table. */
export function gelOnset(waterPercent: number): number {
  const above = ONSET.findIndex(([water]) => water >= waterPercent);
  if (above === 0) return ONSET[0]![1];
  if (above === -1) return ONSET.at(-1)![1];
  const [w0, c0] = ONSET[above - 1]!;
  const [w1, c1] = ONSET[above]!;
  return c0 + ((c1 - c0) * (waterPercent - w0)) / (w1 - w0);
}

/** Offsets from the typical onset and their weights: a triangle over the spread, cut in seven. */
export const ONSET_OFFSETS: readonly (readonly [offset: number, weight: number])[] = [
  -3, -2, -1, 0, 1, 2, 3,
].map(step => [(GEL_ONSET_SPREAD * step) / 4, (4 - Math.abs(step)) / 16]);

/** Less than this share of the section gelled is a trace nobody sees; more than the other leaves no ring (estimate). */
const SEEN = 0.02;
const ALL = 0.9;

/** What a member would call a bar of which that share gelled. */
export function gelKind(share: number): 'none' | 'partial' | 'full' {
  if (share < SEEN) return 'none';
  return share < ALL ? 'partial' : 'full';
}
