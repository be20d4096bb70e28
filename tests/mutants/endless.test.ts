import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isDue } from '../walk.ts';
import { inOwnProcess } from './own-process.ts';
import { ALL } from './sample.ts';

test.runIf(isDue('mutants'))(
  'a change that never ends is stopped, told and counted as noticed, and those after it are tried',
  async () => {
    const root = join(import.meta.dirname, '../..');
    const places = ['tests/mutants/endless/steps.ts'];
    const testFiles = ['tests/mutants/endless/steps.test.ts'];
    const tried = await inOwnProcess({ root, places, testFiles, draw: ALL, graceMillis: 500 });
    expect(tried.endless).toEqual(['Timeout  tests/mutants/endless/steps.ts:4  more + 1  ->  more - 1']);
    expect(tried.missed).toEqual(['Survived  tests/mutants/endless/steps.ts:10  sound * 2  ->  sound / 2']);
    expect(tried).toMatchObject({ noticed: 2, of: 3 });
  },
);
