/**
 * Changes one constant at a time in a copy of the project and runs the tests that should mind: each change must
 * turn one red. `npm run mutants:constants` prints a line a change and fails if any went unnoticed.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { CONSTANT_MUTANTS, type ConstantMutant } from './constant-mutants.ts';

const root = resolve(import.meta.dirname, '../..');

/** True when the tests in a folder of the copy are green. */
const green = (copy: string, folder: string): boolean =>
  spawnSync(process.execPath, [join(root, 'node_modules/vitest/vitest.mjs'), 'run', folder, '--bail=1'], {
    cwd: copy,
    encoding: 'utf8',
  }).status === 0;

/** True when the tests turned red with the change in place. */
function noticed(copy: string, { file, from, to, minds }: ConstantMutant): boolean {
  const path = join(copy, file);
  const before = readFileSync(path, 'utf8');
  if (!before.includes(from)) throw new Error(`${file} no longer holds ${from}: mend the list of mutants`);
  writeFileSync(path, before.replace(from, to));
  const red = !green(copy, minds);
  writeFileSync(path, before);
  return red;
}

const copy = mkdtempSync(join(tmpdir(), 'tintmoot-mutants-'));
try {
  for (const part of [
    'src',
    'commands',
    'tests',
    'package.json',
    'vitest.config.ts',
    'tsconfig.json',
    'docker',
    'README.md',
  ])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  for (const folder of new Set(CONSTANT_MUTANTS.map(({ minds }) => minds)))
    if (!green(copy, folder)) throw new Error(`${folder} is red before anything was changed`);
  const missed = CONSTANT_MUTANTS.filter(mutant => {
    const seen = noticed(copy, mutant);
    process.stdout.write(`${seen ? 'noticed' : 'MISSED '}  ${mutant.what}\n`);
    return !seen;
  });
  process.exitCode = missed.length === 0 ? 0 : 1;
} finally {
  rmSync(copy, { recursive: true, force: true });
}
