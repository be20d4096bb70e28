import type { Context } from '../../conversation/context.ts';
import type { JarBelief } from '../../engine/colour/calibration/joint/jar-parameters.ts';
import { lookAfterLye } from '../../engine/colour/jars/colourant-looks.ts';
import { opticsOf } from '../../engine/colour/jars/colourant-optics.ts';
import type { ColourJar } from '../../engine/colour/jars/jar.ts';
import { fullGrams, type SpoonedJar } from '../../engine/colour/jars/jar-spoons.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import { poolFor } from '../../records/calibrations/index.ts';
import { calibrationOf } from '../../records/shelf/jars/calibration.ts';
import type { Jar } from '../../records/shelf/jars/jar.ts';
import { timesItsKind } from '../../records/shelf/jars/learnt-strength.ts';
import type { ShelfItem } from '../../records/shelf/shelf.ts';
import type { Words } from '../../words/index.ts';
import { nameOf } from '../dose.ts';

/** Where the colour of a jar comes from. */
export type ColourSource = 'own-bars' | 'shared-bars' | 'kind';

/** A jar with what test bars of its own, else of others in the group, said of it. */
export async function colourJar(
  { colourant, item }: Jar,
  { shelf, group }: Pick<Context, 'shelf' | 'group'>,
): Promise<ColourJar> {
  if (!item) return { colourant: colourant.id };
  const learnt = learntOf(item);
  if (learnt) return { colourant: colourant.id, learnt };
  const own = calibrationOf(item);
  if (own) {
    const { scale, plusMinus } = own;
    return { colourant: colourant.id, measured: { ...scale, plusMinus } };
  }
  const pool = await poolFor({
    ...shelf,
    group,
    item: { id: item.id, name: item.name, colourant: colourant.id },
  });
  return { colourant: colourant.id, ...(pool.length > 0 && { pool }) };
}

/** What bars and batches said of the lot as the colourant it is now; undefined where they said nothing. */
export function learntOf({ colourant, lot: { learnt } }: ShelfItem): JarBelief | undefined {
  if (!learnt || learnt.colourant !== colourant) return undefined;
  const { parameters, covariance, unexplained } = learnt;
  return {
    parameters: parameters as unknown as JarBelief['parameters'],
    covariance,
    ...(unexplained !== undefined && { unexplained }),
  };
}

export const sourceOf = ({ measured, learnt, pool }: ColourJar): ColourSource =>
  measured || learnt ? 'own-bars' : pool ? 'shared-bars' : 'kind';

/** What a reader should know of where a colour comes from. */
export function sourceView(source: ColourSource, { colourant }: Jar, say: Words): string {
  if (source === 'own-bars') return say.colour.calibrated;
  if (source === 'shared-bars') return say.preview.pooled;
  if (lookAfterLye(colourant) !== undefined) return say.colour.changedByLye;
  return opticsOf(colourant).origin.trust === 'from memory' ? say.colour.estimate : say.colour.measured;
}

/** What a spoon of the jar holds, in the member's own teaspoons. */
export function spooned({ colourant, item }: Jar, { teaspoon }: Pick<Measures, 'teaspoon'>): SpoonedJar {
  const { spoonWeight } = item?.lot ?? {};
  return {
    colourant,
    ...(spoonWeight && { gramsPerTeaspoon: (spoonWeight.grams * teaspoon) / spoonWeight.spoonMillilitres }),
    ...(item?.pigmentFraction !== undefined && { pigmentFraction: item.pigmentFraction }),
  };
}

/** The name its reader knows a jar by: their own, else the colourant's. */
export const knownAs = ({ item, colourant }: Jar, say: Words): string => item?.name ?? nameOf(colourant, say);

/**
 * A full dose of a jar, grams per 100 g of typical batter: by its owner's spoon, and by what bars taught of its strength.
 */
export const fullOf = (jar: Jar, measures: Pick<Measures, 'teaspoon'>): number =>
  fullGrams(spooned(jar, measures), measures) / (timesItsKind(jar) ?? 1);
