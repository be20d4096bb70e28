import { annexColours } from './annex.ts';
import { carbons } from './carbons.ts';
import { carriers } from './carriers.ts';
import { clays } from './clays.ts';
import { effects } from './effects.ts';
import { films } from './films.ts';
import { minerals } from './minerals.ts';
import { organics } from './organics.ts';
import { plants } from './plants.ts';
import type { Substance } from './substance.ts';

const described: readonly Substance[] = [
  ...minerals,
  ...carbons,
  ...effects,
  ...films,
  ...organics,
  ...clays,
  ...plants,
  ...carriers,
];

/** Every ingredient we know; names and numbers that several claim belong to the first. */
export const substances: readonly Substance[] = [
  ...described,
  ...annexColours(new Set(described.flatMap(({ ci }) => ci))),
];

const byId: ReadonlyMap<string, Substance> = new Map(substances.map(substance => [substance.id, substance]));

/** The substance of an id, or undefined. */
export const substanceById = (id: string): Substance | undefined => byId.get(id);
