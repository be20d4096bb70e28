import { globSync } from 'node:fs';
import { matchesGlob } from 'node:path';

/** A part of the engine, the tests that should mind a change in it, and the share of changes they must notice. */
export type Room = {
  /** Globs from the root; lists of data are left out, since Stryker changes no number: see `constants.ts`. */
  readonly sources: readonly string[];
  /** What fits models anew or runs hundreds of cases would take a minute for each change, and is left out. */
  readonly tests: readonly string[];
  /** Percent. */
  readonly atLeast: number;
};

/** Files by globs, from the root; one that begins with `!` takes away. */
export function filesOf(root: string, globs: readonly string[]): readonly string[] {
  const away = globs.filter(glob => glob.startsWith('!')).map(glob => glob.slice(1));
  const files = globSync(
    globs.filter(glob => !glob.startsWith('!')),
    { cwd: root },
  );
  return files.filter(file => !away.some(glob => matchesGlob(file, glob))).toSorted();
}

const whole = (folder: string): readonly string[] => [`src/engine/${folder}/**/*.ts`];
const except = (...folders: readonly string[]) => folders.map(folder => `!src/engine/${folder}`);
/** Opens a whole room, which a second run of its tests finds closed. */
const OPENS_A_ROOM = '!tests/engine/batch/portion-in-mould.test.ts';
const tested = (...folders: readonly string[]) => [
  ...folders.map(folder => `tests/engine/${folder}/**/*.test.ts`),
  OPENS_A_ROOM,
];
const standards = (names: string) => `tests/standards/${names}.test.ts`;
/** What fits models of questions anew. */
const NO_FITS = [
  '!tests/engine/questions/learned/learned.test.ts',
  '!tests/engine/questions/technique/technique.test.ts',
];
const question = (...folders: readonly string[]) => folders.flatMap(folder => whole(`questions/${folder}`));

/** Questions by other hands, which come by most of what reads a text. */
const QUESTIONS_HELD = 'tests/engine/questions/of-other-hands.test.ts';
/** Readers of amounts, colours and names in text; spelling and what is learned from texts take minutes. */
const IN_TEXT = 'tests/engine/text/{*,{amounts,colours,names,patterns}/**/*}.test.ts';

