/** Grams of NaOH a gram of oil takes up. Middles of the ranges of saponification values in the Codex Alimentarius, standards 33
 * (olive, 184 to 196), 210 (coconut, 248 to 265) and 211 (lard, 192 to 203); from memory. From KOH to NaOH by their molar masses. */
const TAKES = {
  olive: (190 / 1000 / 56.106) * 39.997,
  coconut: (256.5 / 1000 / 56.106) * 39.997,
  lard: (197.5 / 1000 / 56.106) * 39.997,
};

/** Lye for a recipe in grams, less the superfat in percent. */
export const lyeFor = (oils: Partial<Record<keyof typeof TAKES, number>>, superfat: number): number =>
  (1 - superfat / 100) *
  Object.entries(oils).reduce((sum, [oil, grams]) => sum + TAKES[oil as keyof typeof TAKES] * grams, 0);
