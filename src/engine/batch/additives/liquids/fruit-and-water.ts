import { unbroken } from '../../../over-lines.ts';
import {
  ACETIC_MOLES_PER_GRAM,
  type Additive,
  CITRIC_MOLES_PER_GRAM,
  MALIC_MOLES_PER_GRAM,
} from '../additive.ts';
import { liquid, SWEET } from './liquid-row.ts';

/** Juices and purées, sour liquids, waters of plants and of the sea. */
export const FRUIT_AND_WATER: readonly Additive[] = [
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
    words: unbroken`
      fruit puree|banana puree|banana|strawberry puree|apple puree|applesauce|mango puree|avocado puree|
      avocado|pulpa de fruta|pure de fruta|pure de platano|platano|pure de aguacate|aguacate
    `,
    water: 80,
    sugar: 12,
    acid: 0.005 * MALIC_MOLES_PER_GRAM,
    density: 1.05,
    jug: 'never',
    effects: [...SWEET, 'eats-lye'],
  }),
  liquid({
    id: 'vegetable-puree',
    words: unbroken`
      vegetable puree|pumpkin puree|pumpkin|carrot puree|carrot juice|cucumber puree|cucumber|tomato puree|
      pure de verduras|pure de calabaza|calabaza|pure de zanahoria|zanahoria|pepino
    `,
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
    words: unbroken`
      hydrosol|rose water|rosewater|lavender water|orange blossom water|flower water|hidrolato|
      agua de rosas|agua de azahar|agua floral|agua de lavanda|agua de flores|rose hydrosol|
      lavender hydrosol|chamomile hydrosol|orange flower water|hidrolato de rosas|hidrolato de lavanda|
      hidrolato de manzanilla|hidrolato de romero
    `,
    water: 99.8,
    jug: 'cold',
    origin: { trust: 'common practice', source: 'distilled plant water, no alcohol added' },
  }),
  liquid({
    id: 'witch-hazel',
    words: unbroken`
      witch hazel|witch hazel water|witch hazel distillate|witch hazel extract|witch hazel hydrosol|
      hamamelis|agua de hamamelis|hidrolato de hamamelis|extracto de hamamelis
    `,
    water: 99.5,
    jug: 'cold',
    alcohol: 14,
    origin: {
      trust: 'from memory',
      source:
        'witch hazel as sold by the pharmacopoeia holds 14 to 15 % alcohol by volume; told as it is once that is boiled off',
    },
  }),
  liquid({
    id: 'coconut-water',
    words: 'coconut water|young coconut water|agua de coco|agua de pipa',
    water: 95,
    sugar: 3.7,
    density: 1.02,
    jug: 'frozen',
    effects: SWEET,
  }),
  liquid({
    id: 'fruit-juice',
    words: unbroken`
      fruit juice|juice|orange juice|apple juice|grape juice|pineapple juice|pomegranate juice|
      cranberry juice|cherry juice|watermelon juice|grapefruit juice|mango juice|strawberry juice|must|zumo|
      jugo|zumo de fruta|jugo de fruta|zumo de naranja|jugo de naranja|zumo de manzana|jugo de manzana|
      zumo de uva|jugo de uva|zumo de pina|jugo de pina|zumo de granada|jugo de granada|zumo de arandano|
      jugo de arandano|zumo de sandia|jugo de sandia|zumo de pomelo|jugo de toronja|mosto
    `,
    water: 88,
    sugar: 10,
    acid: 0.005 * MALIC_MOLES_PER_GRAM,
    density: 1.045,
    jug: 'frozen',
    effects: [...SWEET, 'eats-lye'],
    origin: {
      trust: 'from memory',
      source:
        'USDA FoodData Central, apple and orange juice; acid at the low end, since acid that is not there would leave lye',
    },
  }),
  liquid({
    id: 'sea-water',
    words: 'sea water|seawater|ocean water|agua de mar|agua marina',
    water: 96.5,
    density: 1.025,
    jug: 'cold',
    effects: ['salts'],
    origin: {
      trust: 'published',
      source: 'mean salinity of the sea, 35 g/kg (UNESCO, practical salinity scale 1978)',
    },
  }),
  liquid({
    id: 'brine',
    words: 'brine|salt water|saltwater|salmuera|agua salada|agua con sal',
    water: 80,
    density: 1.15,
    jug: 'cold',
    effects: ['salts'],
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
