import { unbroken } from '../../over-lines.ts';
import { isAnyOil } from '../../text/amounts/stop-words.ts';
import { isOil } from '../found/amounts.ts';
import type { Words } from '../found/words-of.ts';

const MASS = '(?:k?g|gr|grs|gms?|grams?|gramos?|kgs|kilos?)';
const FIGURE = String.raw`(?<![\d.,/x])(\d+(?:[.,]\d+)?) ?(${MASS}(?!\p{L}))?(?![\d.,/]\d|\p{L}|%)`;
const EACH = new RegExp(FIGURE, 'gu');
/** What stands before what the figures come to. */
const TOTAL = new RegExp(
  unbroken`
    (?<!\p{L})(?:o sea|osea|so|that(?:'s| is)|thats|which is|total|en total|suman?|son|makes?|making|
    comes? to|altogether|=)(?: (?:,|que|that(?:'s| is)|son|en total|in all|total|makes?|is|es))* (?:,|
    :)? ?${FIGURE}(?: (?:in all|in total|en total|altogether|total|todo|all told))*[\s.!;,]*$
  `,
  'u',
);
/** "450 + 250 + 100": each figure with a plus between. */
const PLUS = new RegExp(String.raw`${FIGURE}(?: ?(?:\+|plus|mas) ${FIGURE})+`, 'u');
const LEAST_G = 20;
const LEAST_SUM_G = 100;
const ROUNDING = 0.015;

const gramsOf = (figure: string, unit: string | undefined): number =>
  Number(figure.replace(',', '.')) * (/^k/u.test(unit ?? '') ? 1000 : 1);
const figuresIn = (text: string): readonly number[] =>
  [...text.matchAll(EACH)].map(([, figure, unit]) => gramsOf(figure!, unit));

/**
 * The grams that weights of oils come to where they are added by a plus or told beside their sum: "800 g of oil and 200 of lard, so
 * 1000". Undefined where the figures do not come to what is told. Pure.
 */
export function sumOfOilsIn({ text, words }: Words): number | undefined {
  const isOfOils = words.some((word, at) => isAnyOil(word) || isOil(words, at));
  if (!isOfOils || /[%]|(?<!\p{L})(?:lye|naoh|koh|sosa|soda|water|agua)(?!\p{L})/u.test(text))
    return undefined;
  const total = TOTAL.exec(text);
  const plus = total ? undefined : PLUS.exec(text)?.[0];
  const parts = figuresIn(total ? text.slice(0, total.index) : (plus ?? ''));
  const rest = plus === undefined ? [] : figuresIn(text.replace(plus, ' '));
  const sum = parts.reduce((all, one) => all + one, 0);
  if (parts.length < 2 || rest.length > 0 || sum < LEAST_SUM_G || parts.some(one => one < LEAST_G))
    return undefined;
  const told = total ? gramsOf(total[1]!, total[2]) : sum;
  return Math.abs(told - sum) <= ROUNDING * sum ? told : undefined;
}
