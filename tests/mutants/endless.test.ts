import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isDue } from '../walk.ts';
import { changesIn } from './changes.ts';
import { inOwnProcess } from './own-process.ts';

test.runIf(isDue('mutants'))(
  'a change that never ends is stopped, told and counted as noticed, and those after it are tried',
  async () => {
    const root = join(import.meta.dirname, '../..');
    const changes = await changesIn(root, ['tests/mutants/endless/steps.ts']);
    const testFiles = ['tests/mutants/endless/steps.test.ts'];
    const outcomes = await inOwnProcess({ root, changes, testFiles, graceMillis: 500 });
    const linesOf = (told: string) => outcomes.flatMap(({ fate, line }) => (fate === told ? [line] : []));
    expect(linesOf('endless')).toEqual(['Timeout  tests/mutants/endless/steps.ts:4  more + 1  ->  more - 1']);
    expect(linesOf('missed')).toEqual([
      'Survived  tests/mutants/endless/steps.ts:10  sound * 2  ->  sound / 2',
    ]);
    expect(linesOf('noticed')).toHaveLength(1);
  },
);
