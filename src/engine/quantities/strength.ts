/** How deep a colour is wanted. Fractions are of the full dose of that colourant. */
export type StrengthName = 'tint' | 'pastel' | 'medium' | 'full';

export type Strength =
  | { readonly by: 'name'; readonly name: StrengthName }
  | { readonly by: 'share'; readonly ofFull: number }
  | { readonly by: 'cup'; readonly tspPerCup: number }
  | { readonly by: 'pound-of-oils'; readonly tspPerPound: number };

/** Share of the full dose that each named strength takes (common practice). */
export const STRENGTH_SHARES: Readonly<Record<StrengthName, number>> = {
  tint: 1 / 8,
  pastel: 1 / 4,
  medium: 1 / 2,
  full: 1,
};
