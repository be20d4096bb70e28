/** One constant changed, and the tests that should turn red. */
export type ConstantMutant = {
  readonly what: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Where the tests are that should turn red. */
  readonly minds: string;
};

/** Numbers and rules of every room that would hurt or mislead. */
export const CONSTANT_MUTANTS: readonly ConstantMutant[] = [
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
    file: 'src/engine/batch/additives/liquids/fruit-and-water.ts',
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
    from: "this.#db.prepare('COMMIT')",
    to: "this.#db.prepare('ROLLBACK')",
    minds: 'tests/records',
  },
];
