import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CONSTANT_MUTANTS } from '../mutants/constant-mutants.ts';

test.each(CONSTANT_MUTANTS)(
  'the number to be changed stands where it is looked for: $what',
  ({ file, from, to }) => {
    const source = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
    expect(source.split(from)).toHaveLength(2);
    expect(to).not.toBe(from);
  },
);
