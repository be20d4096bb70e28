import type { AdditiveId, LiquidId } from '../../../engine/batch/additives/additive.ts';
import { inState } from '../../in-state.ts';

/** What may stand in the place of water, as a recipe names it. */
export const bareLiquids: Readonly<Record<LiquidId, string>> = {
  milk: 'milk',
  'goat-milk': 'goat’s milk',
  'coconut-milk': 'coconut milk',
  cream: 'cream',
  buttermilk: 'buttermilk',
  yoghurt: 'yoghurt',
  'oat-drink': 'oat drink',
  'almond-drink': 'almond drink',
  'soy-drink': 'soy drink',
  beer: 'beer',
  wine: 'wine',
  cider: 'cider',
  tea: 'tea',
  coffee: 'coffee',
  'aloe-juice': 'aloe juice',
  'aloe-gel': 'aloe gel',
  'fruit-puree': 'fruit purée',
  'vegetable-puree': 'vegetable purée',
  vinegar: 'vinegar',
  'lemon-juice': 'lemon juice',
  hydrosol: 'hydrosol',
  'witch-hazel': 'witch hazel',
  kombucha: 'kombucha',
  'coconut-water': 'coconut water',
  'fruit-juice': 'fruit juice',
  'sea-water': 'sea water',
  brine: 'brine',
  ice: 'ice',
};

/** How they are when they are weighed. */
const states: Readonly<Partial<Record<LiquidId, string>>> = {
  beer: 'boiled, flat',
  wine: 'boiled',
  cider: 'boiled, flat',
  'witch-hazel': 'boiled',
  kombucha: 'boiled, flat',
};
/** The same as a recipe lists them, with how they are. */
export const liquids = inState(bareLiquids, states);

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
