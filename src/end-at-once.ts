/**
 * Ends this process with an exit code though a thread is inside native code that may never end: an ordinary exit waits
 * for every thread. Another program takes the place of this one, which the system ends with all its threads, and exits.
 * No exit handler runs: call it when all else is closed.
 */
export function endAtOnce(code: number): void {
  process.execve?.(process.execPath, [process.execPath, '-e', `process.exit(${code})`], {});
}
