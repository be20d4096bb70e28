/**
 * Changes one constant at a time in a copy of the project and runs the tests that should mind: each change must
 * turn one red. `npm run mutants:constants` prints a line a change and fails if any went unnoticed.
 */
import { resolve } from 'node:path';
import { CONSTANT_MUTANTS } from './constant-mutants.ts';
import { ProjectCopy } from './project-copy.ts';

using copy = new ProjectCopy(resolve(import.meta.dirname, '../..'));
for (const folder of new Set(CONSTANT_MUTANTS.map(({ minds }) => minds)))
  if (!copy.green([folder])) throw new Error(`${folder} is red before anything was changed`);
for (const { what, minds, ...edit } of CONSTANT_MUTANTS) {
  const seen = copy.minds(edit, [minds]);
  process.stdout.write(`${seen ? 'noticed' : 'MISSED '}  ${what}\n`);
  if (!seen) process.exitCode = 1;
}
