import type { LyeTopic } from './topic.ts';

/** What is asked out of care, in the words of an accident. */
export const IN_ITS_WORDS: ReadonlySet<LyeTopic> = new Set([
  'zap-test',
  'water-onto-lye',
  'drink-bottle',
  'lye-on-skin',
  'lye-fumes',
  'lye-and-water-swapped',
  'baby',
  'children',
  'storing',
  'disposal',
  'when-safe',
  'milk-at-once',
  'more-lye',
  'acid-on-soap',
  'acid-in-batter',
  'cooling-lye',
  'no-goggles',
  'gear',
  'dust',
  'when-safe',
]);

/** Their own words are read as an accident's, and hold none: "conchas" as a rash, a tube of crisps, asthma. */
export const HARMLESS: ReadonlySet<LyeTopic> = new Set([
  'sand-and-shells',
  'mould-stuff',
  'asthma',
  'cooling-lye',
  'lye-into-water',
  'scale',
]);

/** What is asked before doing it, with somebody or something hot in it to whom nothing has happened. */
export const ASKED_AHEAD: ReadonlySet<LyeTopic> = new Set([
  'hot-liquid',
  'hands-full',
  'birds',
  'no-window',
  'heating-lye',
  'lye-by-food',
]);
/** What would come of too much or too little lye, weighed by nobody yet. */
export const WHAT_IF: ReadonlySet<LyeTopic> = new Set(['too-much-in', 'too-little-in']);

/** Harm that may be going on: whatever first aid knows of it stands before. */
export const NEVER_IN_GENERAL: ReadonlySet<LyeTopic> = new Set([
  'bleach',
  'swallowed',
  'electric-shock',
  'soap-in-wound',
  'lye-in-food',
  'ultramarine-acid',
]);
