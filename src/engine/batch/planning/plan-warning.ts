import type { ScentRisk } from '../../hazards/scents/scents.ts';
import type { AdditiveId } from '../additives/additive.ts';
import type { Oil } from '../oils/oil.ts';
import type { PortionName } from '../portions/portion-name.ts';

/** Every warning a plan can carry, with the values its sentence needs. Grams, and percents 0 to 100. */
export interface PlanWarnings {
  /** The core comes to where water boils: the loaf erupts. */
  'boils-over': { peakC: number; startC: number; sweet: boolean };
  /** More than one person makes at a kitchen table; the heat of one loaf says nothing of it. */
  'batch-large': { kilograms: number; most: number };
  /** `lowest` if the oils sit at the low end of their ranges. */
  'portion-superfat-negative': { name: PortionName; percent: number; lowest: number };
  /** Only a wax or hard fat asks for it. */
  'start-hot': { startC: number };
  'superfat-high': { percent: number };
  'superfat-may-go-negative': { lowest: number; oil: Oil['names']; low: number; high: number };
  'lye-strong': { percent: number };
  'lye-weak': { percent: number };
  'lye-rounded-down': { grams: number; points: number };
  'purity-assumed': { alkali: 'NaOH' | 'KOH'; percent: number };
  'hold-back-short': { carrierWaterGrams: number; heldBackGrams: number };
  'dip-lowers-pot': { percent: number };
  'portion-superfat-high': { name: PortionName; percent: number };
  'portion-lye-weak': { name: PortionName; percent: number };
  'fragrance-browns': { level: 'slight' | 'tan' | 'brown' | 'dark'; percentOfOils: number };
  /** `drawn`: the batter is to be drawn or layered, which wants time. `name` of the scent whose kind often does. */
  'fragrance-speeds': { name: string | undefined; drawn: boolean };
  /** Words of the scent that nothing is known of. */
  'fragrance-unknown': { text: string };
  /** What was asked for, and what carriers and liquids make of it. */
  'superfat-shifted': { asked: number; comes: number };
  'fragrance-limit': { percentOfOils: number };
  /** The name as it was read, in small letters. */
  'scent-hurts': { scent: string; risk: ScentRisk };
  /** `wrapped`: in towels or an oven, and yet no hotter than a loaf may get. */
  'additive-heats': { additive: AdditiveId; wrapped: boolean };
  'additive-browns': { additive: AdditiveId };
  'additive-drinks-water': { additive: AdditiveId };
  'additive-hardens': { additive: AdditiveId };
  'milk-keep-cold': { additive: AdditiveId };
  'liquid-goes-into-oils': { additive: AdditiveId; grams: number };
  'boil-off-alcohol': { additive: AdditiveId; percent: number; fizzes: boolean };
  /** What the liquid's acid uses up; it is added already. */
  'liquid-eats-lye': { additive: AdditiveId; grams: number; lyeGrams: number };
  /** Grams of salt that a salty water brings, and percent of the oils. */
  'liquid-salt': { additive: AdditiveId; grams: number; percent: number };
  /** As bought it may hold what its name does not say. */
  'liquid-read-label': { additive: AdditiveId };
  /** How many points of superfat the fat of a liquid is. */
  'liquid-fat': { additive: AdditiveId; points: number };
  'lye-kept-dissolved': { percent: number };
  /** In the jug alone, while liquids or colours bring the rest of the water elsewhere. */
  'jug-strong': { percent: number };
  /** More water than asked, since lye needs its own weight. */
  'water-over-asked': { grams: number };
  'melts-above-pour': { oil: Oil['names']; percent: number; meltsC: number; startC: number };
  'acid-thickens-at-once': { oil: Oil['names']; percent: number };
  'wax-stays': { oil: Oil['names']; percent: number };
  'koh-paste': { percent: number };
  'koh-soft': { percent: number };
  'salt-bar': { percent: number; toHours: number };
  /** `points` of superfat by which the other of the two acids that are sold would be off. */
  'citric-eats-lye': {
    grams: number;
    lyeGrams: number;
    points: number;
    form: 'monohydrate' | 'anhydrous';
  };
}
export type PlanWarning = {
  [Id in keyof PlanWarnings]: { readonly id: Id; readonly values: PlanWarnings[Id] };
}[keyof PlanWarnings];
