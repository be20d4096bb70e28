import { knownOil } from '../../../batch/oils/find-oil.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import { unbroken } from '../../../over-lines.ts';
import { unlessRefused } from '../../../refusal.ts';
import { inOrder } from '../amounts/amounts-first.ts';
import { gramsOf, LYE, MASS, plainWords } from '../amounts/words.ts';
import { type LyeQuestion, readLyeQuestion } from '../question.ts';
import { fixedIn } from '../recipe-line/settling/fixed-figures.ts';

/** Lye told as a rate, and what it comes to in the oils that are weighed beside it. Grams. */
export type RateOfLye = {
  readonly told: { readonly lye: number; readonly per: number };
  /** The question with the lye of its own oils, or with as much oil as the rate is of where none is weighed. */
  readonly asked: LyeQuestion;
  /** Whether its own oils are weighed. */
  readonly isOfOils: boolean;
};

const ANY_OIL =
  '(?: (?:of |de )?(?:any |all |the |your |los |cualquier )?(?:oils?|fats?|aceites?|grasas?)(?! (?:of|de) ))?';
const FOR_ANY = '(?:for|in|to|on|para|en|a) (?:any|each|every|cada|cualquier)|(?:per|por)(?: cada)?';
const ONE = `(${MASS}|kilos?|kg|pounds?|lbs?|libras?|ounces?|oz|onzas?)`;
/** "160 g lye for any kilo of oils", "160 g de sosa por kilo": so much to so much of oil that nobody names. */
const RATE = new RegExp(
  unbroken`
    (?<![\d.,])(${MASS})(?: (?:of|de))?(?: (?:the|la))? (${LYE}) (?:${FOR_ANY}) ${ONE}(?!\p{L})${ANY_OIL}(?!\p{L})|
    (?<!\p{L})(${LYE}) (?:at |is |of |a |al |de )*(${MASS}) (?:${FOR_ANY}) ${ONE}(?!\p{L})${ANY_OIL}(?!\p{L})
  `,
  'u',
);
/** A rate is of oil and not of one that is named behind it: "per kilo of olive" is that oil's. */
const NAMES_ONE = /^ (?:of|de) \p{L}/u;

const namesOil = (clause: string): boolean =>
  clause.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);

/**
 * A rate of lye to any oil, as somebody else's rule tells it, and the lye that it comes to in the oils of the question: it is that which is checked,
 * never the figure of the rate. Undefined where none is told, or where it is of an oil by its name. Pure.
 * @example rateOfLye('300 g olive, 200 g coconut, is 160 g lye per kilo right')?.asked.weighed?.grams // 80
 */
export function rateOfLye(question: string): RateOfLye | undefined {
  const plain = plainWords(question, { clauses: true });
  const found = RATE.exec(plain);
  if (!found) return undefined;
  const [, first = '', itsName, firstOf, named = itsName ?? '', second = first, secondOf] = found;
  const [lye, of] = [second, secondOf ?? firstOf ?? ''];
  const behind = plain.slice(found.index + found[0].length);
  if (NAMES_ONE.test(behind)) return undefined;
  const told = { lye: gramsOf(lye), per: gramsOf(/^\d/u.test(of) ? of : `1 ${of}`) };
  const line = `${plain.slice(0, found.index)} ; ${lye} ${named} ; ${behind}`;
  const { rest, superfat } = fixedIn(line);
  const all = rest.split(';');
  const clauses = all.filter(clause => /\d/u.test(clause));
  // An oil that nobody weighed takes lye too.
  if (all.some(clause => !clauses.includes(clause) && namesOil(clause))) return undefined;
  const wanted = superfat === undefined ? [] : [`superfat ${superfat}%`];
  const asked = unlessRefused(() => readLyeQuestion(inOrder([...clauses, ...wanted].join(' ; ')).ordered));
  const oils = asked?.given.oils;
  const grams =
    asked?.oilGrams ?? (oils === undefined ? undefined : unlessRefused(() => parseOils(oils).totalGrams));
  if (asked?.weighed && grams !== undefined && oils !== undefined) {
    const weighed = { ...asked.weighed, grams: (told.lye * grams) / told.per };
    return { told, asked: { ...asked, weighed }, isOfOils: true };
  }
  const rule = readLyeQuestion(`${told.lye} g ${named} in ${told.per} g oils`);
  return /\d/u.test(plain.replace(found[0], ' ').replace(/\d+ ?%/gu, ' '))
    ? undefined
    : { told, asked: rule, isOfOils: false };
}
