import { isOil } from './amounts.ts';
import type { Words } from './words-of.ts';

const SHARE = String.raw`(?:half|a half|mitad|la mitad|\d{1,2}\s?%|\d\/\d|(?:a |one |un )?(?:third|quarter|tercio|cuarto)|the rest|rest|resto|el resto)`;
const NO_COLOUR = String.raw`(?!(?:olive|coconut|palm|lye|water|batter|soap|and|y|half|mitad|rest|resto|a|the|el|la|with|con|in|en)\b)`;
const PART = new RegExp(
  String.raw`\b(${SHARE})\s+(?:of it |de |in |en )?(${NO_COLOUR}\p{L}+(?: ${NO_COLOUR}\p{L}+)?)`,
  'gu',
);
const FIGURE: readonly (readonly [RegExp, string])[] = [
  [/half|mitad/u, '1/2'],
  [/third|tercio/u, '1/3'],
  [/quarter|cuarto/u, '1/4'],
];
/**
 * What a wish for a plan tells of its oils and colours where it gives the oils no amounts: their names, and the portions in
 * words that `/plan` reads. Pure.
 * @example planParts(wordsOf('plan 1 kg with coconut and olive, half blue half white'))
 *   // { oils: ['coconut', 'olive'], portions: '1/2 blue; 1/2 white' }
 */
export function planParts(words: Words): { readonly oils: readonly string[]; readonly portions?: string } {
  const oils = [...new Set(words.words.filter((word, at) => /^\p{L}/u.test(word) && isOil(words.words, at)))];
  const parts = [...words.text.matchAll(PART)].map(([, share = '', colour = '']) => {
    const figure = FIGURE.find(([said]) => said.test(share))?.[1] ?? (/rest/u.test(share) ? 'rest' : share);
    return `${figure} ${colour}`;
  });
  return parts.length > 1 ? { oils, portions: parts.join('; ') } : { oils };
}
