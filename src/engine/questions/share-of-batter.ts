const SHARES: readonly (readonly [share: string, words: string])[] = [
  ['2/3', String.raw`two[- ]thirds|2\/3|dos tercios`],
  ['3/4', String.raw`three[- ]quarters|3\/4|tres cuartos`],
  ['1/3', String.raw`(?:an? |one[- ])?third|1\/3|un tercio|tercio`],
  ['1/4', String.raw`(?:an? |one[- ])?quarter|1\/4|un cuarto|la cuarta parte`],
  ['1/2', String.raw`half|1\/2|(?:la )?mitad|medi[oa]`],
];
/** What tells that a part that stands alone is one of the batter. */
const GETS =
  '(?:of (?:it|that|this|those|them|which) |de (?:eso|esto|ella|ellos) )?(?:gets?|goes|wants?|needs?|takes?|(?:will|to|is to|has to|should|needs to|must) (?:be|get|go)|is going|is (?:for|colou?red)|i want|want|lo quiero|la quiero|va a ser|van? con|lleva|quiere|necesita|se pinta|la pinto|lo pinto)';
const COLOURED =
  '(?:colou?r|colou?ring|tint|dye|pint(?:o|ar)|coloreo|colorear|tenir) (?:only |just |solo |nada mas |nomas )?';
const THAT = '(?:for|para|in|en) (?:that|this|esa|ese|cada|each) ';
/** "Color medio" tells a strength and no part. */
const alone = (words: string): string => words.replace('|medi[oa]', '');
const WHOLE = '(?:batter|batch|soap|loaf|pot|masa|mezcla|lote|jabon|olla)';

/** "Split in 2 equal, one half charcoal", "dividida en tres, una con carbón". */
const EVEN_PARTS =
  /(?:split|divided?|parted|dividid[oa]|repartid[oa]|partid[oa]|la divido|lo divido) (?:(?:in|into|en|by) )?(\d(?! ?(?:k?g|ml|oz|lb|l)(?!\p{L}))|two|three|four|five|dos|tres|cuatro|cinco)(?!\p{L}|\d)/u;
const ONE_OF_THEM =
  /(?<!\p{L})(?:one (?:half|part|third|quarter|portion|jug|pot|of (?:them|'?em|those|the))|una (?:mitad|parte|porcion|de ellas)|un (?:tercio|cuarto)|one (?:is|gets|goes|will)|una (?:va|lleva|con))(?!\p{L})/u;
const FIGURES: ReadonlyMap<string, string> = new Map([
  ['two', '2'],
  ['three', '3'],
  ['four', '4'],
  ['five', '5'],
  ['dos', '2'],
  ['tres', '3'],
  ['cuatro', '4'],
  ['cinco', '5'],
]);

/** "The half is about 3 cups": what is told is the part. */
const PART_MEASURED =
  /(?<!\p{L})(?:half|third|quarter|part|portion|mitad|tercio|cuarto|parte|porcion)(?: of it)? (?:is|are|was|comes to|weighs|makes|es|son|pesa|sale|mide)(?: (?:about|abt|around|roughly|some|like|como|unos|unas|casi|mas o menos))* (?=\d|(?:an?|one|two|three|four|five|una?|dos|tres|cuatro|cinco)(?!\p{L}))/u;

/**
 * The part of a batch that a question is about, `2/3` of "two thirds of the batter", where the whole is told elsewhere in
 * it; English or Spanish. Undefined where it is the whole.
 */
export function shareOfBatter(question: string): string | undefined {
  const plain = question.slice(0, 2000).normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  if (PART_MEASURED.test(plain)) return undefined;
  const parts = EVEN_PARTS.exec(plain)?.[1];
  if (parts !== undefined && ONE_OF_THEM.test(plain)) return `1/${FIGURES.get(parts) ?? parts}`;
  return SHARES.find(([, words]) =>
    [
      `(?:${words}) (?:of |de |del )?(?:the |my |our |this |la |el |mi |un |una )*${WHOLE}`,
      `(?:${alone(words)}),? ${GETS}`,
      String.raw`${COLOURED}(?:a |one |the |un |una |la )?(?:${alone(words)})(?= (?:of (?:it|the|my|that)|de (?:la|el|eso)|with|con)(?!\p{L})|$|\s?[,.?])`,
      `${THAT}(?:${alone(words)})`,
      String.raw`(?:${words}) (?:of|de) (?:the |my |los |mis |these |estos )?\d[\d.,]* ?(?:k?g|gr|grams?|gramos?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|ml|l|lit(?:er|re)s?|litros?|cups?|tazas?)`,
    ].some(phrase => new RegExp(String.raw`(?<![\p{L}\d/])(?:${phrase})(?!\p{L})`, 'u').test(plain)),
  )?.[0];
}
