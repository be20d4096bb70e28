import type { AlkaliBehaviour, Carrier, Colourant } from '../colourants/colourant.ts';

type Named = { readonly colourant: Colourant['names'] };
type Nothing = Readonly<Record<never, never>>;

/** Every caution a dose can carry, with the values its sentence needs: teaspoons of the member's own, percents. */
export interface DoseCautions {
  'raw-batter': Nothing;
  dust: Nothing;
  /** `said` in spoons or percent, or as a depth of colour, which a jar weaker than its kind needs more for. */
  'capped-at-ceiling': Named & {
    readonly said: 'amount' | 'depth' | 'depth-of-weak-jar';
    readonly askedTeaspoons: number;
    readonly ceilingTeaspoons: number;
  };
  'capped-by-law': Named & { readonly law: 'us' | 'eu'; readonly percent: number };
  'percent-of-oils': Named & { readonly percent: number; readonly oilsGrams: number };
  'mix-scaled': { readonly percent: number };
  'whites-scaled': { readonly percent: number };
  'coloured-lather': Named & { readonly ceilingTeaspoons: number };
  staining: Named;
  brittle: { readonly ceilingTeaspoons: number };
  'stick-blend-thickens': Nothing;
  'froth-cup-only': Nothing;
  'dish-test-first': Named & { readonly carrier: Carrier };
  'dish-test-disagrees': Named & { readonly tested: Carrier; readonly asked: Carrier };
  'fades-in-light': Named;
  'lye-changes': Named & { readonly behaviour: Exclude<AlkaliBehaviour, 'stable' | 'never'> };
  'superfat-rises': { readonly from: number; readonly to: number };
  'lye-thins': { readonly from: number; readonly to: number };
  /** Less batter than spoons can colour. */
  'portion-small': { readonly millilitres: number };
  'typical-batter': Nothing;
  'premix-strength-unknown': Named;
}

export type CautionId = keyof DoseCautions;
export type Caution = {
  [Id in CautionId]: { readonly id: Id; readonly values: DoseCautions[Id] };
}[CautionId];
