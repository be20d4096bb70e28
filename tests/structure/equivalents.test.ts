import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { changesIn } from '../mutants/changes.ts';
import { isNamedBy } from '../mutants/equivalence.ts';
import { EQUIVALENT } from '../mutants/equivalent.ts';

const root = join(import.meta.dirname, '../..');
const byFile = [...Map.groupBy(EQUIVALENT, ({ file }) => file)];

/** A name that fits more places than were looked at would hide a change that no test minds. */
test.each(byFile)(
  'each change of %s that is named as none stands there as often as it says',
  async (file, named) => {
    expect(existsSync(join(root, file))).toBe(true);
    const changes = await changesIn(root, [file]);
    const lines = readFileSync(join(root, file), 'utf8').split('\n');
    for (const one of named) {
      const there = changes.filter(change => isNamedBy(one, change, lines)).length;
      expect({ ...one, places: there }).toEqual({ ...one, places: one.places ?? 1 });
    }
  },
);
