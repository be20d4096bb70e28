import { unaccented } from './unaccented.ts';

/** British spellings for what members write either way, after accents are folded. */
const spellings: ReadonlyMap<string, string> = new Map(
  Object.entries({
    color: 'colour',
    colored: 'coloured',
    colorant: 'colourant',
    gray: 'grey',
    aluminum: 'aluminium',
    glycerine: 'glycerin',
    sulfate: 'sulphate',
    moulded: 'molded',
    ox: 'oxide',
    titaniumdioxide: 'titanium dioxide',
    // A zero for the letter, as phones write it.
    ti02: 'tio2',
  }),
);

/** Words that say nothing about which colourant is meant, in either language. */
const fillers = new Set(
  'a al an and con de del dye el en for in la las los of para pigment pigmento polvo powder powdered shade soap the tint y'.split(
    ' ',
  ),
);

const APART = /[^\p{L}\p{N}:]+/u;

/** One word without accents, in one spelling, in the singular. */
function foldWord(word: string): string {
  const spelt = spellings.get(word) ?? word;
  const plural = spelt.length > 3 && spelt.endsWith('s') && !/(?:ss|us|is)$/.test(spelt);
  const singular = plural ? spelt.slice(0, -1) : spelt;
  return spellings.get(singular) ?? singular;
}

/**
 * The words of a name as they are compared: lower case, accents and punctuation gone, one spelling
 * (colour, grey, aluminium), singular. `Óxidos de hierro` gives `['oxido', 'de', 'hierro']`.
 */
export function foldedWords(text: string): readonly string[] {
  const words: string[] = [];
  for (const word of unaccented(text).split(APART)) {
    if (word === '') continue;
    const folded = foldWord(word);
    if (folded.includes(' ')) words.push(...folded.split(' '));
    else words.push(folded);
  }
  return words;
}

/** {@link foldedWords} as one text. */
export function fold(text: string): string {
  return foldedWords(text).join(' ');
}

/** The telling words of a name in alphabetical order, so that "red oxide" and "oxide, red" are the same. */
export const wordSet = (text: string): string => wordSetOf(foldedWords(text));

/** {@link wordSet} of words that are folded already. */
export function wordSetOf(words: readonly string[]): string {
  const telling = words.filter(word => !fillers.has(word));
  return [...new Set(telling.length > 0 ? telling : words)].sort().join(' ');
}
