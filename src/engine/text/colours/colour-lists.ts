import { colornames } from 'color-name-list';
import SPANISH from 'nombres-de-colores/colors.min.json' with { type: 'json' };
import { unaccented } from '../unaccented.ts';
import { COLOUR_OBJECTS, COLOUR_WORDS } from './colour-words.ts';
import SURVEYED from './surveyed-colours.json' with { type: 'json' };

/** Longer wishes are stories; cut, so that work stays bounded. */
export const LONGEST_COLOUR = 200;
/** A name as colours are compared: lower case, no accents, British grey, single spaces. */
export const foldedColour = (text: string): string =>
  unaccented(text, LONGEST_COLOUR)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}#]+/gu, ' ')
    .replace(/\bgray/gu, 'grey')
    .trim();

/** What people called colours that were shown to them, by name as it is folded. */
const surveyed = (): readonly (readonly [string, string])[] =>
  SURVEYED.colours.flatMap(row =>
    row
      .slice(8)
      .split('|')
      .map(name => [foldedColour(name), row.slice(0, 7)] as const),
  );
/** "Aguacate o Palta" is two names. */
const inSpanish = (): readonly (readonly [string, string])[] =>
  SPANISH.flatMap(({ name, hex }) => name.split(/ [ou] /u).map(one => [foldedColour(one), hex] as const));

/**
 * The open lists: some 30,000 English names and 500 Spanish ones, and over them what people called the colours that they were shown, who
 * name things as makers do; folded once, when the first name is asked that the trade's words lack.
 */
let open: ReadonlyMap<string, string> | undefined;
export const openNames = (): ReadonlyMap<string, string> => {
  open ??= new Map([
    ...inSpanish(),
    ...colornames.map(({ name, hex }) => [foldedColour(name), hex] as const),
    ...surveyed(),
  ]);
  return open;
};

/** Words of the trade and things, folded. */
export const FOLDED_WORDS: ReadonlyMap<string, string> = new Map(
  [...COLOUR_OBJECTS, ...COLOUR_WORDS].map(([word, hex]) => [foldedColour(word), hex]),
);
const TRADE: ReadonlySet<string> = new Set([...COLOUR_WORDS.keys()].map(foldedColour));

/** Whether a folded name is one of the trade's own colour words. */
export const isColourWord = (folded: string): boolean => TRADE.has(folded);

/** The colour that a folded name stands for in either list. */
export const hexOf = (name: string): string | undefined => FOLDED_WORDS.get(name) ?? openNames().get(name);
