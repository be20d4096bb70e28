import type { Band, Origin } from '../../origin.ts';

/** Liquids that stand in for water. */
export type LiquidId =
  | 'milk'
  | 'goat-milk'
  | 'coconut-milk'
  | 'cream'
  | 'buttermilk'
  | 'yoghurt'
  | 'oat-drink'
  | 'almond-drink'
  | 'soy-drink'
  | 'beer'
  | 'wine'
  | 'cider'
  | 'tea'
  | 'coffee'
  | 'aloe-juice'
  | 'aloe-gel'
  | 'fruit-puree'
  | 'vegetable-puree'
  | 'vinegar'
  | 'lemon-juice'
  | 'hydrosol'
  | 'witch-hazel'
  | 'kombucha'
  | 'coconut-water'
  | 'fruit-juice'
  | 'sea-water'
  | 'brine'
  | 'ice';
export type AdditiveId =
  | LiquidId
  | 'honey'
  | 'sugar'
  | 'salt'
  | 'clay'
  /** As the monohydrate, unless its label says anhydrous. */
  | 'citric-acid'
  | 'citric-anhydrous'
  | 'sodium-lactate'
  | 'oatmeal';
export type AdditiveAsk = {
  readonly id: AdditiveId;
  readonly amount:
    | { readonly grams: number }
    | { readonly percentOfOils: number }
    /** Of all the water of the recipe, for a liquid in its place. */
    | { readonly percentOfWater: number };
  /** Where a liquid is to go; undefined leaves it to the plan. */
  readonly into?: 'jug' | 'oils';
  readonly frozen?: boolean;
};

/** What an additive does besides weighing something; `src/words` speaks each. */
export type AdditiveEffect =
  | 'heats'
  | 'browns'
  | 'replaces-water'
  | 'drinks-water'
  | 'hardens'
  | 'salts'
  | 'eats-lye';

/**
 * How a liquid may meet lye. `cold`: like water, lye goes into it slowly. `frozen`: sugar, fat or protein scorch, so lye
 * goes into it only while it is frozen, in small steps. `never`: too thick or too fat for the jug, it goes into the oils.
 */
export type JugManner = 'cold' | 'frozen' | 'never';

/** What makes an additive a liquid that stands in for water. */
export type LiquidFacts = {
  readonly jug: JugManner;
  /** Alcohol before it is boiled off, percent by volume; what the rest of the row says is of the liquid after that. */
  readonly alcoholPercent: number;
};

/** What one gram of an additive brings. Fractions of its mass. */
export type Additive = {
  readonly id: AdditiveId;
  readonly synonyms: readonly string[];
  readonly water: number;
  readonly fat: { readonly oil: string; readonly share: number } | undefined;
  readonly sugar: number;
  /** Moles of hydroxide that a gram neutralises. */
  readonly acid: number;
  /** g/ml of the substance itself: the room it takes in the batter. */
  readonly density: number;
  /** g/ml of it in a level spoon or a jug, air between the grains included. */
  readonly bulk: Band & { readonly origin: Origin };
  readonly liquid: LiquidFacts | undefined;
  readonly effects: readonly AdditiveEffect[];
  readonly origin: Origin;
};

/** Citric acid gives three protons; anhydrous 192.124 g/mol, monohydrate 210.139 g/mol (CIAAW atomic weights). */
export const CITRIC_MOLES_PER_GRAM = 3 / 192.124;
export const CITRIC_MONOHYDRATE_MOLES_PER_GRAM = 3 / 210.139;
/** Acetic, lactic, tartaric and malic acid, moles of protons a gram (CIAAW atomic weights). */
export const ACETIC_MOLES_PER_GRAM = 1 / 60.052;
export const LACTIC_MOLES_PER_GRAM = 1 / 90.078;
export const TARTARIC_MOLES_PER_GRAM = 2 / 150.087;
export const MALIC_MOLES_PER_GRAM = 2 / 134.087;

export const FOOD: Origin = {
  trust: 'from memory',
  source: 'USDA FoodData Central, composition per 100 g; acids from food chemistry textbooks',
};
