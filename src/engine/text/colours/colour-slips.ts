import { spaced } from '../../over-lines.ts';
import { wordMeant } from '../spelling/trade/respelt.ts';
import { COMMON_WORDS } from '../spelling/trade/trade-words.ts';
import { wordSpeller } from '../spelling/word-speller.ts';
import { openNames } from './colour-lists.ts';
import { FOLDED_WORDS, foldedColour as fold, isColourWord } from './folded-colours.ts';

/** Words that say nothing about which colour is meant. */
export const FILLERS = new Set(
  fold(
    spaced`
      a an the my mi de del el la los las un una color colour colored coloured shade tone tono tipo like
      como as of in en and y kinda kind sort bit idk just plain solo soap jabon bar bars please pls por
      favor want quiero i it its that this something algo one real really super mas muy que sea con with w
      for para look looks looking ugly feo not no choc chip side inside the mostly medio tirando
    `,
  ).split(' '),
);

/** Single words of the trade that a slip may be meant for. */
const KNOWN: ReadonlySet<string> = new Set([...FOLDED_WORDS.keys()].flatMap(name => name.split(' ')));
const spelt = wordSpeller(new Set([...KNOWN].filter(word => word.length > 3)), COMMON_WORDS);

/** The words with their slips put right where a word is no colour's as it stands. */
export function corrected(words: readonly string[]): readonly string[] {
  return words.map(word => {
    // What the open lists name is a thing of its own: a beech is no beach.
    if (KNOWN.has(word) || FILLERS.has(word) || openNames().has(word)) return word;
    const right = wordMeant(word) ?? spelt.meant(word);
    // A short word with another first letter is another word: "gorse" is no horse.
    const isFar = right !== undefined && right[0] !== word[0] && word.length < 8;
    // Short words are near too many things: "molde" is no mole.
    const isShort = word.length < 6 && right !== undefined && !isColourWord(right);
    return right === undefined || isFar || isShort || !KNOWN.has(right) ? word : right;
  });
}

/** "las puertas azules", "lemons": a plural that no name has is read in the singular. */
export const inSingular = (said: string): string =>
  FOLDED_WORDS.has(said.replace(/s$/u, '')) ? said.replace(/s$/u, '') : singularWords(said);
const singularWords = (said: string): string =>
  said
    .split(' ')
    .map(word =>
      FOLDED_WORDS.has(word) || !word.endsWith('s') || word.length < 5
        ? word
        : ([word.slice(0, -1), word.slice(0, -2)].find(one => FOLDED_WORDS.has(one)) ?? word),
    )
    .join(' ');
