import { hydroxideDemand, hydroxideIn } from '../../../batch/lye/lye.ts';
import { knownOil } from '../../../batch/oils/find-oil.ts';
import { OILS } from '../../../batch/oils/index.ts';
import type { Oil } from '../../../batch/oils/oil.ts';
import { OUNCE_G, POUND_G } from '../../../quantities/units.ts';
import { prepared } from '../amounts/prepared.ts';
import { POTASSIUM, plainWords } from '../amounts/words.ts';
import type { Amount, Item } from '../recipe-line/items/item.ts';
import { itemsOf } from '../recipe-line/items/items.ts';
import { fixedIn } from '../recipe-line/settling/fixed-figures.ts';
import { isMeasure, isName, isOil, partsOf } from '../recipe-line/settling/parts.ts';

const GRAMS: Readonly<Partial<Record<NonNullable<Amount['unit']>, number>>> = {
  g: 1,
  kg: 1000,
  oz: OUNCE_G,
  lb: POUND_G,
};
/** The weakest that lye for soap is sold (common practice, no source): what it is too much at, it is at any purity. */
const WEAKEST = { NaOH: 0.95, KOH: 0.85 } as const;
const HUNGRIEST: Oil = OILS.reduce((most, oil) =>
  oil.saponification.high > most.saponification.high ? oil : most,
);

const grams = (item: Item): number | undefined => {
  if (item.is !== 'amount') return undefined;
  return item.unit === undefined ? item.figure : item.figure * (GRAMS[item.unit] ?? Number.NaN);
};

/**
 * Lye, grams, that was weighed in a question whose recipe is not clear, where it is more than all the oils named in it take, each of
 * them counted with every weight that stands with it: whichever of them is in the pot, it is too much. Undefined where that is not sure:
 * an oil without a weight, a share, two weights of lye. Pure.
 */
export function lyeBeyondAllOils(question: string): number | undefined {
  const parts = partsOf(itemsOf(fixedIn(prepared(question)).rest));
  const items = parts.flatMap(part => part.items);
  const isSure = items.every(
    item =>
      !isMeasure(item) || (item.is === 'amount' && (item.unit === 'other' || !Number.isNaN(grams(item)))),
  );
  if (!isSure || items.some(({ is }) => is === 'each' || is === 'even' || is === 'alike' || is === 'times'))
    return undefined;
  const lyes: number[] = [];
  const fats: { oil: Oil; grams: number }[] = [];
  const named = new Set<Oil>();
  const weighed = new Set<Oil>();
  for (const { items: said } of parts) {
    const masses = said.flatMap(item =>
      item.is === 'amount' && item.unit !== 'other' ? [grams(item)!] : [],
    );
    const oils = said.filter(isOil).flatMap(({ text }) => knownOil(text) ?? []);
    const ofLye = said.some(item => isName(item) && item.known === 'lye');
    const isOther = said.some(item => isName(item) && (item.known === 'water' || item.known === 'other'));
    for (const oil of oils) named.add(oil);
    const sum = masses.reduce((all, mass) => all + mass, 0);
    if (ofLye && oils.length > 0 && masses.length > 0) return undefined;
    if (ofLye) lyes.push(...masses);
    else if (masses.length > 0 && (oils.length > 0 || !isOther)) {
      fats.push({ oil: oils.length === 1 ? oils[0]! : HUNGRIEST, grams: sum });
      for (const oil of oils) weighed.add(oil);
    }
  }
  const [lye, another] = lyes;
  if (lye === undefined || another !== undefined || named.size === 0) return undefined;
  if ([...named].some(oil => !weighed.has(oil))) return undefined;
  const alkali = POTASSIUM.test(plainWords(question)) ? 'KOH' : 'NaOH';
  const told = hydroxideIn([{ alkali, grams: lye, exactGrams: lye, purity: WEAKEST[alkali] }]);
  return told > hydroxideDemand(fats).high ? lye : undefined;
}
