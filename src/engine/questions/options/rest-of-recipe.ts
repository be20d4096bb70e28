import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { figureText } from '../../quantities/for-readers.ts';
import { shareAt } from '../../text/amounts/shares/share-at.ts';

/** "Castor the last 10", "the last quarter coconut". */
export const THE_LAST =
  /(?<!\p{L})(?:the |las? |los |el )?(?:last|final|remaining|[uú]ltim[oa]s?) (?=\d|(?:quarter|third|fifth|half|cuart[oa]|terci|quint[oa]|mitad))/giu;
/** Units of mass; a pattern. */
export const MASS = '(?:kgs?|kilos?|lbs?|pounds?|libras?|g|grams?|gramos?|oz|ounces?|onzas?)';
/** "The rest of the kilo was olive". */
export const REST_OF = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the|el|lo) )?(?:rest|remainder|resto|dem[aá]s) (?:of|del?) (?:(?:the|an?|el|la|un|
    una) )?((?:\d[\d.,]* ?)?${MASS})(?!\p{L})(?:,? (?:was|is|were|es|era|eran|son|fue|de|of))*
  `,
  'giu',
);
/** "Lard the rest to make 700", "rest olive up to 1 kg", "manteca lo que falte para un kilo": what is left of a whole. */
const REST_TO = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:and|y) )?(?:(?:the |el )?(?:rest|remainder|resto)(?: (?:is|of|de|es|
    in))* (\p{L}+(?: \p{L}+)??)|(\p{L}+(?: \p{L}+)?),? (?:(?:the|el) (?:rest|remainder|resto)|
    lo que (?:falte|falta|quede|queda|sobre)))(?: (?:to|up|make|making|it|get|reach|until|para|hasta|llegar|
    completar|hacer|los|un|a|de))* (\d[\d.,]*)? ?(${MASS})?(?: (?:in all|total|altogether|
    en total))?(?=\s*(?:[,.;)]|$))
  `,
  'iu',
);

/** A batch of fewer may be told in ounces. */
const LEAST_BARE_G = 300;
const UNIT = new RegExp(String.raw`\d ?(?:${MASS}|%)(?!\p{L})`, 'iu');
/** The rest of a told whole, in the words that the recipes' grammar has for it. */
export const withRestTo = (text: string): string =>
  text.replace(REST_TO, (all, ahead?: string, behind?: string, figure?: string, unit = '') => {
    const name = ahead ?? behind ?? '';
    if (knownOil(name) === undefined || (figure === undefined && unit === '')) return all;
    const isBare = unit === '' && !UNIT.test(text) && Number(figure) >= LEAST_BARE_G;
    return `; total ${figure ?? 1}${isBare ? ' g' : unit === '' ? '' : ` ${unit}`} ; the rest ${name}`;
  });

const NAME = String.raw`(\p{L}+(?: \p{L}+){0,2}?)`;
/** "Lo demás coco y aguacate por partes iguales": what is left, parted evenly. */
const REST_EVENLY = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the|el|lo) )?(?:rest|remainder|resto|dem[aá]s|otro|other half|otra mitad)(?: (?:is|es|
    of it|in|de|en|split|between|entre))* ${NAME} (?:and|y|&|n) ${NAME},? (?:(?:por|a|en) (?:partes iguales|
    mitades|igual|medias)|(?:in )?equal parts|half and half|equally|evenly|split even(?:ly)?|
    mitad y mitad)[\s.]*$
  `,
  'iu',
);
const HEAD = /(?<![\p{L}\d.,/])(?=\p{L}|\d)/gu;

/** The shares that a text tells, as percents where they stand. */
function inPercents(text: string): { readonly said: string; readonly sum: number } {
  let said = '';
  let sum = 0;
  let end = 0;
  for (const { index } of text.matchAll(HEAD)) {
    if (index < end) continue;
    const share = shareAt(text.slice(index));
    const figure = /^([\d.]+)%$/u.exec(share?.canonical ?? '')?.[1];
    if (share === undefined || figure === undefined) continue;
    said += `${text.slice(end, index)}${share.canonical}`;
    sum += Number(figure);
    end = index + share.length;
  }
  return { said: said + text.slice(end), sum };
}

/** A list with the rest that two oils share in equal parts as percents of each. Pure. */
export function withRestParted(text: string): string {
  const match = REST_EVENLY.exec(text);
  const names = match?.slice(1, 3) as [string, string] | undefined;
  if (!match || !names?.every(name => knownOil(name) !== undefined)) return text;
  const { said, sum } = inPercents(text.slice(0, match.index).replace(/[\s,]+(?:and|y)?\s*$/iu, ''));
  if (!(sum > 0 && sum < 100)) return text;
  return [said, ...names.map(name => `${figureText((100 - sum) / 2, 4)}% ${name}`)].join(', ');
}
