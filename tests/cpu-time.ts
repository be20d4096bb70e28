/** CPU time that this thread takes for it, ms: what others on the machine do does not count. */
export async function cpuOf(work: () => unknown): Promise<number> {
  const before = process.threadCpuUsage();
  await work();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1_000;
}

/**
 * The least CPU time of several rounds, ms; no more of them than are needed to come in under `bound`. The first also
 * loads and compiles what it needs, and on a crowded machine others empty the caches in between.
 */
export async function leastCpu(work: () => unknown, bound: number, rounds = 9): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds && least >= bound; round += 1)
    least = Math.min(least, await cpuOf(work));
  return least;
}
