import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PARTS = [
  'src',
  'commands',
  'tests',
  'package.json',
  'vitest.config.ts',
  'tsconfig.json',
  'docker',
  'README.md',
];

/** A text in a file, and what is written in its place. `at`: where it begins, else where it first stands. */
export type Edit = {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  readonly at?: number;
};

/** A copy of the project in which things are changed, so that nobody who works in it meets the change. */
export class ProjectCopy implements Disposable {
  readonly #root: string;
  readonly #copy = mkdtempSync(join(tmpdir(), 'tintmoot-mutants-'));

  constructor(root: string) {
    this.#root = root;
    for (const part of PARTS) cpSync(join(root, part), join(this.#copy, part), { recursive: true });
    symlinkSync(join(root, 'node_modules'), join(this.#copy, 'node_modules'));
  }

  /** True when these tests, files or folders, are green. */
  green(tests: readonly string[]): boolean {
    const vitest = join(this.#root, 'node_modules/vitest/vitest.mjs');
    const { status } = spawnSync(process.execPath, [vitest, 'run', ...tests, '--bail=1'], {
      cwd: this.#copy,
      encoding: 'utf8',
    });
    return status === 0;
  }

  /** True when the compiler has nothing to say: of a name that is on no list it does. */
  #compiles(): boolean {
    const compiler = join(this.#root, 'node_modules/.bin/tsc');
    return spawnSync(compiler, ['--noEmit'], { cwd: this.#copy }).status === 0;
  }

  /** True when these tests turn red with the change in place, or the compiler refuses it. Throws where the file no longer holds what is changed. */
  minds({ file, from, to, at }: Edit, tests: readonly string[]): boolean {
    const path = join(this.#copy, file);
    const before = readFileSync(path, 'utf8');
    const start = at ?? before.indexOf(from);
    if (start < 0 || !before.startsWith(from, start))
      throw new Error(`${file} no longer holds ${from}: mend the list of mutants`);
    writeFileSync(path, before.slice(0, start) + to + before.slice(start + from.length));
    try {
      return !this.green(tests) || !this.#compiles();
    } finally {
      writeFileSync(path, before);
    }
  }

  [Symbol.dispose](): void {
    rmSync(this.#copy, { recursive: true, force: true });
  }
}
