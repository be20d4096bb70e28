/** A part of the engine, the tests that should mind a change in it, and the share of changes they must notice. */
export type Room = {
  /** Globs from the root; lists of data are left out, since Stryker changes no number: see `constants.ts`. */
  readonly sources: readonly string[];
  /** What fits models anew or runs hundreds of cases would take a minute for each change, and is left out. */
  readonly tests: readonly string[];
  /** Percent. */
  readonly atLeast: number;
};

const whole = (folder: string): readonly string[] => [`src/engine/${folder}/**/*.ts`];
/** How members write amounts and lists of oils is told there. */
const written = 'tests/engine/text/{*,wordings/*}.test.ts';
const batch = ['tests/engine/batch/*.test.ts', written, 'tests/standards/{lye,densities,units}.test.ts'];
const lye = [
  'tests/engine/batch/{lye*,amounts-that-hurt}.test.ts',
  'tests/standards/{lye,lye-solution,densities}.test.ts',
];

/** Where a wrong number can hurt, nine in ten; elsewhere four in five. */
export const ROOMS: Readonly<Record<string, Room>> = {
  lye: { sources: ['src/engine/batch/lye/*.ts'], tests: lye, atLeast: 90 },
  dosing: {
    sources: ['src/engine/dosing/*.ts'],
    tests: [
      'tests/engine/{dosing,dispersion,quantities}/*.test.ts',
      'tests/standards/{dosing-trade-facts,colourants.trade}.test.ts',
    ],
    atLeast: 90,
  },
  dispersion: {
    sources: ['src/engine/dispersion/*.ts'],
    tests: ['tests/engine/{dosing,dispersion}/*.test.ts', 'tests/standards/dosing-trade-facts.test.ts'],
    atLeast: 90,
  },
  heat: {
    sources: [
      ...[
        'run',
        'section',
        'setting',
        'sugar',
        'surroundings',
        'temperature',
        'mould',
        'crackle',
        'estimate',
      ].map(file => `src/engine/heat/${file}.ts`),
    ],
    tests: [
      'tests/engine/heat/*.test.ts',
      '!tests/engine/heat/solver.test.ts',
      'tests/standards/heat.test.ts',
    ],
    atLeast: 90,
  },
  'heat solver': {
    sources: ['conduction', 'gel', 'kinetics'].map(file => `src/engine/heat/${file}.ts`),
    tests: ['tests/engine/heat/*.test.ts', 'tests/standards/heat.test.ts'],
    atLeast: 80,
  },
  law: {
    sources: ['listings', 'permitted', 'permitted-summary', 'legal-share'].map(
      file => `src/engine/stability/${file}.ts`,
    ),
    tests: ['tests/engine/stability/*.test.ts', 'tests/standards/listings.test.ts'],
    atLeast: 90,
  },
  tally: {
    sources: ['src/engine/challenges/voting/*.ts'],
    tests: [
      'tests/engine/challenges/{challenge,chance,combine,result,rules,tally,ties,written-ballot}.test.ts',
      'tests/standards/{voting,voting-lots}.test.ts',
    ],
    atLeast: 90,
  },
  stability: {
    sources: [
      'src/engine/stability/*.ts',
      '!src/engine/stability/{listings,permitted,permitted-summary,legal-share}.ts',
    ],
    tests: ['tests/engine/stability/*.test.ts', 'tests/standards/{alkali,listings}.test.ts'],
    atLeast: 80,
  },
  hazards: {
    sources: [...whole('hazards'), '!src/engine/hazards/emergencies/lexicon-*.ts'],
    tests: ['tests/engine/hazards/*.test.ts', '!tests/engine/hazards/learned.test.ts'],
    atLeast: 80,
  },
  batch: {
    sources: [
      ...whole('batch'),
      '!src/engine/batch/lye/*.ts',
      '!src/engine/batch/**/*-table.ts',
      '!src/engine/batch/oils/table-*.ts',
    ],
    tests: [...batch, 'tests/engine/{heat,dosing}/*.test.ts'],
    atLeast: 80,
  },
  quantities: {
    sources: whole('quantities'),
    tests: [
      'tests/engine/quantities/*.test.ts',
      written,
      'tests/standards/units.test.ts',
      'tests/engine/dosing/*.test.ts',
    ],
    atLeast: 80,
  },
  colourants: {
    sources: ['src/engine/colourants/*.ts'],
    tests: ['tests/engine/colourants/*.test.ts', 'tests/standards/colourants.trade.test.ts'],
    atLeast: 80,
  },
  challenges: {
    sources: ['src/engine/challenges/*.ts'],
    tests: ['tests/engine/challenges/*.test.ts', 'tests/standards/{assignment,timezones}.test.ts'],
    atLeast: 80,
  },
  colour: {
    sources: whole('colour'),
    tests: [
      'tests/engine/colour/**/*.test.ts',
      '!tests/engine/colour/stated-error.test.ts',
      'tests/standards/colour-*.test.ts',
    ],
    atLeast: 80,
  },
  flaws: {
    sources: [...whole('flaws'), '!src/engine/flaws/reading/lexicon/*.ts'],
    tests: ['tests/engine/flaws/*.test.ts', '!tests/engine/flaws/{tuning,makers,diagnose}.test.ts'],
    atLeast: 80,
  },
  text: {
    sources: whole('text'),
    tests: ['tests/engine/{text,quantities,colourants}/*.test.ts'],
    atLeast: 80,
  },
  questions: {
    sources: whole('questions'),
    tests: ['tests/engine/questions/**/*.test.ts', '!tests/engine/questions/learned/learned.test.ts'],
    atLeast: 80,
  },
  cost: { sources: whole('cost'), tests: ['tests/engine/cost/*.test.ts'], atLeast: 80 },
  palettes: { sources: whole('palettes'), tests: ['tests/engine/palettes/*.test.ts'], atLeast: 80 },
  pouring: { sources: whole('pouring'), tests: ['tests/engine/pouring/*.test.ts'], atLeast: 80 },
};
