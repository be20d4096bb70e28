import type { Band, Origin } from '../../origin.ts';
import { type Additive, CITRIC_MOLES_PER_GRAM, CITRIC_MONOHYDRATE_MOLES_PER_GRAM, FOOD } from './additive.ts';
import { LIQUIDS } from './liquids/liquid-table.ts';

const HANDBOOK: Origin = { trust: 'from memory', source: 'handbook density; effect is common practice' };
const plain = { water: 0, fat: undefined, sugar: 0, acid: 0, liquid: undefined } as const;

/** Poured loosely into a level spoon; how far it settles differs from jar to jar. */
const bulk = (low: number, typical: number, high: number, source: string): Band & { origin: Origin } => ({
  low,
  typical,
  high,
  origin: { trust: 'from memory', source },
});
const POWDERS = 'tables of the bulk density of powders and grains, loose to tapped';
const HOUSEHOLD = 'USDA FoodData Central, weight of household measures';

/** What is stirred into the batter or dissolved in its water; the liquids stand in a table of their own. */
export const ADDITIVES: readonly Additive[] = [
  ...LIQUIDS,
  {
    ...plain,
    id: 'honey',
    synonyms: ['honey', 'miel'],
    water: 0.171,
    sugar: 0.824,
    density: 1.42,
    bulk: bulk(1.38, 1.42, 1.45, HOUSEHOLD),
    effects: ['heats', 'browns'],
    origin: FOOD,
  },
  {
    ...plain,
    id: 'sugar',
    synonyms: ['sugar', 'azucar', 'sucrose'],
    sugar: 1,
    density: 1.59,
    bulk: bulk(0.8, 0.85, 0.95, `${HOUSEHOLD}: granulated, 4.2 g a teaspoon`),
    effects: ['heats'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'salt',
    synonyms: ['salt', 'fine salt', 'sea salt', 'table salt', 'sal', 'sal fina', 'sal marina'],
    density: 2.165,
    bulk: bulk(1, 1.2, 1.3, `${HOUSEHOLD}: fine table salt, 6 g a teaspoon; flakes are far lighter`),
    effects: ['hardens'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'clay',
    synonyms: ['clay', 'kaolin', 'kaolin clay', 'bentonite', 'arcilla', 'caolin'],
    density: 2.6,
    bulk: bulk(0.3, 0.43, 0.8, `${POWDERS}: kaolin; bentonite lies at the high end`),
    effects: ['drinks-water'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'citric-acid',
    synonyms: [
      'citric acid',
      'citric',
      'acido citrico',
      'citric acid monohydrate',
      'monohydrate citric acid',
      'acido citrico monohidrato',
      'acido citrico monohidratado',
    ],
    // Of the two that are sold the one that eats less lye: acid that is not there would leave lye in the bar.
    acid: CITRIC_MONOHYDRATE_MOLES_PER_GRAM,
    // Its crystal water: 18.015 of 210.139 g/mol.
    water: 18.015 / 210.139,
    density: 1.54,
    bulk: bulk(0.8, 0.9, 1, `${POWDERS}: granulated citric acid`),
    effects: ['eats-lye'],
    origin: { trust: 'computed', source: 'three carboxyl groups a molecule, CIAAW atomic weights' },
  },
  {
    ...plain,
    id: 'citric-anhydrous',
    synonyms: [
      'anhydrous citric acid',
      'citric acid anhydrous',
      'citric anhydrous',
      'acido citrico anhidro',
      'citrico anhidro',
    ],
    acid: CITRIC_MOLES_PER_GRAM,
    density: 1.665,
    bulk: bulk(0.8, 0.9, 1, `${POWDERS}: granulated citric acid`),
    effects: ['eats-lye'],
    origin: { trust: 'computed', source: 'three carboxyl groups a molecule, CIAAW atomic weights' },
  },
  {
    ...plain,
    id: 'sodium-lactate',
    synonyms: ['sodium lactate', 'lactate', 'lactato de sodio', 'lactato sodico'],
    water: 0.4,
    density: 1.33,
    bulk: bulk(1.3, 1.33, 1.35, '60 % solution'),
    effects: ['hardens'],
    origin: { trust: 'from memory', source: 'sold as a 60 % solution; common practice' },
  },
  {
    ...plain,
    id: 'oatmeal',
    synonyms: ['oatmeal', 'oats', 'oat', 'avena'],
    density: 1.3,
    bulk: bulk(0.35, 0.4, 0.5, `${HOUSEHOLD}: rolled oats 81 g a cup, ground more`),
    effects: ['drinks-water'],
    origin: HANDBOOK,
  },
];
