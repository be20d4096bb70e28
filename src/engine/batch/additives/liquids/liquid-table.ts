import type { Additive } from '../additive.ts';
import { BREWED_LIQUIDS } from './brewed.ts';
import { FRUIT_AND_WATER } from './fruit-and-water.ts';
import { MILKS } from './milks.ts';

/** Liquids that makers put in the place of water. Drinks with alcohol are told as they are once it is boiled off. */
export const LIQUIDS: readonly Additive[] = [...MILKS, ...BREWED_LIQUIDS, ...FRUIT_AND_WATER];
