import { namesOf } from '../../../batch/oils/find-oil.ts';
import { OILS } from '../../../batch/oils/index.ts';
import { colourants } from '../../../colourants/catalogue.ts';
import { spaced } from '../../../over-lines.ts';
import { STRENGTH_WORDS } from '../../../quantities/strength.ts';
import { UNIT_WORDS } from '../../../quantities/unit-words.ts';
import { SetWhenAsked } from '../../../when-asked.ts';
import { COLOUR_WORDS } from '../../colours/words/colour-words.ts';
import { foldedWords } from '../../fold.ts';
import { unaccented } from '../../unaccented.ts';
import { wordSpeller } from '../word-speller.ts';
import COMMON from './common-words.json' with { type: 'json' };

/** Words of the kitchen and the bench that stand in no table, and liquids in which colours are wetted. */
const BENCH = spaced`
  dose doses dosis dosage portion portions porcion porciones shelf match preview compare water agua
  glycerin glycerol glicerina oil oils aceite aceites batter masa mezcla powder polvo superfat challenge
  survive stronger layers capas colour colourant pigment pigmento fragrance fragancia extract extracto
  essential distilled destilada aluminio estano vidrio
`;

/** Each word as it is compared and as it is written, plurals too. */
const wordsOf = (names: readonly string[]): readonly string[] =>
  names
    .flatMap(name => [...foldedWords(name), ...unaccented(name).split(' ')])
    .filter(word => word.length > 1 && /^\p{L}+$/u.test(word));

const namesOfColourants = () =>
  colourants.flatMap(({ names, synonyms }) => [names.en, names.es, ...synonyms]);

/** Words of names, one by one, lower case without accents: of colourants, oils, units, strengths and colours. */
export const TRADE_WORDS: ReadonlySet<string> = new SetWhenAsked(() =>
  wordsOf([
    ...namesOfColourants(),
    ...OILS.flatMap(namesOf),
    ...UNIT_WORDS,
    ...STRENGTH_WORDS,
    ...COLOUR_WORDS.keys(),
    BENCH,
  ]),
);

/** Rarer words that makers need and that lie near a name: fine white powder is no turmeric ("palillo"). */
const OF_THE_BENCH = ['polvillo', 'polvillos', 'polvito', 'polvitos'];

/** Common words of both languages, lower case without accents, that no slip of the finger turns into one of the trade's. */
export const COMMON_WORDS: ReadonlySet<string> = new SetWhenAsked(() =>
  [...COMMON.words.flatMap(row => row.split(' ')), ...OF_THE_BENCH].filter(word => !TRADE_WORDS.has(word)),
);

/** Shorter words differ too little from one another to be what a slip was meant for. */
const TARGETS: ReadonlySet<string> = new SetWhenAsked(() => [...TRADE_WORDS].filter(word => word.length > 3));

/** Which word of the trade a single word, lower case without accents, was meant for. */
export const tradeWords = wordSpeller(TARGETS, COMMON_WORDS);
