import fc from 'fast-check';
import './seed.ts';

/**
 * Long walks go through a sample; `WALKS=whole npm test` goes through all there is. Each commit draws another one, so that
 * in time all is gone through and yet a commit is green or red and not now and then: `vitest.config.ts` gives the commit's
 * name, by which `WALKS=NAME npm test` repeats its sample on any other.
 */
export const WHOLE = process.env.WALKS === 'whole';

/** How many of something long the usual run does, and how many the whole walk. */
export const howMany = (usual: number, whole: number): number => (WHOLE ? whole : usual);

/**
 * Which of the dear checks the usual run does: one of those that compute for ten to twenty seconds (fits that leave a writer out, the
 * compiler's look, a run of mutants), and one of those that go through whole days, in processes, crowds and browsers, or through many photos. Besides them those
 * whose inputs are among the files that have `CHANGED`: CI says which, else `vitest.config.ts` looks.
 */
export const isDue = (what: Dear): boolean =>
  drawn(COMPUTED, 1, 'dear').includes(what) ||
  drawn(LIVED, 1, 'days').includes(what) ||
  hasChanged(what, process.env.CHANGED);

/** Whether one of these files, a line each, is what that check is about. */
export const hasChanged = (what: Dear, files = ''): boolean =>
  files.split('\n').some(file => INPUTS[what].test(file));

const INPUTS = {
  emergencies: /^(?:src|tests)\/engine\/(?:hazards|text)\//u,
  // What the words of a text are read as, and every text that is learned from.
  jobs: /^(?:src\/engine\/(?:questions\/(?!lye|technique)|(?:text|quantities|colourants|flaws|batch\/(?:oils|additives))\/)|tests\/engine\/(?:questions\/(?!lye|technique\/(?!ordinary))|(?:text\/|flaws\/examples))|tests\/sets\/[^/]+\.json$)/u,
  matters: /^(?:src|tests)\/engine\/(?:questions\/lye|text)\//u,
  techniques: /^(?:src|tests)\/engine\/(?:questions\/technique|text)\//u,
  'third language': /^(?:src\/(?:words|page)|commands)\/|third-language|^tsconfig/u,
  mutants: /^tests\/mutants\//u,
  'batch kills': /^(?:src\/records\/|commands\/batch|tests\/faults\/)/u,
  'challenge at the terminal':
    /^(?:src\/(?:terminal|conversation|records\/challenges|engine\/challenges)\/|commands\/challenge|tests\/terminal\/)/u,
  'challenge in a browser':
    /^(?:src\/(?:page|loopback|records\/challenges|engine\/challenges)\/|commands\/challenge|tests\/browser\/)/u,
  'crowd at the vote':
    /^(?:src\/(?:records|conversation|discord|loopback)\/|src\/[^/]+$|commands\/challenge|tests\/(?:loopback|records\/challenges)\/)/u,
  image: /^(?:docker\/|package(?:-lock)?\.json|src\/(?:[^/]+|photo\/network\/.+)$)/u,
  'killed process': /^(?:src\/(?:records|conversation|discord|operations)\/|src\/[^/]+$|tests\/faults\/)/u,
  'longest replies':
    /^(?:src\/(?:words|presenting|conversation|discord|pictures|loopback)\/|commands\/|tests\/discord\/)/u,
  'room at home': /^(?:src\/(?:page|loopback|terminal|records)\/|src\/[^/]+$|tests\/page\/)/u,
  pack: /^(?:src\/engine\/|packing\/|package(?:-lock)?\.json$|tsconfig\.json$|tests\/structure\/engine-pack)/u,
  page: /^(?:src\/(?:page|loopback|conversation\/typed|words\/\w+\/fronts)\/|tests\/browser\/)/u,
  photos: /^(?:src\/(?:photo\/(?!training)|engine\/flaws\/)|tests\/photo\/)/u,
  screens: /^(?:src\/(?:page|words|presenting|pictures)\/|commands\/|tests\/browser\/)/u,
  shards: /^(?:src\/(?:records|discord|deadlines)\/|src\/[^/]+$|tests\/faults\/)/u,
  soak: /^(?:src\/(?:records|conversation|workers)\/|src\/engine\/[^/]+$|commands\/|tests\/faults\/)/u,
  upgrade: /^(?:src\/(?:records|conversation|discord)\/|src\/[^/]+$|tests\/faults\/)/u,
} as const;
type Dear = keyof typeof INPUTS;
const COMPUTED: readonly Dear[] = [
  'emergencies',
  'jobs',
  'matters',
  'techniques',
  'third language',
  'mutants',
];
const LIVED: readonly Dear[] = (Object.keys(INPUTS) as Dear[]).filter(what => !COMPUTED.includes(what));

/** So many of these in their order, drawn by chance (Knuth's algorithm S); `word` draws others than another word. */
export function drawn<One>(all: readonly One[], most: number, word = ''): readonly One[] {
  if (WHOLE || all.length <= most) return all;
  let state = fc.readConfigureGlobal().seed ?? 1;
  for (const letter of `${process.env.WALKS ?? ''} ${word}`)
    state = (Math.imul(state, 31) + letter.codePointAt(0)!) | 0;
  const found: One[] = [];
  for (const [at, one] of all.entries()) {
    // Numerical Recipes, section 7.1: the quick and dirty generator.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    if ((all.length - at) * (state / 2 ** 32) < most - found.length) found.push(one);
  }
  return found;
}
