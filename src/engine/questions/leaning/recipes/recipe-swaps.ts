import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import type { Laid, Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean, run } from '../lean-kinds.ts';
import { partSwapTurn, swapTurn } from '../turn/turns.ts';
import { inUnitOf, partSwapped, swappedOil } from './recipe.ts';

/* What a turn puts in the place of something in a recipe: an oil, a part of one, the water by its strength. */

/** "Swap the coconut for lard", "100 of it for coconut": one oil, or a part of it, in another's place, of a recipe that is known. */
export function swapLaid(text: string, before: Ran): Lean | undefined {
  const part = partSwapTurn(text);
  if (part) {
    const amount = inUnitOf(before, part.amount);
    const laid = amount === undefined ? undefined : partSwapped(before, { ...part, amount });
    return laid ? run(laid) : ASKS_RECIPE;
  }
  const swap = swapTurn(text);
  if (!swap) return undefined;
  const laid = swappedOil(before, swap.out, swap.into);
  return laid ? run(laid) : ASKS_RECIPE;
}

const WATER_AT =
  /^(?:(?:with|con|make|and|haz) )*(?:the |el )?(?:water|agua) (?:(?:at|to|is|of|al|en|a|del|es) )*(\d{2})(?: ?%| ?percent| por ciento)$/u;
/** A share of lye in its water lies below, water as a share of the oils above; common practice (no source). */
const MOST_STRENGTH = 35;

/** "And the water at 33%": of lye in its water, or of the oils: the usual one is reckoned, the other is a press away. Pure. */
export function waterLaid(text: string, before: Ran): Lean | undefined {
  const [, told] = WATER_AT.exec(text) ?? [];
  if (told === undefined) return undefined;
  const ways: readonly Laid[] = [`${told}% lye`, `${told}% of oils`].map(water => ({
    ...before,
    given: { ...before.given, water },
  }));
  return { kind: 'runs', readings: Number(told) <= MOST_STRENGTH ? ways : ways.toReversed() };
}

const TAKES_AWAY = new RegExp(
  unbroken`
    ^(?:(?:what|if|can|could|may|should|i|we|ill|im|lets|just|actually|better|puedo|podria|y|si|le|les|
    que|pasa|voy|a|mejor|al final) )*(?:take (?:out|the|my|away)|took (?:out|the|my)|taking out|leav\p{L}+ out|(?:leave|left|drop|
    dropp\p{L}+|forget|omit\p{L}*|ditch\p{L}*|remov\p{L}+|skip\p{L}*|swap\p{L}*|replac\p{L}+|switch\p{L}*|chang\p{L}+|
    sac[aoe]\p{L}*|saqu\p{L}+|quit[aoe]\p{L}*|olvid\p{L}+|elimin\p{L}+|cambi\p{L}+|reempla\p{L}+|sustitu\p{L}+)) |(?:^| )(?:without|
    instead of|rather than|sin|en vez de|en vez del|en lugar de|en lugar del) (?:the |any |el |la |
    aceite de )*OIL|^(?:(?:and|but|y|pero|the|el|la|los|al final|mejor|in the end) )*OIL (?:(?:al final|
    mejor|in the end) )?(?:fuera|out|off|gone|no (?:l[aeo]s? )?(?:ech|pon|pus|llev|us|va|hay)\p{L}*|al final no|
    wont go in|stays out|is out|se queda fuera)
  `,
  'u',
);
/** Said for short of one in the recipe. */
const A_FAT = /^(?:wax|cera|butter|manteca|fat|grasa|sebo)$/u;
const oilNamed = (text: string): string | undefined => {
  const words = text.split(' ');
  const alone = words.find(word => knownOil(word) !== undefined);
  const byKind = words.find(word => A_FAT.test(word));
  // Of a name of two words the first, "rice bran".
  const ofTwo = words.find((word, at) => knownOil(`${word} ${words[at + 1] ?? ''}`) !== undefined);
  return alone ?? byKind ?? ofTwo;
};

/** Whether a turn names an oil and takes it, or another, out of a recipe, without telling any weight. Pure. */
export function takesOilAway(text: string): boolean {
  const oil = oilNamed(text);
  return oil !== undefined && !/\d/u.test(text) && TAKES_AWAY.test(text.replace(oil, 'OIL'));
}

const OFF =
  /(?<!\p{L})(?:short|shy|under|over|less|fewer|missing|extra|too (?:much|little)|cort[oa]s?|menos|de mas|de sobra|falt\p{L}+|sobr(?:o|a|aron|an))(?!\p{L})/u;

/** Whether a turn names an oil and by how much it came out short or over: "the olive was 40 short in the end". Pure. */
export const tellsOilOff = (text: string): boolean =>
  oilNamed(text) !== undefined && /\d/u.test(text) && OFF.test(text);
