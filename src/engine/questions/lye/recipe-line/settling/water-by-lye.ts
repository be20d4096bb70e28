import { LYE } from '../../amounts/words.ts';

/** "Agua al doble de la sosa", "agua x2". */
const TWICE_THE_LYE = new RegExp(
  `(?<!\\p{L})(?:water|agua) (?:is |at |va )?(?:(?:el |al )?doble|twice|double|x ?2|2 ?x)(?: (?:de |of |que |as )?(?:the |la |el )?${LYE})?(?![\\p{L}\\d])`,
  'gu',
);
/** "2 parts water to 1 lye": a ratio, and the one no superfat. */
const PARTS_OF_WATER = new RegExp(
  `(?<![\\p{L}\\d.,])(\\d) (?:parts? |partes? )?(?:of |de )?(?:water|agua) (?:to|a|por|for|per|x) (\\d) (?:parts? |partes? )?(?:of |de )?${LYE}(?![\\p{L}\\d])`,
  'u',
);
const WATER_TO = /(?<=(?:water|agua) )(\d+(?:[.,]\d)?) (?:to|a) (\d+(?:[.,]\d)?)(?!\d)/u;

/** A line in which water that is told by the lye stands as a ratio, "water 2:1". Takes what `plainWords` gave. Pure. */
export const withWaterByLye = (line: string): string =>
  line.replace(TWICE_THE_LYE, 'water 2:1').replace(PARTS_OF_WATER, 'water $1:$2').replace(WATER_TO, '$1:$2');
