import { opticsOf } from '../../engine/colour/jars/colourant-optics.ts';
import { opticsOfJar } from '../../engine/colour/jars/jar.ts';
import { fullGrams } from '../../engine/colour/jars/jar-spoons.ts';
import { predictBar } from '../../engine/colour/mixing/bar.ts';
import { baseSoap } from '../../engine/colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../../engine/colour/reading/base-text.ts';
import type { Colourant } from '../../engine/colourants/colourant.ts';
import { MEASURES } from '../../engine/quantities/units.ts';
import { calibrationOf } from '../../records/shelf/jars/calibration.ts';
import type { ShelfItem } from '../../records/shelf/shelf.ts';
import { fullOf, learntOf } from './jars.ts';

/**
 * The colour of a jar on a shelf at its own full strength in that base: by its spoon, its pigment, and what bars taught of it.
 * What others found of the product is left out. `#rrggbb`
 */
export function jarSwatchHex(item: ShelfItem, colourant: Colourant): string {
  const { lot, pigmentFraction } = item;
  const jar = { colourant, item };
  const learnt = learntOf(item);
  const own = learnt ? undefined : calibrationOf(item);
  if (!learnt && !own && !lot.spoonWeight && pigmentFraction === undefined) return swatchHex(colourant);
  const optics = opticsOfJar({
    colourant: colourant.id,
    ...(learnt && { learnt }),
    ...(own && { measured: { ...own.scale, plusMinus: own.plusMinus } }),
  });
  return predictBar([{ optics, grams: fullOf(jar, MEASURES.us) }], baseSoap(USUAL_BASE.shades, false)).hex;
}

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
