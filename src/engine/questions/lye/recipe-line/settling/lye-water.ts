import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/** "30 % w/w": a percent by weight is what every percent near lye is ("w/" was read as "with"). */
const BY_MASS = /(\d ?%) (?:with w(?:ith)?|p ?\/ ?p|m ?\/ ?m|by (?:weight|mass)|en (?:peso|masa))(?!\p{L})/gu;
/** "Lye conc. 40%": the mark of what was cut short parts nothing. */
const SHORT_STRENGTH = /((?<!\p{L})conc) ?[.;] ?(?=\d)/gu;
/** "Lye water 30 %", "33 % lye water": how strong it is, and no water by the oils. Weaker or stronger than lye water ever is, it is asked. */
const LYE_WATER = new RegExp(
  unbroken`
    (?<![\p{L}\d])(?:${LYE} water|agua (?:de|con) ${LYE})(?: (?:at|of|is|al|a|de))* (2\d|3\d|4\d|50) ?%|
    (?<![\p{L}\d.,])(2\d|3\d|4\d|50) ?% (?:with )?${LYE} water(?!\p{L})
  `,
  'gu',
);

/**
 * A line in which the strength of lye water is told as such: "lye water 30 %" is no water of 30 % of the oils. Takes what `plainWords` gives. Pure.
 * @example withLyeWater('lye water 30 % by weight') // ' ; 30% lye concentration ; '
 */
export const withLyeWater = (line: string): string =>
  line
    .replace(BY_MASS, '$1')
    .replace(SHORT_STRENGTH, '$1 ')
    .replace(LYE_WATER, (_, one?: string, other?: string) => ` ; ${one ?? other}% lye concentration ; `);
