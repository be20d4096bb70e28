const SHARES: readonly (readonly [share: string, words: string])[] = [
  ['2/3', String.raw`two[- ]thirds|2\/3|dos tercios`],
  ['3/4', String.raw`three[- ]quarters|3\/4|tres cuartos`],
  ['1/3', String.raw`(?:an? |one[- ])?third|1\/3|un tercio|tercio`],
  ['1/4', String.raw`(?:an? |one[- ])?quarter|1\/4|un cuarto|la cuarta parte`],
  ['1/2', String.raw`half|1\/2|(?:la )?mitad|medi[oa]`],
];
/** What tells that a part that stands alone is one of the batter. */
const GETS =
  '(?:of (?:it|that|this) |de eso )?(?:gets?|goes|(?:will|to) (?:be|get|go)|is going|is (?:for|colou?red)|i want|want|lo quiero|la quiero|va a ser|van? con|lleva|se pinta|la pinto|lo pinto)';
const COLOURED =
  '(?:colou?r|colou?ring|tint|dye|pint(?:o|ar)|coloreo|colorear|tenir) (?:only |just |solo |nada mas |nomas )?';
const THAT = '(?:for|para|in|en) (?:that|this|esa|ese|cada|each) ';
/** "Color medio" tells a strength and no part. */
const alone = (words: string): string => words.replace('|medi[oa]', '');
const WHOLE = '(?:batter|batch|soap|loaf|pot|masa|mezcla|lote|jabon|olla)';

/**
 * The part of a batch that a question is about, `2/3` of "two thirds of the batter", where the whole is told elsewhere in
 * it; English or Spanish. Undefined where it is the whole.
 */
export function shareOfBatter(question: string): string | undefined {
  const plain = question.slice(0, 2000).normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return SHARES.find(([, words]) =>
    [
      `(?:${words}) (?:of |de |del )?(?:the |my |our |this |la |el |mi |un |una )*${WHOLE}`,
      `(?:${alone(words)}),? ${GETS}`,
      String.raw`${COLOURED}(?:a |one |the |un |una |la )?(?:${alone(words)})(?= (?:of (?:it|the|my|that)|de (?:la|el|eso)|with|con)(?!\p{L})|$|\s?[,.?])`,
      `${THAT}(?:${alone(words)})`,
    ].some(phrase => new RegExp(String.raw`(?<![\p{L}\d/])(?:${phrase})(?!\p{L})`, 'u').test(plain)),
  )?.[0];
}
