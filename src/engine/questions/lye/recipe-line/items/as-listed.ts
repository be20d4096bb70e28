import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { figureText } from '../../../../quantities/for-readers.ts';
import { LYE } from '../../amounts/words.ts';

const MASS = String.raw`\d[\d.,]* ?(?:g|gr|gramos|grams?|kg|kilos?|oz|onzas?|ounces?|lbs?|pounds?|libras?)`;
/** "300/300/300 g olive, coconut, palm": as many weights as names. */
const SLASHED = new RegExp(
  unbroken`
    (?<![\d/.,])(\d{2,4}(?: ?\/ ?\d{2,4}){1,5}) ?(g|gr|gramos|grams?|oz)? (?:of |
    de )?((?:\p{L}+ ?){1,3}(?:(?:,| and| y|\/)+ ?(?:\p{L}+ ?){1,3}){1,5})(?= ?(?:[;,]|$))
  `,
  'gu',
);
function asPairs(whole: string, figures: string, unit = 'g', names = ''): string {
  const weights = figures.split('/').map(one => one.trim());
  const oils = names
    .split(/,| and | y |\//u)
    .map(one => one.trim())
    .filter(one => one !== '');
  const isHundred = Math.abs(weights.reduce((sum, one) => sum + Number(one), 0) - 100) <= 1;
  if (isHundred || oils.length !== weights.length || oils.some(oil => knownOil(oil) === undefined))
    return whole;
  return oils.map((oil, at) => `${weights[at]} ${unit} ${oil}`).join(', ');
}
/** "4 blocks of lard at 250 g each": what they weigh together. */
const EACH = new RegExp(
  unbroken`
    (?<![\d.,])(\d{1,2}) (?:blocks?|bars?|packs?|packets?|tubs?|tins?|jars?|bottles?|sticks?|slabs?|bricks?|
    bags?|bloques?|barras?|paquetes?|botes?|latas?|frascos?|botellas?|tarros?|bolsas?|pastillas?) (?:of|
    de) ((?:aceite de |manteca de )?\p{L}+(?: (?:oil|butter|de \p{L}+))?),? (?:at|of|de) (\d[\d.,]*) ?(g|gr|
    gramos|grams?|oz|kg)(?: (?:each|apiece|a piece|cada un[oa]|c\/u))(?!\p{L})
  `,
  'gu',
);
/** "A 500 g tub of coconut": so much of it. */
const TUB = new RegExp(
  unbroken`
    (?<=(?:^|[;,]|and|y|plus|mas) )(?:an? |one |un |una )?(\d[\d.,]* ?(?:g|gr|gramos|grams?|oz|
    kg)) (?:block|tub|tin|jar|bottle|pack|packet|bag|bloque|bote|lata|frasco|botella|paquete|
    tarro) (?=(?:of|de) )
  `,
  'gu',
);
/** "Que son 500 g redondos", "which makes 500 g": the sum of what was told. */
const SUM = new RegExp(
  unbroken`
    ,? ?(?:que|which|so (?:that|it)|y|and)?(?: (?:all|todo|in all|en total))? (?:son|suman|hacen|dan|makes?|
    comes? to|is|are|adds? up to|totals?) (${MASS}) (?:redondos|justos|exactos|clavados|on the nose|exactly|
    dead|flat|en total|in total|in all)(?= ?(?:[;,]|$))
  `,
  'gu',
);
/** "Sosa p/ 1000g". */
const FOR = new RegExp(`(?<=(?<!\\p{L})(?:${LYE}|soda|agua|water|lye)) ?p\\/ ?`, 'gu');
/** "Water:lye 2:1", "relación agua/sosa 2:1", "agua 1,7 por cada 1 de sosa", "water at 1.8 parts to 1 of lye". */
const RATIO_NAMED = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:ratio|relacion|proporcion)(?: (?:of|de))? ?)?(?:water|agua) ?(?:[:/]|to|a) ?(?:${LYE}|
    soda)(?: (?:ratio|relacion|of|de))* ?:? ?(?=\d[\d.,]* ?: ?\d)
  `,
  'gu',
);
const RATIO_TOLD = new RegExp(
  unbroken`
    (?<!\p{L})(water|agua)(?: (?:is|at|va|de|a|en))* (\d(?:[.,]\d{1,2})?) ?(?:parts?|partes?)? ?(?:to|por|
    for|a)(?: (?:every|each|cada))? (?:1(?: parts?| partes?)?|(?<=(?:every|each|cada) )(?:parts?|
    partes?)) (?:of |de )?(?:the |la )?(?:${LYE}|soda)(?!\p{L})
  `,
  'gu',
);
const TIMES_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(water|agua)(?: (?:is|at|va|de|a))* (?:(\d(?:[.,]\d{1,2})?)|tres|three) (?:times|veces|
    x) (?:the |la |el )?(?:weight of (?:the )?|peso de (?:la )?)?(?:${LYE}|soda)(?!\p{L})
  `,
  'gu',
);

/** "Sg 6% conc 32%": the first percent is of no strength. */
const STRENGTH_BEHIND =
  /(?<=\d ?%) ?(?=(?:conc|concentracion|concentration|strength)(?: (?:of|de|al|at|del))? ?:? ?\d)/gu;
/** "Manteca cerdo": as labels and lists have it. */
const ANIMAL_FAT =
  /(?<!\p{L})(manteca|grasa|sebo|unto) (?=(?:cerdo|puerco|chancho|cochino|res|vaca|vacuno|cordero|pato|ganso)(?!\p{L}))/gu;
/** "Queda: oliva 650 g", behind what was put right. */
const STANDS_SO = new RegExp(
  unbroken`
    (?<=(?:rectifico|corrijo|correccion|donde dije|me equivoque|perdon|digo)(?!\p{L}).*[;,] ?)(?:(?:asi que|
    entonces|y) )?(?:queda|quedan|quedaria)(?: asi)? ?:? ?(?=(?:\p{L}+ ){1,3}\d|\d)
  `,
  'gu',
);

/** A line whose lists and ratios are told as the readers behind take them. Takes what `plainWords` gives with its clauses. Pure. */
export const asListed = (plain: string): string =>
  plain
    .replace(SLASHED, asPairs)
    .replace(EACH, (whole, many: string, oil: string, figure: string, unit: string) =>
      knownOil(oil) === undefined
        ? whole
        : `${figureText(Number(many) * Number(figure.replace(',', '.')))} ${unit} ${oil}`,
    )
    .replace(TUB, '$1 ')
    .replace(SUM, (whole, mass: string) => (isSumOf(plain, mass) ? ' ; ' : whole))
    .replace(FOR, ' para ')
    .replace(STRENGTH_BEHIND, ' ; ')
    .replace(ANIMAL_FAT, '$1 de ')
    .replace(STANDS_SO, '')
    .replace(RATIO_NAMED, 'water ')
    .replace(RATIO_TOLD, 'water $2:1')
    .replace(TIMES_LYE, (_, __, times?: string) => `water ${times ?? 3}:1`);

/** Whether a weight is the sum of the others of its unit. */
function isSumOf(plain: string, mass: string): boolean {
  const [, figure = '', unit = ''] = /^(\d[\d.,]*) ?(\p{L}+)$/u.exec(mass) ?? [];
  const all = [...plain.matchAll(new RegExp(`(?<![\\d.,])(\\d[\\d.,]*) ?${unit}(?!\\p{L})`, 'gu'))].map(
    ([, one]) => Number(one!.replace(',', '.')),
  );
  const sum = all.reduce((total, one) => total + one, 0);
  return Math.abs(sum - 2 * Number(figure.replace(',', '.'))) < 0.5;
}
