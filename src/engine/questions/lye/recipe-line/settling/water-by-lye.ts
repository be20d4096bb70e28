import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

const FIGURE = String.raw`\d(?:[.,]\d+)?`;
/** What dissolves lye: water, or what stands in for it. */
const LIQUID = unbroken`
  (?:water|agua|liquids?|liquido|(?:frozen |goats? |goat's |coconut |oat |flat |cold )*(?:milk|beer|stout|ale|tea|coffee)|(?:leche|
  cerveza|te|cafe|infusion)(?: (?:de (?:cabra|vaca|coco|avena|oveja)|negra|rubia|sin gas|congelad[oa]|fri[oa]))*)
`;
const THE_LYE = `(?:the |la |el |my |mi )?(?:weight of (?:the )?|peso de (?:la )?)?${LYE}(?: weight)?`;

/** "Agua al doble de la sosa", "agua x2", "liquid twice the lye". */
const TWICE_THE_LYE = new RegExp(
  unbroken`
    (?<!\p{L})${LIQUID}(?: (?:is|at|va|al|es|total|all|altogether|in all))*,? (?:(?:el |al )?doble|twice|double|x ?2|2 ?x)(?: (?:de |of |que |as
    |que de )?${THE_LYE})?(?![\p{L}\d])
  `,
  'gu',
);
/** "2.2 x the lye", "2,5 veces la sosa", "twice the lye": in a line that has its liquid elsewhere. */
const TIMES_THE_LYE = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:(?:at|a|al|de) )?(?<times>${FIGURE}) ?(?:x|times|veces)(?: (?:of|de|que|que de|
    as much as))? (?:${THE_LYE}|(?:the |my )?alkali)(?: by (?:mass|weight))?(?![\p{L}\d])
  `,
  'gu',
);
/** "Agua el triple que la potasa", "water three times the alkali by mass". */
const TRIPLE_THE_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:el |al )?triple|thrice|three times)(?: (?:of|de|que|q|as much as))* (?:${THE_LYE}|
    (?:the |my )?alkali)(?:(?: by (?:mass|weight)| en peso))?(?![\p{L}\d])
  `,
  'gu',
);
const DOUBLE_THE_LYE = new RegExp(
  `(?<!\\p{L})(?:(?:el |al )?doble|twice|double)(?: (?:of|de|que|que de|as much as))? ${THE_LYE}(?![\\p{L}\\d])`,
  'gu',
);
const HAS_LIQUID = new RegExp(`(?<!\\p{L})${LIQUID}(?!\\p{L})`, 'u');
/** "2 parts water to 1 lye": a ratio, and the one no superfat. */
const PARTS_OF_WATER = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(${FIGURE}) (?:parts? |partes? )?(?:of |de )?${LIQUID} (?:to|a|por|for|per|x) (?:each |every |cada )?(\d) (?:parts? |
    partes? )?(?:of |de )?${LYE}(?![\p{L}\d])
  `,
  'u',
);
/** "Lye at 1 part to 2 parts water". */
const PARTS_OF_LYE = new RegExp(
  unbroken`
    (?<!\p{L})${LYE}(?: (?:at|a|is|es|en|in))* (\d) (?:parts? |partes? )?(?:to|a|por|for|per|x|:) ?(${FIGURE}) (?:parts? |partes? )?(?:of |de )?
    ${LIQUID}(?![\p{L}\d])|(?<![\p{L}\d.,])(\d) (?:parts? |partes? )?(?:of |de )?${LYE} (?:to|a|por|for|per|x) (${FIGURE}) (?:parts? |partes? )?
    (?:of |de )?${LIQUID}(?![\p{L}\d])
  `,
  'u',
);
/** "Water at 2.2 to 1", "agua a 1,8 por cada parte de soda", "water at two parts to one of lye". */
const WATER_TO = new RegExp(
  unbroken`
    (?<!\p{L})(?:water|agua|liquids?|liquido)(?: (?:is|at|va|a|al|es|i'?ll do at|total))* (${FIGURE}) (?:parts? |partes? )?(?:to|a|por|
    for)(?: (?:each|every|cada))? (?:(\d+(?:[.,]\d)?)(?: parts?| partes?)?|parts?|partes?)(?: (?:of|de) (?:the |la )?${LYE})?(?:,? (?:all up|
    altogether|in all|en total))?(?![\p{L}\d])
  `,
  'gu',
);
/** "Water as 33% of the oils", "agua al 30% del peso de la manteca". */
const WATER_OF_OILS = new RegExp(
  unbroken`
    (?<!\p{L})(?:full )?(?:water|agua|liquido)(?: (?:is|as|at|al|el|es|va|so|un|an?))* (\d\d(?:[.,]\d)?) ?(?:%|percent|por ?ciento) (?:of|de|del|on|
    sobre)(?: (?:the|los|el|la|las|my|peso|weight|total|of|de))*(?: (?:oils?|fats?|aceites?|grasas?|manteca|lard|tallow|sebo))?(?:' weight)?
    (?![\p{L}\d])
  `,
  'gu',
);
/** "Concentración de la lejía 33 %", "lye strength 33". */
const STRENGTH_OF_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(?:concentracion|concentration|strength) (?:de|of) (?:la |the )?(?:${LYE})(?: (?:al|del?|at|of|is|es))* ?:? ?(\d\d(?:[.,]\d)?) ?(?:%|
    percent|por ?ciento)
  `,
  'gu',
);

/** A line in which water that is told by the lye stands as a ratio, "water 2:1", or as a share. Takes what `plainWords` gave. Pure. */
export const withWaterByLye = (line: string): string => {
  const told = line
    .replace(STRENGTH_OF_LYE, ' lye concentration $1% ')
    .replace(PARTS_OF_WATER, 'water $1:$2')
    .replace(
      PARTS_OF_LYE,
      (_, one?: string, other?: string, lye?: string, water?: string) =>
        `water ${other ?? water}:${one ?? lye}`,
    )
    .replace(TWICE_THE_LYE, 'water 2:1')
    .replace(WATER_OF_OILS, 'water $1% of oils')
    .replace(WATER_TO, (_, water: string, lye = '1') => `water ${water}:${lye}`);
  if (!HAS_LIQUID.test(told)) return told;
  return told
    .replace(TIMES_THE_LYE, 'water $<times>:1')
    .replace(DOUBLE_THE_LYE, 'water 2:1')
    .replace(TRIPLE_THE_LYE, 'water 3:1');
};
