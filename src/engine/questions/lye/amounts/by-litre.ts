import { unbroken } from '../../../over-lines.ts';
import { unlessRefused } from '../../../refusal.ts';
import { checkLye, type LyeCheck, lyeForAnyOil } from '../sums/check.ts';
import { CAUSTIC } from '../topics/care-words.ts';
import { COUNT, decimal, gramsOf, MASS, POTASSIUM, plainWords } from './words.ts';

/** kg a litre of kitchen oil: relative densities of 0.909 to 0.925 at 20 C, Codex CXS 33 (olive) and CXS 210. */
export const OIL_KG_PER_LITRE = 0.92;

/** A recipe by the litre: what the oil weighs, and what the lye beside it does. Litres and grams. */
export type ByLitre = { readonly litres: number; readonly check: LyeCheck };

const LITRES = new RegExp(
  unbroken`
    (${COUNT}) ?(?:l|lts?|litros?|litres?|liters?)\b(?:(?: of| de))?(?: \w+){0,2}? ?(?:oil|aceite|olive|
    oliva|girasol|sunflower|coco(?:nut)?)|\b(?:oil|aceite)(?: \w+){0,3} (${COUNT}) ?(?:l|lts?|litros?|
    litres?|liters?)\b
  `,
  'u',
);
const LYE_GRAMS = new RegExp(
  `(${MASS})(?: (?:of|de))?(?: (?:the|la))? ${CAUSTIC}\\b|\\b${CAUSTIC}(?: caustica)?,? (${MASS})(?! (?:of |de )?(?:water|agua|aceite|oil))`,
  'u',
);
/** The kinds that are told by a word; any other kitchen oil takes about as much as sunflower. */
const KINDS = [
  [/\b(?:coco|coconut)\b/u, 'coconut'],
  [/\b(?:oliva|olive)\b/u, 'olive'],
] as const;

/** What a recipe of litres of oil and grams of lye comes to; undefined where a question tells no such recipe. */
export function byLitreIn(question: string): ByLitre | undefined {
  const plain = plainWords(question);
  const [, before, after] = LITRES.exec(plain) ?? [];
  const [, mass, behind] = LYE_GRAMS.exec(plain) ?? [];
  const [told, lye] = [before ?? after, mass ?? behind];
  if (told === undefined || lye === undefined || told.includes('/')) return undefined;
  const litres = decimal(told);
  const kind = KINDS.find(([word]) => word.test(plain))?.[1] ?? 'sunflower';
  const oilGrams = litres * OIL_KG_PER_LITRE * 1000;
  if (!(litres > 0 && litres < 1000)) return undefined;
  return {
    litres,
    check: checkLye(weighedAs(lye, plain), { oils: `${kind} 100%`, sizeGrams: oilGrams }),
  };
}

const weighedAs = (mass: string, plain: string) =>
  POTASSIUM.test(plain)
    ? ({ alkali: 'KOH', grams: gramsOf(mass), purity: 0.9 } as const)
    : ({ alkali: 'NaOH', grams: gramsOf(mass), purity: 1 } as const);

/** An answer of ours, or a figure of their own, held up once more: "so 100 g for 500 g is fine, right?". */
const HELD_UP = new RegExp(
  unbroken`
    ^(?:(?:so|then|ok|okay|and|i trust you|entonces|pues|y|vale|lye|naoh|
    sosa)[ ,:]+)*(${MASS})(?:(?: of| de)?(?: (?:the|la))? (?:lye|naoh|sosa))? (?:for|in|to|para|
    en)(?: the)? (${MASS})(?:(?: of| de)? ([a-z]+)(?: oil)?)??,? ?(?:is |are |that is |esta |
    es )?(?:(?:all )?right|fine|ok|okay|correct|good|enough|bien|vale|correcto|no)(?:,? (?:right|no|or not|
    verdad|then))*\W*$
  `,
  'u',
);
const SMALL = new Set(['is', 'are', 'that', 'esta', 'es', 'it', 'all']);

/** Lye for oil that is held up once more, grams: checked where the oil is named, else told where no oil at all takes it. */
export type HeldUp =
  | { readonly kind: 'check'; readonly check: LyeCheck }
  | { readonly kind: 'too-much'; readonly lye: number; readonly oils: number };

/** Undefined where nothing of the kind is asked, or it cannot be told without the oil. */
export function heldUpIn(question: string): HeldUp | undefined {
  const plain = plainWords(question)
    .replace(/ ,/gu, ',')
    .replace(/[,.]+$/u, '');
  const [, lye, oils, name] = HELD_UP.exec(plain) ?? [];
  if (lye === undefined || oils === undefined) return undefined;
  const weighed = weighedAs(lye, plain);
  const oilGrams = gramsOf(oils);
  if (name !== undefined && !SMALL.has(name)) {
    const check = unlessRefused(() => checkLye(weighed, { oils: `${name} 100%`, sizeGrams: oilGrams }));
    return check && { kind: 'check', check };
  }
  return lyeForAnyOil(weighed, oilGrams) === 'too-much-for-all'
    ? { kind: 'too-much', lye: weighed.grams, oils: oilGrams }
    : undefined;
}
