import { fullDose, opticsOf } from '../colour/jars/colourant-optics.ts';
import { predictBar } from '../colour/mixing/bar.ts';
import { baseSoap } from '../colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../colour/reading/base-text.ts';
import { colourPieces } from '../colour/reading/colour-list.ts';
import { labOfHex } from '../colour/spectra/cielab.ts';
import { findColourant } from '../colourants/asked/find-colourant.ts';
import { Refusal, refuse } from '../refusal.ts';
import { readColour } from '../text/colours/colour-name.ts';
import type { Target } from './terms.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'challenge-shares-unfit': { readonly sum: number };
    'season-colours-unfit': { readonly least: number; readonly most: number };
  }
}

/** The soap that the colours of a challenge are thought of in. */
export const CHALLENGE_BASE = baseSoap(USUAL_BASE.shades, false);

/**
 * Reads `teal, #4b3f9e 30%, ultramarine blue`: colours apart by commas, where they are not all alike with the part of
 * the face that each takes, 0 to 100; those without a part share what is left. A colourant's name means a bar with its
 * full dose. Throws a Refusal: `challenge-shares-unfit` for parts that leave nothing or do not sum to the whole, or those of colours.
 */
export function readTargets(text: string): readonly Target[] {
  const colours = colourPieces(text).map(part => {
    const [, name = part, share] = /^(.*?)\s+(\d{1,3})\s*%$/.exec(part) ?? [];
    return { hex: hexNamed(name), share: share === undefined ? undefined : Number(share) };
  });
  const parts = colours.flatMap(({ share }) => share ?? []);
  if (parts.length === 0) return colours.map(({ hex }) => ({ hex, lab: labOfHex(hex) }));
  const left = 100 - parts.reduce((sum, share) => sum + share, 0);
  const open = colours.length - parts.length;
  if (parts.includes(0) || (open === 0 ? left !== 0 : left <= 0))
    refuse('challenge-shares-unfit', { sum: 100 - left });
  return colours.map(({ hex, share = left / open }) => ({ hex, lab: labOfHex(hex), share }));
}

function hexNamed(text: string): string {
  try {
    return readColour(text).hex;
  } catch (unreadable) {
    if (!(unreadable instanceof Refusal)) throw unreadable;
    try {
      const colourant = findColourant(text);
      const mix = [{ optics: opticsOf(colourant), grams: fullDose(colourant) }];
      return predictBar(mix, CHALLENGE_BASE).hex;
    } catch (unknown) {
      throw unknown instanceof Refusal ? unreadable : unknown;
    }
  }
}

/** How many colours a season may have. */
const SEASON = { least: 2, most: 6 } as const;

/** The colours of a season as `#rrggbb`, by their names or numbers. Throws a Refusal: `season-colours-unfit`, or those of colours. */
export function readSeason(text: string): readonly string[] {
  const pieces = colourPieces(text);
  if (pieces.length < SEASON.least || pieces.length > SEASON.most) refuse('season-colours-unfit', SEASON);
  return pieces.map(piece => readColour(piece).hex);
}
