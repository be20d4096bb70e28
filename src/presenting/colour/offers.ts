import type { Context } from '../../conversation/context.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import { checkColourant } from '../../engine/stability/check-colourant.ts';
import { permittedSummary } from '../../engine/stability/permitted-summary.ts';
import { catalogueChoice, type Usable } from './candidates.ts';

/** Holds in lye and in light, and both laws list all of it for soap without a limit that a dose could pass. */
function isOffered({ jar: { colourant } }: Usable): boolean {
  if (colourant.alkali.behaviour !== 'stable' || colourant.light !== 'holds' || colourant.legal) return false;
  const { us, eu } = permittedSummary(checkColourant(colourant).components);
  return [us, eu].every(({ standing }) => standing === 'listed' || standing === 'limited');
}

/** What may be bought beside the jars there are: generic colourants that are safe in lye and lawful, none that is owned. */
export async function offersBeside(
  own: readonly Usable[],
  measures: Measures,
  context: Context,
): Promise<readonly Usable[]> {
  const kinds = new Set(own.map(({ jar }) => jar.colourant.id));
  const { usable } = await catalogueChoice(measures, context);
  return usable.filter(one => isOffered(one) && !kinds.has(one.jar.colourant.id));
}
