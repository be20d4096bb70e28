import type { Origin } from '../../../origin.ts';
import {
  ACETIC_MOLES_PER_GRAM,
  type Additive,
  MALIC_MOLES_PER_GRAM,
  TARTARIC_MOLES_PER_GRAM,
} from '../additive.ts';
import { liquid, SWEET } from './liquid-row.ts';

const BREWED: Origin = {
  trust: 'from memory',
  source: 'USDA FoodData Central for the drink, its alcohol taken off as boiled away',
};

/** What is brewed or fermented; told as it is once its alcohol is boiled off. */
export const BREWED_LIQUIDS: readonly Additive[] = [
  liquid({
    id: 'beer',
    words: 'beer|stout|ale|lager|cerveza',
    water: 95.5,
    sugar: 3.7,
    density: 1.02,
    jug: 'frozen',
    alcohol: 5,
    effects: SWEET,
    origin: BREWED,
  }),
  liquid({
    id: 'wine',
    words: 'wine|vino|champagne|sparkling wine|cava',
    water: 97,
    sugar: 1.5,
    acid: 0.006 * TARTARIC_MOLES_PER_GRAM,
    density: 1.01,
    jug: 'frozen',
    alcohol: 13,
    effects: [...SWEET, 'eats-lye'],
    origin: BREWED,
  }),
  liquid({
    id: 'cider',
    words: 'cider|hard cider|sidra',
    water: 95.5,
    sugar: 3.5,
    acid: 0.005 * MALIC_MOLES_PER_GRAM,
    density: 1.02,
    jug: 'frozen',
    alcohol: 5,
    effects: [...SWEET, 'eats-lye'],
    origin: BREWED,
  }),
  liquid({
    id: 'tea',
    words: 'tea|te|infusion|herbal tea|chamomile tea|manzanilla',
    water: 99.7,
    jug: 'cold',
    effects: ['browns'],
  }),
  liquid({ id: 'coffee', words: 'coffee|espresso|cafe', water: 99.4, jug: 'cold', effects: ['browns'] }),
  liquid({
    id: 'kombucha',
    words: 'kombucha|jun|kefir de agua|water kefir|te kombucha|kombucha tea',
    water: 96,
    sugar: 3,
    acid: 0.004 * ACETIC_MOLES_PER_GRAM,
    density: 1.01,
    jug: 'frozen',
    alcohol: 1,
    effects: [...SWEET, 'eats-lye'],
    origin: {
      trust: 'from memory',
      source: 'acids of home brews differ widely: the low end, since acid that is not there would leave lye',
    },
  }),
];
