/** Whether a promise is done within so many ms; a failure counts as done. */
export async function settlesWithin(promise: Promise<unknown>, ms: number): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>(resolve => {
    timer = setTimeout(resolve, ms, false);
  });
  const done = promise.then(
    () => true,
    () => true,
  );
  return await Promise.race([done, late]).finally(() => clearTimeout(timer));
}
