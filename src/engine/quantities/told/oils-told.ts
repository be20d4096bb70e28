import { knownOil } from '../../batch/oils/find-oil.ts';
import { oilsOfBatch } from '../../batch/oils/lists/bare-grams.ts';
import { unbroken } from '../../over-lines.ts';
import { unlessRefused } from '../../refusal.ts';
import { amountText } from '../for-readers.ts';

const LONGEST = 200;
/** What the oils come to, told behind their list: "o sea 600", "so 700 in all"; or that it is not told. */
const TOTAL_LAST = new RegExp(
  unbroken`
    [\s,;.:(-]+(?:(?:so|that['’]?s|makes?|total(?:es)?|in all|altogether|o sea|osea|que son|son|en total|
    suma[nr]?|=)[\s,:]*)+(?:(\d[\d.,]*) ?(?:g|gr|grams?|gramos?)?|whatever (?:that|it) (?:adds up|comes) to|
    lo que (?:sumen|sume|d[eé]))(?: (?:in all|total|en total|altogether))?(?=[\s.)]*(?:\(|$))
  `,
  'iu',
);
const ROUNDING = 0.015;

/**
 * What the oils of a list come to, as an amount of oils: "400 de oliva y 200 de coco en gramos, o sea 600" is 600 g. Undefined where
 * there is no list of weighed oils, or where another sum is told than they come to. Pure.
 */
export function oilsTold(text: string): string | undefined {
  const isList = text.length <= LONGEST && /\d\D+\d/u.test(text);
  if (!isList || !(text.match(/\p{L}{3,}/gu) ?? []).some(word => knownOil(word) !== undefined))
    return undefined;
  const total = TOTAL_LAST.exec(text);
  const list = total ? `${text.slice(0, total.index)}${text.slice(total.index + total[0].length)}` : text;
  const grams = gramsOf(list);
  const told = total?.[1] === undefined ? grams : Number(total[1].replace(',', '.'));
  if (grams === undefined || told === undefined || Math.abs(told - grams) > ROUNDING * grams)
    return undefined;
  return amountText(grams, { ofOils: true });
}

/** Grams of two weighed oils and more together; undefined where they are none. */
function gramsOf(list: string): number | undefined {
  const told = unlessRefused(() => oilsOfBatch(list.replace(/\((g|grams?|gramos?)\)/giu, 'in grams')));
  return told && told.shares.length > 1 ? told.totalGrams : undefined;
}
