import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fc, test } from '@fast-check/vitest';
import { afterAll, beforeAll, expect } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { put, type Store } from '../../src/records/store.ts';

let folder: string;
let store: Store;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tintmoot-'));
  store = await openStore(`sqlite:${join(folder, 'records.sqlite')}`);
});
afterAll(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

/** What the file holds, past all of ours. */
function textsIn(keys: readonly string[]): readonly unknown[] {
  const db = new DatabaseSync(join(folder, 'records.sqlite'), { readOnly: true });
  const select = db.prepare('SELECT text FROM records WHERE key = ?');
  const texts = keys.map(key => select.get(key)?.text);
  db.close();
  return texts;
}

test.prop([fc.jsonValue(), fc.array(fc.jsonValue(), { minLength: 1, maxLength: 4 })], { numRuns: 40 })(
  'records that share a part are written as each alone would be',
  async (shared, others) => {
    const values = others.flatMap(one => [{ shared, one, gone: undefined }, { one, shared }, one]);
    const keys = values.map((_, at) => `together/${at}`);
    await store.commit(values.map((value, at) => put(keys[at]!, value)));
    expect(textsIn(keys)).toEqual(values.map(value => JSON.stringify({ value })));
  },
);

test('a part that would not come back is refused in every record that it stands in, by its place', async () => {
  const [fine, odd] = [{ lines: ['a'] }, { lines: ['a', new Date(0)] }];
  for (const value of [{ fine, odd }, { odd }, { odd, fine }])
    await expect(store.commit([put('a/1', { fine }), put('a/2', value)])).rejects.toMatchObject({
      kind: 'unfit',
      cause: expect.objectContaining({ message: 'value.odd.lines[1] is not plain JSON' }),
    });
  expect(await store.get(['a/1', 'a/2'])).toEqual([undefined, undefined]);
  for (const value of [new Date(0), Number.NaN, undefined, new Map(), [undefined]])
    await expect(store.commit([put('a/3', value)])).rejects.toMatchObject({ kind: 'unfit' });
});
