import type { AdditiveId, LiquidId } from '../../../engine/batch/additives/additive.ts';
import { inState } from '../../in-state.ts';

export const bareLiquids: Readonly<Record<LiquidId, string>> = {
  milk: 'leche',
  'goat-milk': 'leche de cabra',
  'coconut-milk': 'leche de coco',
  cream: 'nata',
  buttermilk: 'suero de mantequilla',
  yoghurt: 'yogur',
  'oat-drink': 'bebida de avena',
  'almond-drink': 'bebida de almendra',
  'soy-drink': 'bebida de soja',
  beer: 'cerveza',
  wine: 'vino',
  cider: 'sidra',
  tea: 'té',
  coffee: 'café',
  'aloe-juice': 'jugo de aloe',
  'aloe-gel': 'gel de aloe',
  'fruit-puree': 'puré de fruta',
  'vegetable-puree': 'puré de verdura',
  vinegar: 'vinagre',
  'lemon-juice': 'zumo de limón',
  hydrosol: 'hidrolato',
  'witch-hazel': 'hamamelis',
  kombucha: 'kombucha',
  'coconut-water': 'agua de coco',
  'fruit-juice': 'zumo de fruta',
  'sea-water': 'agua de mar',
  brine: 'salmuera',
  ice: 'hielo',
};
const states: Readonly<Partial<Record<LiquidId, string>>> = {
  beer: 'hervida, sin gas',
  wine: 'hervido',
  cider: 'hervida, sin gas',
  'witch-hazel': 'hervido',
  kombucha: 'hervida, sin gas',
};
export const liquids = inState(bareLiquids, states);
export const additives: Readonly<Record<AdditiveId, string>> = {
  ...liquids,
  honey: 'miel',
  sugar: 'azúcar',
  salt: 'sal',
  clay: 'arcilla',
  'citric-acid': 'ácido cítrico',
  'citric-anhydrous': 'ácido cítrico anhidro',
  'sodium-lactate': 'lactato de sodio',
  oatmeal: 'avena',
};
