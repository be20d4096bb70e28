import { opticsOf } from '../../engine/colour/jars/colourant-optics.ts';
import { fullGrams } from '../../engine/colour/jars/jar-spoons.ts';
import { predictBar } from '../../engine/colour/mixing/bar.ts';
import { baseSoap } from '../../engine/colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../../engine/colour/reading/base-text.ts';
import type { Colourant } from '../../engine/colourants/colourant.ts';
import { MEASURES } from '../../engine/quantities/units.ts';

const known = new Map<string, string>();

/** The colour of a colourant at full strength in a cream base that did not gel, `#rrggbb`: what a patch beside its name shows. */
export function swatchHex(colourant: Colourant): string {
  const before = known.get(colourant.id);
  if (before !== undefined) return before;
  const grams = fullGrams({ colourant }, MEASURES.us);
  const { hex } = predictBar([{ optics: opticsOf(colourant), grams }], baseSoap(USUAL_BASE.shades, false));
  known.set(colourant.id, hex);
  return hex;
}
