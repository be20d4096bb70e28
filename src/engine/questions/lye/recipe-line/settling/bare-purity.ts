import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/** "Mine is 99 pure", "KOH 90 pure": behind the lye or what it comes in, and never before an oil. */
const BARE_PURITY = new RegExp(
  unbroken`
    (?<=(?<!\p{L})(?:${LYE}|mine|it|tub|bag|label|bote|bolsa|etiqueta),?(?: (?:is|it['’]?s|says|at|of|es|dice|del|de|al|mine))* (?:[89]\d|100)) (?=(?:pure|
    pur[ao]|(?:de )?pureza|purity)(?= ?(?:[;,.]|$)))
  `,
  'gu',
);

/** A line in which a bare purity is told as a percent. Takes what `plainWords` gives. Pure. */
export const withPurityTold = (line: string): string => line.replace(BARE_PURITY, '% ');
