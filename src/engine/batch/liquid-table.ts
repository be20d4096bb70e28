import type { Origin } from '../origin.ts';
import {
  ACETIC_MOLES_PER_GRAM,
  type Additive,
  type AdditiveEffect,
  CITRIC_MOLES_PER_GRAM,
  FOOD,
  type JugManner,
  LACTIC_MOLES_PER_GRAM,
  MALIC_MOLES_PER_GRAM,
  TARTARIC_MOLES_PER_GRAM,
} from './additive.ts';

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
const SWEET = ['heats', 'browns'] as const;

/** `more` effects after that of every liquid, which is to stand in for water. */
function liquid(row: Row): Additive {
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

const BREWED: Origin = {
  trust: 'from memory',
  source: 'USDA FoodData Central for the drink, its alcohol taken off as boiled away',
};

/** Liquids that makers put in the place of water. Drinks with alcohol are told as they are once it is boiled off. */
export const LIQUIDS: readonly Additive[] = [
  liquid({
    id: 'milk',
    words: 'milk|cow milk|cows milk|whole milk|leche|leche de vaca|leche entera',
    water: 88.1,
    fat: ['butterfat', 3.27],
    sugar: 4.8,
    density: 1.03,
    jug: 'frozen',
    effects: SWEET,
  }),
  liquid({
    id: 'goat-milk',
    words: 'goat milk|goats milk|leche de cabra',
    water: 87,
    fat: ['butterfat', 4.14],
    sugar: 4.45,
    density: 1.03,
    jug: 'frozen',
    effects: SWEET,
  }),
  liquid({
    id: 'coconut-milk',
    words: 'coconut milk|leche de coco',
    water: 72.9,
    fat: ['coconut', 21.3],
    sugar: 2.8,
    density: 0.98,
    jug: 'frozen',
    effects: SWEET,
  }),
  liquid({
    id: 'cream',
    words: 'cream|heavy cream|double cream|whipping cream|nata|crema de leche',
    water: 57.8,
    fat: ['butterfat', 36.1],
    sugar: 2.9,
    density: 0.99,
    jug: 'never',
    effects: SWEET,
  }),
  liquid({
    id: 'buttermilk',
    words: 'buttermilk|suero de mantequilla|suero de leche|kefir',
    water: 90,
    fat: ['butterfat', 0.9],
    sugar: 4.8,
    acid: 0.008 * LACTIC_MOLES_PER_GRAM,
    density: 1.03,
    jug: 'frozen',
    effects: [...SWEET, 'eats-lye'],
  }),
  liquid({
    id: 'yoghurt',
    words: 'yoghurt|yogurt|yogur',
    water: 87.9,
    fat: ['butterfat', 3.25],
    sugar: 4.7,
    acid: 0.01 * LACTIC_MOLES_PER_GRAM,
    density: 1.04,
    jug: 'never',
    effects: [...SWEET, 'eats-lye'],
  }),
  liquid({
    id: 'oat-drink',
    words: 'oat milk|oat drink|leche de avena|bebida de avena',
    water: 90.5,
    fat: ['canola', 1.5],
    sugar: 4,
    density: 1.02,
    jug: 'frozen',
    effects: SWEET,
  }),
  liquid({
    id: 'almond-drink',
    words:
      'almond milk|almond drink|leche de almendra|leche de almendras|bebida de almendra|bebida de almendras',
    water: 96.5,
    fat: ['almond', 1.1],
    sugar: 0.6,
    density: 1.01,
    jug: 'frozen',
    effects: ['heats', 'browns'],
  }),
  liquid({
    id: 'soy-drink',
    words:
      'soy milk|soya milk|soy drink|soya drink|leche de soja|leche de soya|bebida de soja|bebida de soya',
    water: 92,
    fat: ['soybean', 1.8],
    sugar: 2,
    density: 1.02,
    jug: 'frozen',
    effects: SWEET,
  }),
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
    id: 'aloe-juice',
    words:
      'aloe juice|aloe vera juice|aloe water|aloe|aloe vera|jugo de aloe|zumo de aloe|jugo de sabila|sabila',
    water: 98.5,
    sugar: 0.3,
    jug: 'cold',
  }),
  liquid({
    id: 'aloe-gel',
    words: 'aloe gel|aloe vera gel|gel de aloe|gel de aloe vera|gel de sabila',
    water: 98.5,
    sugar: 0.3,
    jug: 'never',
  }),
  liquid({
    id: 'fruit-puree',
    words:
      'fruit puree|banana puree|banana|strawberry puree|apple puree|applesauce|mango puree|avocado puree|avocado|pulpa de fruta|pure de fruta|pure de platano|platano|pure de aguacate|aguacate',
    water: 80,
    sugar: 12,
    acid: 0.005 * MALIC_MOLES_PER_GRAM,
    density: 1.05,
    jug: 'never',
    effects: [...SWEET, 'eats-lye'],
  }),
  liquid({
    id: 'vegetable-puree',
    words:
      'vegetable puree|pumpkin puree|pumpkin|carrot puree|carrot juice|cucumber puree|cucumber|tomato puree|pure de verduras|pure de calabaza|calabaza|pure de zanahoria|zanahoria|pepino',
    water: 90,
    sugar: 4,
    density: 1.03,
    jug: 'never',
    effects: SWEET,
  }),
  liquid({
    id: 'vinegar',
    words: 'vinegar|apple cider vinegar|cider vinegar|wine vinegar|vinagre|vinagre de manzana',
    water: 94,
    acid: 0.05 * ACETIC_MOLES_PER_GRAM,
    density: 1.01,
    jug: 'cold',
    effects: ['eats-lye'],
    origin: {
      trust: 'computed',
      source: 'vinegar of 5 % acetic acid as sold for the table; stronger ones eat more lye',
    },
  }),
  liquid({
    id: 'lemon-juice',
    words: 'lemon juice|lime juice|lemon|zumo de limon|jugo de limon|limon',
    water: 92.3,
    sugar: 2.5,
    acid: 0.0473 * CITRIC_MOLES_PER_GRAM,
    density: 1.03,
    jug: 'cold',
    effects: ['eats-lye'],
    origin: {
      trust: 'published',
      source:
        'citric acid: Penniston and others, J Endourol 2008;22:567, 48.7 g/l of fresh juice; the rest USDA FoodData Central, from memory',
    },
  }),
  liquid({
    id: 'hydrosol',
    words:
      'hydrosol|rose water|rosewater|lavender water|orange blossom water|flower water|hidrolato|agua de rosas|agua de azahar|agua floral|witch hazel|hamamelis',
    water: 99.8,
    jug: 'cold',
    origin: { trust: 'common practice', source: 'distilled plant water, no alcohol added' },
  }),
  liquid({
    id: 'brine',
    words: 'brine|salt water|sea water|seawater|salmuera|agua salada|agua de mar',
    water: 80,
    density: 1.15,
    jug: 'cold',
    effects: ['hardens'],
    origin: { trust: 'common practice', source: 'one part of salt in four of water by weight' },
  }),
  liquid({
    id: 'ice',
    words: 'ice|ice cubes|crushed ice|hielo|cubitos de hielo',
    water: 100,
    density: 0.998,
    jug: 'cold',
    origin: { trust: 'computed', source: 'water' },
  }),
];
