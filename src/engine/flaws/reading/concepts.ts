import { COLOURS } from './lexicon/colours.ts';
import { FEEL } from './lexicon/feel.ts';
import { GRAMMAR } from './lexicon/grammar.ts';
import { LOOKS } from './lexicon/looks.ts';
import { MAKING } from './lexicon/making.ts';
import { NAMED } from './lexicon/named.ts';
import { PLAIN_WORDS } from './lexicon/plain.ts';
import { SWIRL_AND_SHAPE } from './lexicon/swirl-and-shape.ts';
import { lexiconReader, type Mentioned } from './lexicon-reader.ts';

const LEXICON = { ...LOOKS, ...FEEL, ...COLOURS, ...MAKING, ...NAMED, ...SWIRL_AND_SHAPE, ...GRAMMAR };

/** An idea that a word or phrase of the text stands for. */
export type Concept = keyof typeof LEXICON;

/** Where a concept stands in the text: tokens `from` up to but not including `to`. */
export type Mention = Mentioned<Concept>;

const reader = lexiconReader(LEXICON, {
  plain: () => PLAIN_WORDS,
  open: /^(n_|t_|s_|outsidein|thickfast|everywhere|same|drizzle|wipe|highph|carrier|wish|guess|why|vanish)/,
});

/** See {@link lexiconReader}; the lexicon is that of flaws. */
export const { isConcept, words: flawWords, meant, keyOf, mentions } = reader;
