import { carbons } from './catalogue/carbons.ts';
import { chromiums } from './catalogue/chromiums.ts';
import { clays } from './catalogue/clays.ts';
import { dyePlants } from './catalogue/dye-plants.ts';
import { dyes } from './catalogue/dyes.ts';
import { kitchenPlants } from './catalogue/kitchen-plants.ts';
import { lakes } from './catalogue/lakes.ts';
import { colouredMicas } from './catalogue/micas-coloured.ts';
import { lakedMicas } from './catalogue/micas-laked.ts';
import { mineralMicas } from './catalogue/micas-mineral.ts';
import { neons } from './catalogue/neons.ts';
import { oxides } from './catalogue/oxides.ts';
import { ultramarines } from './catalogue/ultramarines.ts';
import { whites } from './catalogue/whites.ts';
import type { Colourant } from './colourant.ts';

/** Every generic colourant we know, the most used kinds first. */
export const colourants: readonly Colourant[] = [
  ...ultramarines,
  ...oxides,
  ...chromiums,
  ...whites,
  ...mineralMicas,
  ...colouredMicas,
  ...lakedMicas,
  ...neons,
  ...lakes,
  ...dyes,
  ...carbons,
  ...clays,
  ...kitchenPlants,
  ...dyePlants,
];

const byId: ReadonlyMap<string, Colourant> = new Map(colourants.map(colourant => [colourant.id, colourant]));

/** The catalogue entry of an id, or undefined. */
export function colourantById(id: string): Colourant | undefined {
  return byId.get(id);
}

/** A catalogue entry as a refusal or a menu names it; `src/words` picks the language. */
export type ColourantChoice = { readonly id: string; readonly names: Colourant['names'] };

/** The {@link ColourantChoice} of an entry. */
export const choiceOf = ({ id, names }: Colourant): ColourantChoice => ({ id, names });
