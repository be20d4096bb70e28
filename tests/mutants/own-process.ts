import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type Outcome, type Trial, tryMutants } from './try-mutants.ts';

/** {@link tryMutants} in a process of its own: Stryker does not start a second time in one. */
export function inOwnProcess(trial: Trial): Promise<readonly Outcome[]> {
  const child = fork(fileURLToPath(import.meta.url));
  return new Promise((resolve, reject) => {
    child.once('message', tried => resolve(tried as readonly Outcome[]));
    child.once('exit', code => reject(new Error(`mutants ended early, with code ${code}`)));
    child.send(trial);
  });
}

if (import.meta.main) {
  // Whoever asked was stopped: nobody waits for the rest.
  process.once('disconnect', () => process.exit(1));
  process.once('message', trial => {
    void tryMutants(trial as Trial).then(tried => process.send!(tried, () => process.exit()));
  });
}
