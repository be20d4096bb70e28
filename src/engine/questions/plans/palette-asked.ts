import { labOfHex } from '../../colour/spectra/cielab.ts';
import { unbroken } from '../../over-lines.ts';
import { coloursBeside } from '../../palettes/colours-beside.ts';
import { THEMES } from '../../palettes/themes.ts';
import { colourNamed } from '../../text/colours/colour-name.ts';
import { unaccented } from '../../text/unaccented.ts';

const OF_PALETTES = new RegExp(
  unbroken`
    \b(?:palettes?|paletas?|combinac\w+|colou?r (?:combos?|combinations?|schemes?)|colou?rs? (?:ideas?|for)|
    ideas? (?:de|para|for|on) (?:\w+ )?colou?r\w*|colores (?:para|de|ideas?)|que colores)\b
  `,
  'u',
);
const GOES_WITH = new RegExp(
  unbroken`
    \b(?:goes?(?: well)? with|go with|to go with|pairs? with|beside|combin\w+ (?:con|bien con)|
    que (?:\p{L}+ ){0,2}van? con|van? bien con|pega(?:n)? con|queda(?:n)? bien con) (?:(?:a|the|my|el|la|un|
    una|mi) )?([\p{L} ]{3,24})
  `,
  'u',
);

/** Colours that are asked for, `#rrggbb`; `beside`: the colour that they are to go with, in the asker's words. */
export type PaletteAsked = { readonly hexes: readonly string[]; readonly beside?: string };

/** The colours of the mood, or beside the colour, for which a palette is asked; undefined where neither is. Pure. */
export function paletteAsked(question: string): PaletteAsked | undefined {
  const plain = unaccented(question);
  const theme = OF_PALETTES.test(plain) ? THEMES.find(({ words }) => words.test(plain)) : undefined;
  return theme ? { hexes: theme.stops } : besideIn(plain);
}

function besideIn(plain: string): PaletteAsked | undefined {
  const text = GOES_WITH.exec(plain)?.[1]?.trim();
  const named = text === undefined ? undefined : colourNamed(text);
  const hexes = named ? coloursBeside(labOfHex(named.hex)) : [];
  return text !== undefined && hexes.length > 0 ? { hexes, beside: text } : undefined;
}
