import { unbroken } from '../../../../../over-lines.ts';

const SUPERFAT =
  '(?:superfat\\p{L}*|sf|(?:sobre|super) ?(?:grasa|engrasado)|lye discount|descuento)(?: (?:de|of|at|al))?(?: ?\\d[\\d.,]* ?(?:%|percent|por ciento)?)?,?';
const ONLY = '(?:only|just|solo|solamente|nomas|unicamente)';
const THE = '(?: (?:the|my|el|la|los|las|mi))*';
/** What a superfat is of anyway. */
const OF_ALL =
  '(?:this|that|it|these|batch|recipe|esta|este|esto|tanda|receta|lote|soap|jabon|babies|skin|piel)';

/**
 * "30 % superfat on the coconut only": fat that stays free is of the whole pot; of one oil it is another figure, and a wish that nobody
 * here follows.
 */
export const SUPERFAT_OF_ONE: readonly RegExp[] = [
  new RegExp(
    unbroken`
      (?<!\p{L})${SUPERFAT} (?:on|in|from|over|en|sobre|del?|
      al)${THE} (?!${OF_ALL}(?!\p{L}))\p{L}+(?: (?!${OF_ALL})\p{L}+)? (?:only|alone|solo|sola|solamente|
      nomas|unicamente|nada mas|and not|but not|y no|pero no)(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    `(?<!\\p{L})${SUPERFAT} (?:(?:but|pero) )?${ONLY} (?:on|in|from|over|en|sobre|del?|al|for|para)${THE} (?!${OF_ALL}(?!\\p{L}))\\p{L}`,
    'u',
  ),
];
