import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const files = globSync('{src,commands,tests,packing,docker,.ci}/**', { cwd: root });
const here = new Set([...files, ...globSync('*', { cwd: root })]);

/** What only comes about: the command that the reader adds, what a run writes, what is installed; and our own name. */
const NOT_HERE = /(?:^|\/)level(?:\.ts|\.test\.ts|$)|^\.tintmoot\/|^node_modules\/|^tintmoot\//u;

/** `{en,es}` and `*` of a path, each as one of what it stands for. */
const first = (path: string): string =>
  path.replace(/\{(\w+),[^}]*\}/u, '$1').replace(/^src\/words\/\*/u, 'src/words/en');

/** A file or folder of ours: from the root where it begins with a room, else by the end of its path. */
const stands = (path: string): boolean => here.has(path) || files.some(file => file.endsWith(`/${path}`));

/** Paths among texts in back-ticks: with a folder or one of our endings; commands and options are none. */
const PATH =
  /^(?!\/)(?:\.\.\/)?(?:[\w.*{},-]+\/)*[\w.*{},-]*(?:\/|\.(?:ts|mjs|js|json|md|txt|sqlite)|\/[\w{},-]+)$/u;

test('every file and folder that DEVELOPERS.md names is there', () => {
  const text = readFileSync(new URL('DEVELOPERS.md', root), 'utf8');
  const named = [...text.matchAll(/`([^`\n]+)`/gu)].map(match => match[1]!).filter(one => PATH.test(one));
  const paths = [...new Set(named.map(one => first(one.replace(/^\.\.\//u, '').replace(/\/$/u, ''))))];
  expect(paths.length).toBeGreaterThan(150);
  expect(paths.filter(path => !NOT_HERE.test(path) && !stands(path))).toEqual([]);
});
