import type { Colourant } from '../../../engine/colourants/colourant.ts';
import type { ShelfItem } from '../shelf.ts';
import { calibrationOf } from './calibration.ts';

/** Nearer to its kind than this, a jar is as strong as it: level spoons scatter by as much (common practice). */
const AS_STRONG = 0.08;
/** The least and the most that is believed of a jar's strength when it is dosed. */
const BELIEVED = { least: 0.4, most: 3 } as const;

/**
 * How strong an item is over its kind by its own test bars and cured batches, 1 as usual; a white by how it covers.
 * Undefined where nothing was learnt, or nothing that a spoon shows.
 */
export function timesItsKind({
  colourant,
  item,
}: {
  readonly colourant: Colourant;
  readonly item?: ShelfItem;
}): number | undefined {
  if (!item) return undefined;
  const { learnt } = item.lot;
  const [k, s] = (learnt?.colourant === item.colourant && learnt?.parameters) || [];
  const scale =
    k === undefined || s === undefined ? calibrationOf(item)?.scale : { k: Math.exp(k), s: Math.exp(s) };
  return scale && countedTimes(colourant, scale);
}

/** How strong a jar of that scale over its kind counts, wherever it is told or dosed: see {@link timesItsKind}. */
export function countedTimes(
  { kind }: Pick<Colourant, 'kind'>,
  { k, s }: { readonly k: number; readonly s: number },
): number | undefined {
  const times = kind === 'white' ? s : k;
  if (Math.abs(Math.log(times)) < AS_STRONG) return undefined;
  return Math.min(BELIEVED.most, Math.max(BELIEVED.least, times));
}
