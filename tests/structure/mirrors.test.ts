import { existsSync, globSync } from 'node:fs';
import { dirname } from 'node:path';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url);
const isThere = (path: string): boolean => existsSync(new URL(path, root));

/** Folders of tests that look at more than one folder of the program, by what they hold. */
const OF_MORE: ReadonlyMap<string, string> = new Map([
  ['conversation/every-reply', 'the usual replies of all commands'],
  ['engine/text/wordings', 'wordings that several readers take alike'],
]);

/** Where what a folder of tests looks at lies: a folder of that name, or the one file that was a folder's worth of tests. */
const twinOf = (folder: string): string | undefined => {
  const place = folder.startsWith('commands') ? folder : `src/${folder}`;
  return [place, `${place}.ts`].find(isThere);
};

/** Folders with tests, of rooms that the program has as well. */
const folders = [
  ...new Set(
    globSync('tests/**/*.test.ts', { cwd: root }).map(file => dirname(file).replace(/^tests\/?/u, '')),
  ),
].filter(folder => {
  const [room = ''] = folder.split('/');
  return room !== '' && (room === 'commands' || isThere(`src/${room}`));
});

test('tests mirror the program: each of their folders is one of it', () => {
  expect(folders.length).toBeGreaterThan(90);
  const alone = folders.filter(folder => twinOf(folder) === undefined).toSorted();
  expect(alone).toEqual([...OF_MORE.keys()].toSorted());
});
