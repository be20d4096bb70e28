import { spaced } from '../../over-lines.ts';
import { OF_BODY } from './topic-words/body.ts';
import { OF_CRAFTS } from './topic-words/crafts.ts';
import { OF_HOME } from './topic-words/home.ts';
import { OF_LIFE } from './topic-words/life.ts';
import { OF_MORE } from './topic-words/more.ts';

/**
 * Words of matters that are none of soap making, by matter, in both languages, lower case without accents; a star stands for any ending.
 * From memory. What soap shares with them (pan, pastilla, oil, colours, water, skin) is left out.
 */
const LISTS = [OF_HOME, OF_BODY, OF_CRAFTS, OF_LIFE, OF_MORE] as const;

type KeysOf<List> = List extends List ? keyof List & string : never;
export type Topic = KeysOf<(typeof LISTS)[number]>;

const PATTERNS = LISTS.flatMap(list => Object.entries(list)).map(([topic, words]) => ({
  topic: topic as Topic,
  whole: new Set(words.split(' ').filter(word => !word.endsWith('*'))),
  heads: words
    .split(' ')
    .filter(word => word.endsWith('*'))
    .map(word => word.slice(0, -1)),
}));

const ENDING = 4;

const topics = new Map<string, readonly Topic[]>();
const MOST_KEPT = 5000;

/** Which matters that are none of ours a word is of; looked up once a word. */
export function topicOf(word: string): readonly Topic[] {
  const kept = topics.get(word);
  if (kept) return kept;
  const of = PATTERNS.filter(
    ({ whole, heads }) =>
      whole.has(word) || heads.some(head => word.startsWith(head) && word.length <= head.length + ENDING),
  );
  const found = [...new Set(of.map(({ topic }) => topic))];
  if (topics.size < MOST_KEPT) topics.set(word, found);
  return found;
}

/** "A hair of green" is how little. */
const isOfLittle = (words: readonly string[], at: number): boolean =>
  words[at] === 'hair' && words[at - 1] === 'a' && words[at + 1] === 'of';

/** Nails, which without their tilde are spelt as an article is: "las uñas", "esmalte de uñas". */
const areNails = (words: readonly string[], at: number): boolean =>
  words[at] === 'unas' &&
  (/^(?:las|mis|tus|sus)$/u.test(words[at - 1] ?? '') ||
    /^(?:de (?:gel|acrilico|porcelana)|acrilicas?)$/u.test(words.slice(at + 1, at + 3).join(' ')) ||
    (words[at - 1] === 'de' && /^(?:esmaltes?|pinturas?)$/u.test(words[at - 2] ?? '')));

/** Which matters that are none of ours a question's words speak of. */
export const topicsIn = (words: readonly string[]): readonly Topic[] => [
  ...new Set(
    words.flatMap((word, at) =>
      areNails(words, at) ? topicOf('nails') : isOfLittle(words, at) ? [] : topicOf(word),
    ),
  ),
];

/**
 * Crafts that share pigments with soap, and what they are done on or with; as {@link WORDS}. None of these is said of soap but in a
 * likeness.
 */
const CRAFTS = spaced`
  acrylic* acrilic* resin resina epoxy epoxi emulsion watercolour* watercolor* acuarela* gouache canvas
  lienzo oleo varnish barniz kiln glaze glazes pottery ceramic* ceramica* stoneware engobe concrete
  hormigon cement cemento grout stucco wool lana silk seda yarn fabric* tela telas cotton algodon denim
  jeans leather cuero beard* barba* bigote hair pelo cabello henna eyebrow* ceja* eyeshadow* lipstick*
  lipgloss labial foundation rubor lotion* balm* balsamo* candle* vela velas nail nails tattoo*
  tatuaje* cake* bizcocho torta tortas macaron* icing fondant latte hummus rice arroz biryani slime
  playdough roof tejas driveway
`.split(' ');
const CRAFT_WORDS: ReadonlySet<string> = new Set(CRAFTS.filter(word => !word.endsWith('*')));
const CRAFT_HEADS = CRAFTS.filter(word => word.endsWith('*')).map(word => word.slice(0, -1));
const LIKENESS = /^(?:like|as|como|tipo|estilo|cual|than|que)$/u;

/** Whether a question speaks of another craft that uses the trade's pigments, and not in a likeness: "like concrete". */
export const isOfCraft = (words: readonly string[]): boolean =>
  words.some(
    (word, at) =>
      (areNails(words, at) ||
        CRAFT_WORDS.has(word) ||
        CRAFT_HEADS.some(head => word.startsWith(head) && word.length <= head.length + ENDING)) &&
      !isOfLittle(words, at) &&
      !words.slice(Math.max(0, at - 3), at).some(before => LIKENESS.test(before)),
  );
