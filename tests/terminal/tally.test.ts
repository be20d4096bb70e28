import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recount } from '../../src/terminal/tally.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tally-'));
});
afterAll(() => rm(folder, { recursive: true }));

type Outcome = { readonly code: number; readonly out: string; readonly err: string };

/** As a process of its own. */
const run = (...args: readonly string[]) =>
  new Promise<Outcome>(resolve => {
    execFile(process.execPath, ['src/terminal/tally.ts', ...args], (failure, out, err) => {
      resolve({ code: failure === null ? 0 : Number(failure.code), out, err });
    });
  });

async function fileOf(text: string): Promise<string> {
  const file = join(folder, `${Math.random().toString(36).slice(2)}.json`);
  await writeFile(file, text);
  return file;
}

describe('recounting a file of ballots', () => {
  test('prints the tally as one line of JSON', async () => {
    const file = await fileOf('{"candidates":["a","b"],"ballots":[{"count":2,"ranking":[["b"],["a"]]}]}');
    const { code, out } = await run(file);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      ranking: [['b'], ['a']],
      pairwise: { a: { b: 0 }, b: { a: 2 } },
      strongestPaths: { a: { b: 0 }, b: { a: 2 } },
      method: 'schulze',
      ballots: 2,
    });
  });

  test('follows the method and the seed that an export names', async () => {
    const file = await fileOf(
      '{"candidates":["a","b"],"method":"single","ties":{"brokenBySeed":"x"},"ballots":[{"count":1,"ranking":[["a"]]}]}',
    );
    const { out = '' } = await recount([file]);
    expect(JSON.parse(out)).toMatchObject({ method: 'single', votes: { a: 1, b: 0 } });
  });

  test.each([
    ['{"candidates":["a"],"ballots":[{"count":1,"ranking":["a"]}]}', /ballots\.0\.ranking\.0/],
    ['{"candidates":["a"],"ballots":[{"count":1,"ranking":[["a"]],"omits":["a"]}]}', /ballots\.0/],
    ['{"candidates":["a"],"ballots":[{"count":1,"ranking":[["z"]]}]}', /“z”/],
    ['{"candidates":', /is not JSON/],
    ['[]', /looks like/],
  ])('says in one sentence what is wrong with %s', async (text, sentence) => {
    const { code, out, err } = await recount([await fileOf(text)]);
    expect({ code, out }).toEqual({ code: 1, out: undefined });
    expect(err).toMatch(sentence);
    expect(err).not.toContain('\n');
  });

  test('says so when there is no such file, in Spanish to those who ask for it', async () => {
    const { code, out, err } = await run('nowhere.json', '--language', 'es');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('No puedo leer');
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
