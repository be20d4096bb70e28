import type { ToldAmount } from '../found/amounts.ts';
import { isOil } from '../found/amounts.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import type { Words } from '../found/words-of.ts';
import { BATTER, OILS } from './amount-at.ts';

const FIGURE = /^\d+(?:[.,]\d+)?$/u;
const OF = /^(?:de|of)$/u;
const IS = /^(?:[:=]|are|is|son|es|total|totales|en|all|in|just|only|solo|come|to|suman|pesan)$/u;
const MARK = /^[?!;,.)]$/u;
const BATTER_ALONE = /^(?:batter|mezcla|masa|batido|pasta|jabon|soap)$/u;

/** Kitchen scales tell grams, and nobody makes soap of less than so many; from there on ounces would be 3 kg. */
const LEAST_GRAMS = 100;
const MOST_GRAMS = 20_000;
/** "3 oils" are how many there are. */
const LEAST_WEIGHED = 20;

/** What bare figures are of, where the words tell it; of `unclear` ones the unit may be another. */
export type BareAmounts = { readonly told: readonly ToldAmount[]; readonly unclear: readonly ToldAmount[] };

/**
 * Figures without a unit that are told of oils or batter: "500 de aceites", "oils: 650". From 100 on they are grams, as kitchen
 * scales tell them; below, ounces are as likely. Pure.
 */
export function bareAmounts(
  { words }: Words,
  things: readonly NamedThing[],
  amounts: readonly ToldAmount[],
): BareAmounts {
  const isTaken = (at: number) => [...things, ...amounts].some(({ from, to }) => at >= from && at < to);
  const told: ToldAmount[] = [];
  const unclear: ToldAmount[] = [];
  for (const [at, word] of words.entries()) {
    if (!FIGURE.test(word) || isTaken(at)) continue;
    const of = toldBehind(words, at) ?? toldBefore(words, at);
    const value = Number(
      /^\d{1,3}[.,]\d{3}$/u.test(word) ? word.replace(/[.,]/u, '') : word.replace(',', '.'),
    );
    if (of === undefined || value < LEAST_WEIGHED || value > MOST_GRAMS) continue;
    const one = { text: `${value} g`, from: at, to: at + 1, of, measure: 'mass', perPound: false } as const;
    (value >= LEAST_GRAMS ? told : unclear).push(one);
  }
  return { told, unclear };
}

/** "900 oils", "300 de mezcla"; an oil with a name of its own is one of several. */
function toldBehind(words: readonly string[], at: number): 'oils' | 'batter' | undefined {
  const next = OF.test(words[at + 1] ?? '') ? at + 2 : at + 1;
  const word = words[next] ?? '';
  if (isOil(words, next)) return undefined;
  if (OILS.test(word)) return 'oils';
  if (word === 'o' && (words[next + 1] === undefined || MARK.test(words[next + 1]!))) return 'oils';
  return BATTER_ALONE.test(word) ? 'batter' : undefined;
}

/** "oils: 650", "aceites 650". */
function toldBefore(words: readonly string[], at: number): 'oils' | 'batter' | undefined {
  const next = words[at + 1];
  if (next !== undefined && !MARK.test(next)) return undefined;
  let before = at - 1;
  while (before >= 0 && at - before < 4 && IS.test(words[before]!)) before -= 1;
  const word = words[before] ?? '';
  // "Avocado oil 150" is one oil of several.
  if ([1, 2, 3].some(back => before >= back && isOil(words, before - back))) return undefined;
  return OILS.test(word) ? 'oils' : BATTER.test(word) && before < at - 1 ? 'batter' : undefined;
}

const SPOON =
  /^(?:tsps?|tbsps?|teaspoons?|tablespoons?|cdtas?|cditas?|cdas?|cucharad(?:it)?as?|g|gr|grams?|gramos?)$/u;
const HALF = /^(?:media|medio|half)$/u;

/**
 * Amounts of a further colour whose unit goes without saying: "1/2 tsp of spirulina and half of turmeric", "3 g de verde y 2 de
 * amarillo". Pure.
 */
export function elidedAmounts(
  { words }: Words,
  things: readonly NamedThing[],
  amounts: readonly ToldAmount[],
): readonly ToldAmount[] {
  const isColour = (at: number) =>
    things.some(({ from, colourants }) => from === at && colourants.length > 0);
  return words.flatMap((word, at) => {
    const figure = HALF.test(word) ? '1/2' : /^(?:\d{1,2}|\d\/\d)$/u.test(word) ? word : undefined;
    const last = amounts.findLast(({ to }) => to <= at);
    const unit = last?.text.split(' ').at(-1) ?? '';
    if (
      figure === undefined ||
      !/^(?:y|and|n|e|\+|&|,|echo|pongo|meto|uso|use|put|add)$/u.test(words[at - 1] ?? '') ||
      !OF.test(words[at + 1] ?? '') ||
      !isColour(at + 2) ||
      (last?.of !== 'powder' && last?.of !== 'unsaid') ||
      !SPOON.test(unit)
    )
      return [];
    return [{ ...last, text: `${figure} ${unit}`, from: at, to: at + 1 }];
  });
}
