import { prepared } from '../amounts/prepared.ts';
import { alkaliNamed } from './items/alkali-named.ts';
import type { Item } from './items/item.ts';
import { itemsOf } from './items/items.ts';
import { fixedIn } from './settling/fixed-figures.ts';
import { isMeasure, isName, isOil, partsOf } from './settling/parts.ts';
import { same } from './state.ts';

/** How many weighed oils make a recipe of what may else be a tale; with its superfat one does. */
const A_RECIPE = 2;

/** Beside the lye that is asked for; "the same lye" is another question. */
const COURTEOUS =
  /^(?:please|pls|plz|then|now|grams?|amount|por|favor|porfa|entonces|ahora|gramos|cantidad|thanks|gracias)$/u;

const OF_EACH = /(?<!\p{L})(?:(?:how much|what) (?:of|for) each|cu[aá]nto (?:de|para) cada)/iu;

/**
 * Whether a text weighs two oils or more, or one and tells its superfat, and asks for their lye: whatever happened beside it, that
 * weight is waited for, and a general answer to something else is none. Pure.
 */
export function asksForLyeOfWeighed(text: string): boolean {
  const { rest, superfat } = fixedIn(prepared(text));
  const items = itemsOf(rest);
  const least = superfat === undefined ? A_RECIPE : 1;
  const oils = items.filter(isOil);
  const named = oils.filter((one, at) => oils.findIndex(other => same(one, other)) === at);
  const isWeight = (item: Item) => isMeasure(item) && !(item.is === 'amount' && item.unit === 'other');
  // "Half and half, 2 lb of oils".
  const areEven = named.length >= A_RECIPE && items.some(({ is }) => is === 'even') && items.some(isWeight);
  if (named.length < least || (items.filter(isWeight).length < least && !areEven)) return false;
  // "How much of each", of two alkalis.
  if (OF_EACH.test(text) && alkaliNamed(items, []) === 'both') return true;
  // "Lye?", "how much lye", "sosa por favor".
  return partsOf(items).some(
    ({ items: part }) =>
      part.some(({ is }) => is === 'asks') ||
      (part.some(item => isName(item) && item.known === 'lye') &&
        !part.some(item => isMeasure(item) || isOil(item)) &&
        part.every(({ is, text: word }) => is !== 'word' || COURTEOUS.test(word))),
  );
}

/**
 * Whether one oil is told with two weights beside lye that was weighed: "the book says 800 g olive, I weighed 600 g, lye 103 g". Which
 * of them is in the pot decides whether that lye burns. Pure.
 */
export function weighsAnOilTwice(text: string): boolean {
  const items = itemsOf(fixedIn(prepared(text)).rest);
  const oils = items.filter(isOil);
  const isRepeated = oils.some((one, at) => oils.some((other, place) => place > at && same(one, other)));
  const weights = items.filter(item => item.is === 'amount' && item.unit !== 'other');
  return isRepeated && weights.length > oils.length;
}