/** Where a wrong number can hurt, nine in ten; elsewhere four in five. */
export const ROOMS: Readonly<Record<string, Room>> = {
  lye: {
    sources: whole('batch/lye'),
    tests: [
      'tests/engine/batch/{lye/lye*,amounts-that-hurt}.test.ts',
      standards('{lye,lye-solution,densities}'),
    ],
    atLeast: 90,
  },
  dosing: {
    sources: whole('dosing'),
    tests: [
      ...tested('dosing', 'dispersion', 'quantities'),
      standards('{dosing-trade-facts,colourants.trade}'),
    ],
    atLeast: 90,
  },
  dispersion: {
    sources: whole('dispersion'),
    tests: [...tested('dosing', 'dispersion'), standards('dosing-trade-facts')],
    atLeast: 90,
  },
  heat: {
    sources: [...whole('heat'), ...except('heat/{conduction,gel,kinetics}.ts')],
    tests: [...tested('heat'), '!tests/engine/heat/solver.test.ts', standards('heat')],
    atLeast: 90,
  },
  'heat solver': {
    sources: ['src/engine/heat/{conduction,gel,kinetics}.ts'],
    tests: [...tested('heat'), '!tests/engine/heat/solver.test.ts', standards('heat')],
    atLeast: 80,
  },
  law: {
    sources: ['src/engine/stability/{listings,permitted,permitted-summary,legal-share}.ts'],
    tests: [...tested('stability'), standards('listings')],
    atLeast: 90,
  },
  tally: {
    sources: whole('challenges/voting'),
    tests: [
      'tests/engine/challenges/**/{challenge,chance,combine,result,rules,tally,ties,written-ballot}.test.ts',
      standards('{voting,voting-lots}'),
    ],
    atLeast: 90,
  },
  stability: {
    sources: [
      ...whole('stability'),
      ...except('stability/{listings,permitted,permitted-summary,legal-share}.ts'),
    ],
    tests: [...tested('stability'), standards('{alkali,listings}')],
    atLeast: 80,
  },
  hazards: {
    sources: whole('hazards'),
    tests: [...tested('hazards'), '!tests/engine/hazards/emergencies/learned.test.ts'],
    atLeast: 80,
  },
  batch: {
    sources: [...whole('batch'), ...except('batch/lye/**')],
    tests: [
      ...tested('batch', 'heat', 'dosing', 'text/wordings'),
      IN_TEXT,
      standards('{lye,densities,units}'),
    ],
    atLeast: 80,
  },
  quantities: {
    sources: whole('quantities'),
    tests: [...tested('quantities', 'dosing', 'text/wordings'), IN_TEXT, standards('units')],
    atLeast: 80,
  },
  colourants: {
    sources: whole('colourants'),
    tests: [...tested('colourants'), standards('colourants.trade')],
    atLeast: 80,
  },
  challenges: {
    sources: [...whole('challenges'), ...except('challenges/voting/**')],
    tests: [...tested('challenges'), standards('{assignment,timezones}')],
    atLeast: 80,
  },
  colour: {
    sources: whole('colour'),
    tests: [
      ...tested('colour'),
      '!tests/engine/colour/calibration/{joint/stated-error,test-bars-in-time}.test.ts',
      standards('colour-*'),
    ],
    atLeast: 80,
  },
  flaws: {
    sources: whole('flaws'),
    tests: [...tested('flaws'), '!tests/engine/flaws/{tuning,makers,diagnose}.test.ts'],
    atLeast: 80,
  },
  'amounts in phrases': {
    sources: whole('text/amounts'),
    tests: [
      ...tested('text', 'quantities', 'batch', 'questions/portion-line', 'questions/options'),
      QUESTIONS_HELD,
    ],
    atLeast: 80,
  },
  text: {
    sources: [...whole('text'), ...except('text/amounts/**')],
    tests: [
      ...tested('text', 'quantities', 'colourants', 'questions/found'),
      standards('colour-words'),
      QUESTIONS_HELD,
      'tests/engine/questions/lye/recipe-line/of-other-hands.test.ts',
    ],
    atLeast: 80,
  },
  'recipes told': {
    sources: question('lye/recipe-line', 'lye/amounts'),
    tests: [...tested('questions/lye'), '!tests/engine/questions/lye/topics/**'],
    atLeast: 80,
  },
  'lye asked': {
    sources: [...question('lye'), ...except('questions/lye/{recipe-line,amounts}/**')],
    tests: tested('questions/lye'),
    atLeast: 80,
  },
  'amounts asked': {
    sources: question('portion-line', 'plans', 'options'),
    tests: [
      ...tested('questions/portion-line', 'questions/plans', 'questions/options', 'questions/found', 'text'),
      'tests/engine/questions/*.test.ts',
    ],
    atLeast: 80,
  },
  leaning: { sources: question('leaning'), tests: tested('questions/leaning'), atLeast: 80 },
  questions: {
    sources: [
      ...whole('questions'),
      ...except('questions/lye/**', 'questions/{portion-line,plans,options}/**', 'questions/leaning/**'),
    ],
    tests: [...tested('questions'), '!tests/engine/questions/lye/**', ...NO_FITS],
    atLeast: 80,
  },
  cost: { sources: whole('cost'), tests: tested('cost', 'batch'), atLeast: 80 },
  palettes: { sources: whole('palettes'), tests: tested('palettes'), atLeast: 80 },
  pouring: { sources: whole('pouring'), tests: tested('pouring'), atLeast: 80 },
  engine: {
    sources: ['src/engine/*.ts'],
    tests: ['tests/engine/*.test.ts', ...tested('dosing')],
    atLeast: 80,
  },
};
