import { execFileSync } from 'node:child_process';

/** Lines of a file, the first and the last. */
export type Lines = readonly [first: number, last: number];

const git = (root: string, args: readonly string[]): string =>
  execFileSync('git', args, { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });

/** Lines that a patch without context adds or changes, by file. */
export function linesOf(patch: string): ReadonlyMap<string, readonly Lines[]> {
  const found = new Map<string, Lines[]>();
  let file = '';
  for (const line of patch.split('\n')) {
    if (line.startsWith('+++ ')) file = line.slice('+++ b/'.length);
    const hunk = /^@@ -\S+ \+(\d+)(?:,(\d+))? @@/.exec(line);
    if (!hunk) continue;
    const [first, count] = [Number(hunk[1]), Number(hunk[2] ?? 1)];
    if (count > 0) found.set(file, [...(found.get(file) ?? []), [first, first + count - 1]]);
  }
  return found;
}

/**
 * Lines of the engine that differ from a commit, committed or not: from `since` where that is said, else from where this branch left
 * main, else from the last commit. Throws where git knows no such commit.
 */
export function changedLines(root: string, since = ''): ReadonlyMap<string, readonly Lines[]> {
  const onMain = git(root, ['branch', '--show-current']).trim() === 'main';
  const hasMain = !onMain && git(root, ['branch', '--list', 'main']).trim() !== '';
  const from = since !== '' ? [since] : hasMain ? ['--merge-base', 'main'] : ['HEAD'];
  return linesOf(
    git(root, ['diff', '--unified=0', '--diff-filter=d', '--no-renames', ...from, '--', 'src/engine']),
  );
}
