/**
 * Changes one constant at a time in a copy of the project and runs the tests that should mind: each change must
 * turn one red. `npm run mutants:constants` prints a line a change and fails if any went unnoticed.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

type Mutant = {
  readonly what: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Where the tests are that should turn red. */
  readonly minds: string;
};

const mutants: readonly Mutant[] = [
  {
    what: 'the US teaspoon a hundredth larger',
    file: 'src/engine/quantities/units.ts',
    from: 'US_TEASPOON_ML = 4.92892159375',
    to: 'US_TEASPOON_ML = 4.98',
    minds: 'tests/standards',
  },
  {
    what: 'twice the ceiling of ultramarine',
    file: 'src/engine/colourants/catalogue/ultramarines.ts',
    from: 'ceilingTspPerCup: 0.5',
    to: 'ceilingTspPerCup: 1',
    minds: 'tests/standards',
  },
  {
    what: 'twice the ceiling of white',
    file: 'src/engine/colourants/catalogue/whites.ts',
    from: 'fullTspPerCup: 0.5, ceilingTspPerCup: 1',
    to: 'fullTspPerCup: 0.5, ceilingTspPerCup: 2',
    minds: 'tests/standards',
  },
  {
    what: 'neons in water',
    file: 'src/engine/colourants/catalogue/neons.ts',
    from: "carriers: ['oil', 'glycerin']",
    to: "carriers: ['oil', 'glycerin', 'water']",
    minds: 'tests/standards',
  },
  {
    what: 'carrier oil that lowers superfat',
    file: 'src/engine/dispersion/shift.ts',
    from: 'oils + oilMillilitres',
    to: 'oils - oilMillilitres',
    minds: 'tests/engine/dispersion',
  },
  {
    what: 'a jug of 60 % lye',
    file: 'src/engine/batch/liquids/jug.ts',
    from: 'STRONGEST_LYE = 50',
    to: 'STRONGEST_LYE = 60',
    minds: 'tests/engine/batch',
  },
  {
    what: 'lye rounded to the nearest step instead of down',
    file: 'src/engine/batch/lye/lye.ts',
    from: 'Math.floor(grams / step + 1e-9)',
    to: 'Math.round(grams / step + 1e-9)',
    minds: 'tests/engine/batch',
  },
  {
    what: 'witch hazel without its alcohol',
    file: 'src/engine/batch/liquids/fruit-and-water.ts',
    from: 'alcohol: 14',
    to: 'alcohol: 0',
    minds: 'tests/engine/batch',
  },
  {
    what: 'the salt of a salty water taken for its water',
    file: 'src/engine/batch/recipe.ts',
    from: 'grams * (1 - water)',
    to: 'grams * water',
    minds: 'tests/engine/batch',
  },
  {
    what: 'a strength kept before read ten times as deep',
    file: 'src/engine/quantities/strength.ts',
    from: 'ofFull: Number(share) / 100',
    to: 'ofFull: Number(share) / 10',
    minds: 'tests/engine/quantities',
  },
  {
    what: 'a prohibited plant oil let in by itself',
    file: 'src/engine/hazards/scents/read.ts',
    from: "row.barred === 'prohibited' && COMPOUNDED",
    to: "row.barred === 'prohibited' || COMPOUNDED",
    minds: 'tests/engine/hazards',
  },
  {
    what: 'a closing airway told like a rash',
    file: 'src/engine/hazards/emergencies/outright/read.ts',
    from: "airway: scene === 'anaphylaxis' && !burns",
    to: "airway: scene === 'anaphylaxis' && burns",
    minds: 'tests/engine/hazards',
  },
  {
    what: 'pastel as deep as medium',
    file: 'src/engine/quantities/strength.ts',
    from: 'pastel: 1 / 4',
    to: 'pastel: 1 / 2',
    minds: 'tests/standards',
  },
  {
    what: 'a button anybody can press',
    file: 'src/conversation/follow-ups/follow.ts',
    from: "scope === 'a' ? asker : ''",
    to: "''",
    minds: 'tests/conversation',
  },
  {
    what: 'own entries counted as ranked last',
    file: 'src/engine/challenges/voting/count.ts',
    from: 'ranks[numbers.get(candidate)!] = OMITTED;',
    to: ';',
    minds: 'tests/engine/challenges',
  },
  {
    what: 'seldom as likely as often',
    file: 'src/engine/flaws/levels.ts',
    from: 'seldom: 0.06',
    to: 'seldom: 0.6',
    minds: 'tests/engine/flaws',
  },
  {
    what: 'a store that forgets the last commit',
    file: 'src/records/adapters/sqlite-database.ts',
    from: "this.#db.exec('COMMIT')",
    to: "this.#db.exec('ROLLBACK')",
    minds: 'tests/records',
  },
];

const root = resolve(import.meta.dirname, '../..');

/** True when the tests in a folder of the copy are green. */
const green = (copy: string, folder: string): boolean =>
  spawnSync(process.execPath, [join(root, 'node_modules/vitest/vitest.mjs'), 'run', folder, '--bail=1'], {
    cwd: copy,
    encoding: 'utf8',
  }).status === 0;

/** True when the tests turned red with the change in place. */
function noticed(copy: string, { file, from, to, minds }: Mutant): boolean {
  const path = join(copy, file);
  const before = readFileSync(path, 'utf8');
  if (!before.includes(from)) throw new Error(`${file} no longer holds ${from}: mend the list of mutants`);
  writeFileSync(path, before.replace(from, to));
  const red = !green(copy, minds);
  writeFileSync(path, before);
  return red;
}

const copy = mkdtempSync(join(tmpdir(), 'tintmoot-mutants-'));
try {
  for (const part of [
    'src',
    'commands',
    'tests',
    'package.json',
    'vitest.config.ts',
    'tsconfig.json',
    'docker',
    'README.md',
  ])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  for (const folder of new Set(mutants.map(({ minds }) => minds)))
    if (!green(copy, folder)) throw new Error(`${folder} is red before anything was changed`);
  const missed = mutants.filter(mutant => {
    const seen = noticed(copy, mutant);
    process.stdout.write(`${seen ? 'noticed' : 'MISSED '}  ${mutant.what}\n`);
    return !seen;
  });
  process.exitCode = missed.length === 0 ? 0 : 1;
} finally {
  rmSync(copy, { recursive: true, force: true });
}
