/** What tinybench reports of one run, as far as a ratio needs it. */
type Timed = { readonly throughput: { readonly mean: number } };

/** Prints how many times as many runs a second the first does, `each` counting the work in one run of either. */
export function sayRatio(what: string, ours: Timed, theirs: Timed, each = { ours: 1, theirs: 1 }): void {
  const ratio = (ours.throughput.mean * each.ours) / (theirs.throughput.mean * each.theirs);
  console.info(`${what}: ${ratio.toFixed(1)} times as many a second`);
}
