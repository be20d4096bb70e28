import type { Carrier, ColourantKind } from '../colourants/colourant.ts';

/** Every caution a dose can carry, with the values its sentence needs. */
export interface DoseCautions {
  'raw-batter': Record<never, never>;
  dust: Record<never, never>;
  'capped-at-ceiling': { colourant: string; kind: ColourantKind; asked: number; ceiling: number };
  'mix-scaled': { percent: number };
  'whites-scaled': { percent: number };
  'near-ceiling': { colourant: string; percent: number };
  'coloured-lather': { colourant: string };
  staining: { colourant: string };
  brittle: Record<never, never>;
  'stick-blend-thickens': Record<never, never>;
  'froth-cup-only': Record<never, never>;
  'dish-test-first': { colourant: string };
  'dish-test-disagrees': { colourant: string; tested: Carrier; asked: Carrier };
  'fades-in-light': { colourant: string };
  'shifts-in-lye': { colourant: string };
  'dies-in-lye': { colourant: string };
  'lye-unknown': { colourant: string };
  bleeds: { colourant: string };
  'superfat-rises': { from: number; to: number };
  'lye-thins': { from: number; to: number };
  'typical-batter': Record<never, never>;
  'premix-strength-unknown': { colourant: string };
  'weigh-your-spoon': { colourant: string };
}

export type CautionId = keyof DoseCautions & string;
export type Caution = {
  [Id in CautionId]: { readonly id: Id; readonly values: DoseCautions[Id] };
}[CautionId];
