import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { LYE_WORDS } from '../../fields/soap-words.ts';
import type { Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean } from '../lean-kinds.ts';
import { unitOf } from './recipe.ts';
import { isOfElse } from './weights-anew.ts';

/*
 * After the lye of a recipe: the pot was otherwise than it was told. The figure that stands above is then of another pot, so that such a turn is
 * never a flaw of a bar, a matter of the craft or the same figure once more: the recipe is asked for whole.
 */

/** Says that something went in for another, ran out, or was told amiss. */
const OTHERWISE = new RegExp(
  unbroken`
    (?<!\p{L})(?:instead|in place of|in lieu of|rather than|swapp?ed|replaced|substituted|used up|used all|ran out|run out|
    turns out|turned out to be|was really|were really|actually|i meant|meant|my mistake|wrong|oops|en (?:vez|lugar|realidad)|cambie|reemplace|
    sustitui|se (?:me |nos )?(?:acabo|habia acabado|termino|agoto)|gast(?:e|o|amos|aron)|me equivoque|confundi|resulta que|quise
    decir|queria decir)(?!\p{L})
  `,
  'u',
);
/** "40, not 400", "eran 40 no 400". */
const ANOTHER_FIGURE = /(?<![\d.,])\d+(?:[.,]\d+)? ?\p{L}{0,6},? (?:and |y )?(?:not|no) (?:the |los )?\d/u;
/** "It is not sunflower", "no es girasol": a denial, and what is denied. */
const DENIED =
  /(?<!\p{L})(?:not|isnt|wasnt|no (?:es|era|eran|fue|son|puse|eche|use)) (?:the |an? |el |la |de )*(\p{L}+)/gu;
/** Asked ahead of doing it, a change is a question of its own. */
const ASKS_AHEAD = new RegExp(
  unbroken`
    ^\W*(?:(?:and|so|but|then|ok|y|pero|entonces) )*(?:can|could|may|might|should|shall|would|what if|what happens|is it|is there|does|do|
    how|why|which|puedo|podria|podemos|se puede|debo|deberia|si|que pasa|que tal|como|por que|cuant[oa]s?|cual)(?!\p{L})
  `,
  'u',
);

const oilsNamed = (plain: string): readonly string[] =>
  (plain.match(/\p{L}+/gu) ?? []).filter(word => word.length > 2 && knownOil(word) !== undefined);

const deniesAnOil = (plain: string): boolean =>
  [...plain.matchAll(DENIED)].some(([, name = '']) => name.length > 2 && knownOil(name) !== undefined);

const UNIT = '(g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)';
const NOT = '(?:not|no|instead of|rather than|en (?:vez|lugar) de)';
/** "Grams, not ounces"; the first is the one that holds. */
const UNIT_NOT_UNIT = new RegExp(
  `(?<!\\p{L})${UNIT},? (?:and |y )?${NOT} (?:in |en )?${UNIT}(?!\\p{L})`,
  'u',
);
/** "Not ounces but grams"; the second holds. */
const NOT_UNIT_UNIT = new RegExp(
  unbroken`
    (?<!\p{L})(?:not|no(?: (?:es|son|eran?))?) (?:in |en )?${UNIT},? ?(?:but |sino |its |it is |they are |theyre |
    those are |son |eran |in |en )*${UNIT}(?!\p{L})
  `,
  'u',
);
/** "Those are grams", "quise decir onzas". */
const THEY_ARE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:those|these|they|the (?:weights|numbers|figures|amounts)) (?:are|were)|theyre|i meant|meant|son|
    eran|estan en|quise decir|queria decir) (?:all |in |en |todo |todos )*${UNIT}(?!\p{L})
  `,
  'u',
);

const kindOf = (unit: string): string =>
  unit.startsWith('k') ? 'kg' : unit.startsWith('l') || unit.startsWith('p') ? 'lb' : unit[0]!;

/** Whether the weights of the recipe are said to be in another unit than it was reckoned in. */
function isOfAnotherUnit(plain: string, before: Ran): boolean {
  const holds = UNIT_NOT_UNIT.exec(plain)?.[1] ?? NOT_UNIT_UNIT.exec(plain)?.[2] ?? THEY_ARE.exec(plain)?.[1];
  if (holds === undefined) return false;
  const unit = unitOf(before);
  return unit === undefined || kindOf(unit) !== kindOf(holds);
}

/**
 * A turn that tells of the pot before that an oil, its weight or the unit of all weights was another; the recipe is asked for. Undefined where
 * it asks ahead whether something may be changed, speaks of a colour or another job, or asks for the lye of a recipe that it weighs itself. Pure.
 * @example potToldOtherwise('sorry, grams not oz', ranOf('24 oz olive')) // asks for the whole recipe
 */
export function potToldOtherwise(typed: string, before: Ran): Lean | undefined {
  const plain = unaccented(typed).replace(/['’]/gu, '').replace(/\s+/gu, ' ');
  if (isOfElse(plain) || (LYE_WORDS.test(plain) && /\d/u.test(plain)) || ASKS_AHEAD.test(plain))
    return undefined;
  if (isOfAnotherUnit(plain, before)) return ASKS_RECIPE;
  if (oilsNamed(plain).length === 0) return undefined;
  return OTHERWISE.test(plain) || ANOTHER_FIGURE.test(plain) || deniesAnOil(plain) ? ASKS_RECIPE : undefined;
}
