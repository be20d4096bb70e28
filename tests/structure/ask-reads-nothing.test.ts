import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../commands/ask');
const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(file => file.endsWith('.ts'))
  .map(file => ({ file, text: readFileSync(join(folder, file), 'utf8') }));
/** What our own sentences and lists are cut at: no member wrote these. */
const OF_OUR_OWN: ReadonlySet<string> = new Set(['colour/shared-doses.ts', 'lye/lye-recipe.ts']);

/* A command says what is answered; what reads members' words is a named reader of the engine. */
test('no file of /ask looks into words by a pattern', () => {
  const patterns = /\\p\{L\}|\\b|\(\?<[!=]\\|String\.raw|\\d/u;
  const found = sources.filter(({ file, text }) => patterns.test(text) && !OF_OUR_OWN.has(file));
  expect(found.map(({ file }) => file)).toEqual([]);
  expect(patterns.test(String.raw`/(?<!\p{L})(?:lye|sosa)(?!\p{L})/u`)).toBe(true);
});

/* What is carried typed cannot be misspelt. */
test('no file of /ask reads what an answer of ours tells by cast or by schema', () => {
  const readsBack = /\bdata\b[^;\n]* as [{A-Z(]|\.data\)\.data|safeParse|\bas Reply\b/u;
  expect(sources.filter(({ text }) => readsBack.test(text)).map(({ file }) => file)).toEqual([]);
  expect(readsBack.test('(alone.data as { understood?: object }).understood')).toBe(true);
  expect(readsBack.test('told.safeParse(answer.data).data?.doses')).toBe(true);
});
