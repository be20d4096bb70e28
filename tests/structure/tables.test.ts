import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { drawnEntries, entriesIn } from '../mutants/table-entries.ts';

const folder = mkdtempSync(join(tmpdir(), 'tables-'));
afterAll(() => rmSync(folder, { recursive: true }));

writeFileSync(
  join(folder, 'one.ts'),
  `import { refuse } from './refusal.ts';

/** At most 9 of them, 'as they say'. */
const MOST = 0.5;
type Kind = 'oil' | 'fat';
const OILS: ReadonlySet<string> = new Set(['olive|sweet olive|oliva', 'lard']);
export const isMuch = (grams: number): boolean => grams > 100;
const ROWS = {
  none: 0,
};
`,
);
writeFileSync(join(folder, 'two.ts'), 'export const twice = (one: number) => 2 * one;\n');

describe('what is changed in tables', () => {
  test('is every figure and word that is read once, none of a function, a type, a remark or an import', () => {
    expect(entriesIn(folder, 'one.ts').map(({ from, to }) => [from, to])).toEqual([
      ['0.5', '0.625'],
      ["'olive|sweet olive|oliva'", "'olive|sweet oliveq|oliva'"],
      ["'lard'", "'lardq'"],
      ['0', '1'],
    ]);
  });

  test('is drawn one of a file, the same each time, of none where a file has no table', () => {
    const drawn = drawnEntries(folder, ['one.ts', 'two.ts'], 5);
    expect(drawn).toHaveLength(1);
    expect(drawnEntries(folder, ['two.ts', 'one.ts'], 5)).toEqual(drawn);
    expect(drawnEntries(folder, ['one.ts'], 0)).toEqual([]);
  });
});
