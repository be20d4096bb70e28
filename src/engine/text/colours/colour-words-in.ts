import { foldedColour, isColourWord } from './folded-colours.ts';

/** The first word of a text that is a colour, as it was written; undefined where none is. Pure. */
export const colourWordIn = (text: string): string | undefined =>
  (text.match(/\p{L}+/gu) ?? []).find(word => isColourWord(foldedColour(word)));
