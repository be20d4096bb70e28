import { colourPieces } from '../colour/reading/colour-list.ts';
import { hexOfLab, type Lab, labOfHex } from '../colour/spectra/cielab.ts';
import { countOf } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { unfolded } from '../text/bounded.ts';
import { readColour } from '../text/colours/colour-name.ts';
import { excerpt } from '../text/excerpt.ts';
import { evenAlong } from './even-steps.ts';
import { THEMES } from './themes.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'palette-size': { readonly least: number; readonly most: number };
    'palette-unreadable': { readonly text: string };
  }
}

export type PaletteRead = {
  readonly colours: readonly { readonly hex: string; readonly lab: Lab }[];
  /** The mood it was read from; undefined where colours were named. */
  readonly theme: string | undefined;
};

const MOST = 8;
const LONGEST = 400;

/**
 * Reads a palette: colours apart by commas (`teal, #f2b95c, dusty rose`), or a mood with how many it is for (`sunset, four
 * layers`; as many as the mood has unless it is said). English and Spanish.
 * Throws a Refusal: `palette-size`, `palette-unreadable`, or those of colours.
 */
export function readPalette(text: string): PaletteRead {
  if (text.length > LONGEST || text.trim() === '') refuse('palette-unreadable', { text: excerpt(text) });
  const folded = fold(text);
  const pieces = colourPieces(text)
    .flatMap(piece => piece.split(/\s(?:and|y)\s/iu).map(one => one.trim()))
    .filter(piece => piece !== '' && layersIn(fold(piece)) === undefined);
  const theme = pieces.length <= 1 ? THEMES.find(({ words }) => words.test(folded)) : undefined;
  if (theme) {
    const count = layersIn(folded) ?? theme.stops.length;
    if (!(count >= 2 && count <= MOST)) refuse('palette-size', { least: 2, most: MOST });
    return {
      theme: theme.id,
      colours: evenAlong(theme.stops.map(labOfHex), count).map(lab => ({ lab, hex: hexOfLab(lab) })),
    };
  }
  if (pieces.length < 1 || pieces.length > MOST) refuse('palette-size', { least: 1, most: MOST });
  return {
    theme: undefined,
    colours: pieces.map(piece => {
      const { hex } = readColour(piece);
      return { hex, lab: labOfHex(hex) };
    }),
  };
}

/** Lower case without accents; plurals stay, since numbers end like them ("tres"). */
const fold = (text: string): string => unfolded(text, 'NFKD', LONGEST).replace(/\p{M}/gu, '').toLowerCase();

/** "four layers", "3 colours", "5 capas": how many; undefined where no number of them is told. */
function layersIn(folded: string): number | undefined {
  const found =
    /(\S+)\s+(?:layers?|colou?rs?|shades?|stripes?|steps?|capas?|colores|tonos?|franjas?)\b/u.exec(
      folded,
    )?.[1] ?? /^\s*(\S+)\s*$/u.exec(folded)?.[1];
  // An article alone is no number.
  if (found === undefined || /^an?$/u.test(found)) return undefined;
  return /^\d{1,3}$/u.test(found) ? Number(found) : countOf(found);
}
