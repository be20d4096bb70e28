import { MapWhenAsked, SetWhenAsked } from '../../when-asked.ts';
import { unaccented } from '../unaccented.ts';
import { COLOUR_OBJECTS, COLOUR_WORDS } from './words/colour-words.ts';

/** Longer wishes are stories; cut, so that work stays bounded. */
export const LONGEST_COLOUR = 200;
/** A name as colours are compared: lower case, no accents, British grey, single spaces. */
export const foldedColour = (text: string): string =>
  unaccented(text, LONGEST_COLOUR)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}#]+/gu, ' ')
    .replace(/\bgray/gu, 'grey')
    .trim();

/** Words of the trade and things, folded. */
export const FOLDED_WORDS: ReadonlyMap<string, string> = new MapWhenAsked(() =>
  [...COLOUR_OBJECTS, ...COLOUR_WORDS].map(([word, hex]) => [foldedColour(word), hex] as const),
);
const TRADE: ReadonlySet<string> = new SetWhenAsked(() => [...COLOUR_WORDS.keys()].map(foldedColour));

/** Whether a folded name is one of the trade's own colour words. */
export const isColourWord = (folded: string): boolean => TRADE.has(folded);
