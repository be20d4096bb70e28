import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { LYE_WORDS } from '../../fields/soap-words.ts';
import { FAT } from '../../lye/amounts/words.ts';
import type { Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean, run } from '../lean-kinds.ts';
import type { Opened } from '../turn/plain.ts';
import { namesOilOf, recipeFor, reweighed, unitOf } from './recipe.ts';

/* A recipe whose weights are put right, or that has to fit a mould: every figure is the turn's own, and the whole recipe stands in the headline. */

/** Says that what was told was wrong. */
const PUTS_RIGHT = new RegExp(
  unbroken`
    ^\W*(?:(?:no|nope|ah|oh|oops|and|y|but|pero) )*(?:hang on|hold on|wait|sorry|actually|correction|
    scrap that|i meant?|my mistake|typo|should be|got that wrong|no|perd[oó]n(?:a|e|ame)?|disculpa|espera|esper[aá]|digo|
    en realidad|correcci[oó]n|me equivoqu[eé]|quise decir|ojo|mejor dicho)(?!\p{L})
  `,
  'iu',
);
const NAME = String.raw`((?:\p{L}+ )??\p{L}+?)`;
const FIGURE = String.raw`(\d{1,4}(?:[.,]\d+)?) ?(?:g|gr|grams?|gramos?)?`;
const NAME_FIRST = new RegExp(
  `^(?:the |el |la |de |aceite de )*${NAME}(?:s|'s)?(?: (?:is|was|its|should be|to be|at|es|son|era|eran|va|van|a|en))* ${FIGURE}$`,
  'u',
);
const FIGURE_FIRST = new RegExp(
  `^(?:its |it is |thats |that is |es |son |eran? |fueron )?${FIGURE} (?:of |de )?(?:the |el |la |aceite de )*${NAME}$`,
  'u',
);

/** "150, not 250": the weight that was wrong. */
const NOT_SO_MUCH =
  /,? ?(?:(?:and |y )?(?:not|no)|instead of|rather than|en (?:vez|lugar) de) (?:the |los )?\d{1,4}(?:[.,]\d+)? ?(?:g|gr|grams?|gramos?)?(?= *(?:$|[,.;!?]))/gu;

/** "No, 20 superfat cos of all the lard": nothing weighs otherwise. */
const OF_SUPERFAT = new RegExp(`(?<!\\p{L})(?:${FAT})(?!\\p{L})|%`, 'u');

const IN_GRAMS = /\d ?(?:g|gr|grams?|gramos?)(?!\p{L})/u;

/** One oil and its weight, whichever is told first. */
function weightTold(part: string): readonly [string, number] | undefined {
  const nameFirst = NAME_FIRST.exec(part);
  const [name, figure] = nameFirst
    ? [nameFirst[1], nameFirst[2]]
    : (FIGURE_FIRST.exec(part) ?? []).slice(1).toReversed();
  if (name === undefined || figure === undefined) return undefined;
  return knownOil(name) === undefined ? undefined : [name, Number(figure.replace(',', '.'))];
}

/**
 * "Hang on, coconut's 200 and the olive 750": other weights for oils of the recipe; the others stay. Asked for whole where a part of it is
 * read in another way; undefined where nothing is put right. Pure.
 */
export function weightsPutRight(typed: string, before: Ran): Lean | undefined {
  const plain = unaccented(typed).replace(/['’]s(?!\p{L})/gu, '');
  if (!PUTS_RIGHT.test(plain) || !/\d/u.test(plain)) return undefined;
  let rest = plain;
  for (let found = PUTS_RIGHT.exec(rest); found; found = PUTS_RIGHT.exec(rest))
    rest = rest.slice(found[0].length);
  const parts = rest
    .replace(NOT_SO_MUCH, '')
    .replace(/[.!?]+\s*$/u, '')
    .split(/,(?!\d)|;| and | y |&/u)
    .map(part => part.replace(/^[\s,.:-]+|[\s,.:-]+$/gu, ''))
    .filter(part => part !== '');
  const told = parts.map(weightTold);
  const weights = told.flatMap(one => (one ? [one] : []));
  // "No, 700 g olive" may be the whole of another recipe.
  if (weights.length === 0 || (parts.length === 1 && !NAME_FIRST.test(parts[0]!)))
    return namesOilOf(before, rest) && !LYE_WORDS.test(rest) && !OF_SUPERFAT.test(rest)
      ? ASKS_RECIPE
      : undefined;
  // Grams in a recipe by ounces are no ounces.
  const isOfItsUnit = !IN_GRAMS.test(rest) || unitOf(before) === 'g';
  const laid =
    weights.length === told.length && isOfItsUnit ? reweighed(before, new Map(weights)) : undefined;
  return laid ? run(laid) : ASKS_RECIPE;
}

const SCALES = new RegExp(
  unbroken`
    (?<!\p{L})(?:scal\p{L}+|resiz\p{L}+|shrink|fit|make it|bring it|adapt\p{L}*|ajust\p{L}*|adapt\p{L}*|
    escal\p{L}*|reduc\p{L}+|pasal[oa]|hacel[oa]|achic\p{L}+)(?!\p{L})
  `,
  'u',
);
const OF_OILS =
  /(\d{2,5}(?:[.,]\d+)? ?(?:kg|g|grams?|gramos?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)?) ?(?:of |de )?(?:oils?|aceites?)(?!\p{L})/gu;
/** "The mould only takes 900 of oils, so scale it": the whole recipe for so much oil. Pure. */
export function scaledToFit({ text }: Opened, before: Ran): Lean | undefined {
  const amounts = [...text.matchAll(OF_OILS)];
  if (!SCALES.test(text) || amounts.length !== 1 || (text.match(/\d+/gu) ?? []).length !== 1)
    return undefined;
  const told = amounts[0]![1]!.trim();
  const laid = recipeFor(before, /\p{L}/u.test(told) ? told : `${told} g`);
  return laid ? run({ ...laid, scaled: 'to-size' }) : ASKS_RECIPE;
}
