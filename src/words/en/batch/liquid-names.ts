import type { AdditiveId, LiquidId } from '../../../engine/batch/request.ts';

/** What may stand in the place of water, as a recipe names it. */
export const liquids: Readonly<Record<LiquidId, string>> = {
  milk: 'milk',
  'goat-milk': 'goat’s milk',
  'coconut-milk': 'coconut milk',
  cream: 'cream',
  buttermilk: 'buttermilk',
  yoghurt: 'yoghurt',
  'oat-drink': 'oat drink',
  'almond-drink': 'almond drink',
  'soy-drink': 'soy drink',
  beer: 'beer (boiled, flat)',
  wine: 'wine (boiled)',
  cider: 'cider (boiled, flat)',
  tea: 'tea',
  coffee: 'coffee',
  'aloe-juice': 'aloe juice',
  'aloe-gel': 'aloe gel',
  'fruit-puree': 'fruit purée',
  'vegetable-puree': 'vegetable purée',
  vinegar: 'vinegar',
  'lemon-juice': 'lemon juice',
  hydrosol: 'hydrosol',
  'witch-hazel': 'witch hazel (boiled)',
  kombucha: 'kombucha (boiled, flat)',
  'coconut-water': 'coconut water',
  'fruit-juice': 'fruit juice',
  'sea-water': 'sea water',
  brine: 'brine',
  ice: 'ice',
};

/** What is stirred in. */
export const additives: Readonly<Record<AdditiveId, string>> = {
  ...liquids,
  honey: 'honey',
  sugar: 'sugar',
  salt: 'salt',
  clay: 'clay',
  'citric-acid': 'citric acid',
  'citric-anhydrous': 'anhydrous citric acid',
  'sodium-lactate': 'sodium lactate',
  oatmeal: 'oatmeal',
};
