/**
 * How thick a pencil line is dusted, grams of loose powder to the square centimetre. Source: from memory, a line of mica
 * that just covers takes about 1/2 tsp on a loaf of 25 x 9 cm.
 */
export const LINE_GRAMS_PER_CM2 = { thin: 0.0015, usual: 0.003, thick: 0.006 } as const;
export type LineThickness = keyof typeof LINE_GRAMS_PER_CM2;

/** Beyond this the layers do not hold together any more, g/cm2: thick lines part (common practice). */
export const PARTING_GRAMS_PER_CM2 = 0.01;

/** Powder for lines dusted over an area, grams. */
export function lineGrams({
  areaCm2,
  lines,
  thickness,
}: {
  readonly areaCm2: number;
  readonly lines: number;
  readonly thickness: LineThickness;
}): number {
  return areaCm2 * lines * LINE_GRAMS_PER_CM2[thickness];
}
