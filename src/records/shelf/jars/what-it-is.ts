import { colourantById } from '../../../engine/colourants/catalogue.ts';
import type { Colourant } from '../../../engine/colourants/colourant.ts';
import { refuseBarredJar } from '../../../engine/hazards/index.ts';
import { Refusal } from '../../../engine/refusal.ts';
import type { IngredientReport } from '../../../engine/stability/report.ts';
import type { Ingredients } from '../shelf.ts';
import { readIngredients } from './ingredients.ts';
import { identify } from './jar.ts';

/** What an item was found to be, and from which list. */
export type WhatItIs = {
  readonly colourant: Colourant | undefined;
  readonly ingredients?: Ingredients;
  readonly report?: IngredientReport;
};

/** Doubts about a name that its ingredient list settles. */
const settledByList: ReadonlySet<string> = new Set(['metal-or-mica', 'glitter-read-label']);

function byName(name: string): Colourant | undefined {
  try {
    return identify(name, undefined);
  } catch (refusal) {
    if (refusal instanceof Refusal && settledByList.has(refusal.id)) return undefined;
    throw refusal;
  }
}

/** What a member says of an item; `known` is the catalogue id that their shelf already has for it. */
export type ItemDescription = {
  readonly colourant?: string | undefined;
  readonly ingredients?: string | undefined;
  readonly known?: string | undefined;
};

/**
 * What an item is: what the member says, now or earlier; else what its name says, unless its ingredients are of another
 * kind; else the catalogue's entry that its ingredients dose like. Refuses metals by name or in the list, and a list of
 * which nothing is recognised.
 */
export function whatItIs(name: string, { colourant, ingredients, known }: ItemDescription): WhatItIs {
  refuseBarredJar(name);
  const before = known === undefined ? undefined : colourantById(known);
  const said = colourant === undefined ? before : identify(name, colourant);
  if (ingredients === undefined) return { colourant: said ?? identify(name, undefined) };
  const { kept, report } = readIngredients(ingredients);
  if (said) return { colourant: said, ingredients: kept, report };
  const like = report.like === undefined ? undefined : colourantById(report.like);
  const named = byName(name);
  const agrees = named !== undefined && (!like || named.kind === like.kind);
  return { colourant: agrees ? named : like, ingredients: kept, report };
}
