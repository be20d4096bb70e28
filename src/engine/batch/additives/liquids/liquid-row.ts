import type { Origin } from '../../../origin.ts';
import { type Additive, type AdditiveEffect, FOOD, type JugManner } from '../additive.ts';

/** A liquid as the food tables print it: percents of its mass. */
type Row = {
  readonly id: Additive['id'];
  /** Names between bars. */
  readonly words: string;
  readonly water: number;
  readonly fat?: readonly [oil: string, percent: number];
  readonly sugar?: number;
  /** Moles of protons a gram. */
  readonly acid?: number;
  readonly density?: number;
  readonly jug: JugManner;
  /** Percent by volume before boiling. */
  readonly alcohol?: number;
  readonly effects?: readonly AdditiveEffect[];
  readonly origin?: Origin;
};

const HANDBOOK: Origin = { trust: 'from memory', source: 'densities of foods, FAO/INFOODS 2.0' };
/** What sugar does in lye. */
export const SWEET = ['heats', 'browns'] as const;

/** An additive of a table row; every liquid stands in for water. */
export function liquid(row: Row): Additive {
  const density = row.density ?? 1;
  return {
    id: row.id,
    synonyms: row.words.split('|'),
    water: row.water / 100,
    fat: row.fat && { oil: row.fat[0], share: row.fat[1] / 100 },
    sugar: (row.sugar ?? 0) / 100,
    acid: row.acid ?? 0,
    density,
    bulk: { low: density * 0.97, typical: density, high: density * 1.03, origin: HANDBOOK },
    liquid: { jug: row.jug, alcoholPercent: row.alcohol ?? 0 },
    effects: ['replaces-water', ...(row.effects ?? [])],
    origin: row.origin ?? FOOD,
  };
}
