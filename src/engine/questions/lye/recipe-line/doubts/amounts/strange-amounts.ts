import type { Item } from '../../items/item.ts';
import { isName } from '../../settling/parts.ts';

/** "Oat oil", "aceite de miel": an oil of that name, which nobody here knows, and no oats. */
export function oilOfNoFat(items: readonly Item[]): string | undefined {
  for (const [at, item] of items.entries()) {
    if (!isName(item) || item.known !== 'other') continue;
    const [behind, link, before] = [items[at + 1], items[at - 1], items[at - 2]];
    // "Coconut cream": of the fruit, and no oil.
    if (isName(link) && link.known === 'oil') return `${link.text} ${item.text}`;
    if (isName(behind) && /^(?:oil|fat)$/u.test(behind.text)) return `${item.text} ${behind.text}`;
    if (link?.text === 'de' && isName(before) && /^(?:aceite|grasa)$/u.test(before.text))
      return `${before.text} de ${item.text}`;
  }
  return undefined;
}

const SPOON = /(?:tbsps?|tsps?|spoons?|cdt?as?|cucharad(?:it)?as?|cups?|tazas?)$/u;
/** "Another spoon of lye": how much that weighs nobody here knows. */
export function spoonOfLye(content: readonly Item[]): string | undefined {
  return content.some(item => isName(item) && item.known === 'lye')
    ? content.find(item => item.is === 'amount' && item.unit === 'other' && SPOON.test(item.text))?.text
    : undefined;
}

/** No scale shows a fraction of two large figures but in sixteenths: "300/200 g" are two weights, of which nobody told whose. */
const TWO_WEIGHTS = /^\d{2,} ?\/ ?(?!(?:16|32|64)(?!\d))\d{2,}/u;
/** Two weights that stand as one, "300/200 g olive". */
export const weightsAsOne = (items: readonly Item[]): string | undefined =>
  items.find(({ is, text }) => is === 'amount' && TWO_WEIGHTS.test(text))?.text;
