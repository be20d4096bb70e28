import { unbroken } from '../../../../over-lines.ts';
import type { Item } from '../items/item.ts';
import { isMeasure, isOil } from '../settling/parts.ts';
import { isHarmlessBesideOil } from './beside-oils.ts';

/** What somebody says who slipped, of what stands before it. */
export const SLIPPED = unbroken`
  (?:no|nope|nah|naw|wrong|mistake|typo|oops|whoops|ups|uy|sorry|perdon|mal|error|errata)
`;
/** Words that take back what was told before them: "no, …", "sorry, …", "nope". */
const TAKES_BACK = new RegExp(
  unbroken`
    ^(?:${SLIPPED}|noo+|digo|wait|
    hold on|hang on|espera|esperen|correction|actually)(?!\p{L})
  `,
  'u',
);
/** "Sorry for asking", "perdón por la molestia", "no thanks": of whoever reads, and of no weight. */
const COURTEOUS = new RegExp(
  unbroken`
    ^(?:for|about|to (?:ask|bother)|if (?:this|that|it|i)|in advance|i'?m (?:new|so new|a beginner)|
    my english|por|si|(?:la|el|las|los) (?!(?:otr|primer|segund|ultim)[oa])\p{L}+(?= ?(?:[;,.]|$))|que soy|
    es que soy|soy|mi espanol|thanks|thank you|gracias|worries|rush|hurry|hay prisa|pasa nada|se (?:nada|
    mucho)|entiendo|idea)(?!\p{L})
  `,
  'u',
);

const said = (items: readonly Item[]): string => items.map(({ text }) => text).join(' ');

/**
 * The words of a sentence that takes back what was told of a recipe before it, without telling what is right instead: "600 g olive,
 * 250 g coconut. No, the other one". How anybody words that has no end, so that whatever is no plain courtesy is asked for. Undefined
 * where there is none. Takes the items of a line. Pure.
 */
export function takenBackIn(items: readonly Item[]): string | undefined {
  const oil = items.findIndex(isOil);
  const amount = items.findIndex(isMeasure);
  if (oil === -1 || amount === -1) return undefined;
  const told = Math.max(oil, amount) + 1;
  for (let at = told; at < items.length; at += 1) {
    const item = items[at]!;
    if (!TAKES_BACK.test(item.text) || !opens(items, at)) continue;
    // "No quiero que queme": of a verb, and of nothing that was told.
    if (item.text === 'no' && items[at + 1]?.is !== 'mark') continue;
    const end = items.findIndex(({ text }, one) => one > at && text === ';');
    const behind = items.slice(at + 1, end === -1 ? items.length : end);
    // What puts an amount right is read where amounts are.
    if (behind.some(one => isMeasure(one) || isOil(one))) continue;
    const words = said(behind).replace(/^[,\s]+/u, '');
    if (words === '' || COURTEOUS.test(words)) continue;
    const strange = words.split(/[^\p{L}'’-]+/u).filter(word => word !== '' && !isHarmlessBesideOil(word));
    if (strange.length > 0) return `${item.text.replace(/,$/u, '')}, ${words}`;
  }
  return undefined;
}

/** Whether a clause opens there. */
const opens = (items: readonly Item[], at: number): boolean => {
  const before = items.slice(0, at).findLast(({ is }) => is !== 'joint' && is !== 'link');
  return before === undefined || before.is === 'mark';
};
