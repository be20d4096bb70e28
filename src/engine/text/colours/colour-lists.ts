import { colornames } from 'color-name-list';
import SPANISH from 'nombres-de-colores/colors.min.json' with { type: 'json' };
import { whenAsked } from '../../when-asked.ts';
import { FOLDED_WORDS, foldedColour } from './folded-colours.ts';
import SURVEYED from './surveyed-colours.json' with { type: 'json' };

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
export const openNames: () => ReadonlyMap<string, string> = whenAsked(
  () =>
    new Map([
      ...inSpanish(),
      ...colornames.map(({ name, hex }) => [foldedColour(name), hex] as const),
      ...surveyed(),
    ]),
);

/** The colour that a folded name stands for in either list. */
export const hexOf = (name: string): string | undefined => FOLDED_WORDS.get(name) ?? openNames().get(name);
