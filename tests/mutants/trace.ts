import { appendFileSync } from 'node:fs';

/**
 * Appends a line, with the time, to the file that MUTANTS_TRACE names, where it names one: which test and which mutant is on, for whoever
 * waits and sees nothing.
 */
export function trace(line: string): void {
  const file = process.env.MUTANTS_TRACE;
  if (file) appendFileSync(file, `${new Date().toISOString().slice(11, 23)} ${line}\n`);
}
