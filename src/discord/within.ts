/** What is under way when a process is told to stop is finished for so long, ms. */
export const FINISH_WITHIN_MS = 10_000;

/** Waits for work until it is settled or `ms` are over; true where it was settled. What it rejects with is thrown. */
export async function within(ms: number, work: Promise<unknown>): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<false>(resolve => {
    timer = setTimeout(resolve, ms, false);
  });
  return await Promise.race([work.then(() => true), limit]).finally(() => clearTimeout(timer));
}
