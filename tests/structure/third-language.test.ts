import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { isDue } from '../walk.ts';

/*
 * What a third language touches, asked of the compiler: a copy of the sources with one more language, whose folder of
 * words is there already. Whatever it misses then is what its translator is led to, and there must be nothing else.
 */

/** A code that no language has: those from qaa to qtz are left to everyone (ISO 639-2, reserved for local use). */
const ANOTHER = 'qaa';
const MISSED = [`'${ANOTHER}' is missing in type`, `Property '${ANOTHER}' does not exist`];

const root = resolve(import.meta.dirname, '../..');
let copy: string;
beforeAll(async () => {
  if (!isDue('third language')) return;
  copy = await mkdtemp(join(tmpdir(), 'third-language-'));
  for (const name of ['src', 'commands', 'tsconfig.json', 'package.json'])
    await cp(join(root, name), join(copy, name), { recursive: true });
  await symlink(join(root, 'node_modules'), join(copy, 'node_modules'));
  await cp(join(copy, 'src/words/en'), join(copy, `src/words/${ANOTHER}`), { recursive: true });
  const languages = join(copy, 'src/engine/language.ts');
  const text = await readFile(languages, 'utf8');
  await writeFile(languages, text.replace("['en', 'es'", `['en', 'es', '${ANOTHER}'`));
}, 60_000);
afterAll(async () => {
  if (copy) await rm(copy, { recursive: true, force: true });
});

/** Lines of the compiler that begin an error: file, and what is wrong; of the program or of a part of it. */
async function errors(project = '.'): Promise<readonly { readonly file: string; readonly wrong: string }[]> {
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  // On one thread it takes half the processor time, and a fifth less where its garbage is collected seldom.
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [tsc, '--project', project, '--pretty', 'false', '--singleThreaded'],
    {
      cwd: copy,
      maxBuffer: 1e8,
      env: { ...process.env, GOGC: '400' },
    },
  ).catch((failed: { stdout: string }) => failed);
  const lines = stdout.split(/\n(?=\S+\(\d+,\d+\): error)/u);
  return lines.flatMap(text => {
    const [, file, wrong] = /^(\S+?)\(\d+,\d+\): error ([\s\S]*)$/u.exec(text) ?? [];
    return file && wrong ? [{ file, wrong }] : [];
  });
}

describe.runIf(isDue('third language'))('a third language', () => {
  test('is its folder of words and names in tables: nothing else fails to compile', async () => {
    const found = await errors();
    expect(found.length).toBeGreaterThan(100);
    const others = found.filter(({ wrong }) => !MISSED.some(told => wrong.includes(told)));
    expect(others).toEqual([]);
    const rooms = new Set(
      found.map(({ file }) => file.replace(/^(src\/engine\/colourants\/catalogue)\/.*/u, '$1')),
    );
    expect([...rooms].filter(room => !room.startsWith(`src/words/${ANOTHER}/`)).sort()).toEqual(ROOMS);
    const ofPage = await errors('src/page/browser');
    expect(ofPage.map(({ file }) => file).filter(file => !ROOMS.includes(file))).toEqual([]);
  }, 120_000);
});

/** Where a language has its lines besides its folder of words. */
const ROOMS = [
  // Names of oils and of colourants: they are what members' words are compared with, beside the thing's own figures.
  'src/engine/batch/oils/describe.ts',
  'src/engine/colourants/catalogue',
  // Its quotation marks, beside its code.
  'src/engine/language.ts',
  // Where its words are loaded from.
  'src/words/declared.ts',
  // What each language calls it, where members choose theirs.
  'src/words/en/declared/members/prefer.ts',
  'src/words/en/members/prefer.ts',
  'src/words/es/declared/members/prefer.ts',
  'src/words/es/members/prefer.ts',
  // Its sentences, and the locales of the platform.
  'src/words/index.ts',
  'src/words/locales.ts',
];
