import { oxides } from './catalogue/oxides.ts';
import { ultramarines } from './catalogue/ultramarines.ts';
import type { Colourant } from './colourant.ts';

/** Every generic colourant we know, the most used kinds first. */
export const colourants: readonly Colourant[] = [...oxides, ...ultramarines];

const byId: ReadonlyMap<string, Colourant> = new Map(colourants.map(colourant => [colourant.id, colourant]));

/** The catalogue entry of an id, or undefined. */
export function colourantById(id: string): Colourant | undefined {
  return byId.get(id);
}
