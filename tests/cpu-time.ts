/** CPU time that this thread takes for it, ms: what others on the machine do does not count. */
export async function cpuOf(work: () => unknown): Promise<number> {
  const before = process.threadCpuUsage();
  await work();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1_000;
}

const TEXT = 'Stir a pinch of it into 15 ml of water, wait until it sinks; then the oil. '.repeat(160);

/** Work of the kind that is bounded here, always the same: a text is folded, cut, searched and counted. */
function yardstick(): number {
  const counts = new Map<string, number>();
  for (let round = 0; round < 40; round += 1)
    for (const word of TEXT.normalize('NFKD')
      .toLowerCase()
      .split(/[^a-z0-9]+/)) {
      const key = word.replace(/(?:es|s)$/, '');
      counts.set(key, (counts.get(key) ?? 0) + (/^(?:[a-z]+|\d+)$/.test(word) ? 1 : 0));
    }
  return counts.size;
}

/** What the yardstick takes on two quiet cores, ms; the bounds of the tests are milliseconds there. Measured. */
const YARDSTICK_MS = 20;

/** How many times slower this machine is now than two quiet cores; never less than once. */
async function slowness(): Promise<number> {
  return Math.max(1, (await cpuOf(yardstick)) / YARDSTICK_MS);
}

/**
 * The least CPU time of several rounds, ms on a quiet machine; no more of them than are needed to come in under
 * `bound`. The first also loads and compiles what it needs. On a crowded machine others empty the caches and slow the
 * clock, so each round is held against a yardstick of its own, taken right behind it.
 */
export async function leastCpu(work: () => unknown, bound: number, rounds = 9): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds && least >= bound; round += 1) {
    const took = await cpuOf(work);
    least = Math.min(least, took < bound ? took : took / (await slowness()));
  }
  return least;
}
