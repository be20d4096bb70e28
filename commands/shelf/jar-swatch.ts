import { opticsOfJar } from '../../src/engine/colour/jars/jar.ts';
import { predictBar } from '../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../src/engine/colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import type { Colourant } from '../../src/engine/colourants/colourant.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { fullOf, learntOf } from '../../src/presenting/colour/jars.ts';
import { swatchHex } from '../../src/presenting/colour/swatch.ts';
import { calibrationOf } from '../../src/records/shelf/jars/calibration.ts';
import type { ShelfItem } from '../../src/records/shelf/shelf.ts';

/**
 * The colour of a jar on a shelf at its own full strength in a cream base that did not gel: by its spoon, its pigment, and what bars taught of it.
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
