import { unbroken } from '../../../over-lines.ts';
import { anothersPotIn } from './doubts/anothers-pot.ts';
import { absenceIn } from './doubts/beside-oils.ts';
import { type Doubt, doubtOfOil } from './doubts/in-the-pot.ts';
import { waysOf } from './doubts/left-out-choices.ts';
import { saidBehind } from './doubts/said-behind.ts';
import { restatedAsOther, saidBetween } from './doubts/said-between.ts';
import { takenBackIn } from './doubts/taken-back.ts';
import { oilsOf } from './items/amounts.ts';
import type { Name } from './items/item.ts';
import { isLostWord, wordsBeside } from './items/words-beside.ts';
import { type Fixed, fixedIn } from './settling/fixed-figures.ts';
import { type IngredientsTold, toldIn } from './settling/ingredients-told.ts';
import { secondFat } from './settling/second-fat.ts';
import { same } from './state.ts';
import type { Unclear } from './unclear.ts';
import { written } from './written.ts';

/** What was typed, and as which name it was read. */
export type Respelt = { readonly typed: string; readonly read: string };
/** A recipe in the words that the strict reader of lye questions takes, and what was passed by. */
export type RecipeLine = {
  readonly line: string;
  readonly left: readonly string[];
  /** Oils whose names are spelt amiss, and as what they were read. */
  readonly respelt: readonly Respelt[];
  /** Whether the recipe was changed as it was told. */
  readonly isTurned: boolean;
};

/**
 * The recipe that a line tells, whatever stands around it: whose each amount is, what was put right or left away on the way, what is
 * the rest, the half, the whole. Every amount has to have its place and every oil its amount, and no word beside them may be a fat or
 * change one; else what is unclear. Takes what `plainWords` gives with its clauses, and that of the whole message
 * where words of it went before. Pure.
 * @example recipeLine('half tallow half lard, 2 lb altogether') // { line: '50% tallow, 50% lard ; 2 lb oils', … }
 */
export function recipeLine(plain: string, said = plain): RecipeLine | Unclear {
  const fixed = fixedIn(plain);
  const second = secondFat(fixed.rest, fixed.superfat);
  if (second !== undefined)
    return { why: 'fats', unclear: second, fats: { one: `${fixed.superfat}%`, other: second } };
  const told = toldIn(fixed.rest);
  if ('unclear' in told) return told;
  const { isTurned } = told;
  const theirs = anothersPotIn(fixed.rest, { begins: told.begins, said });
  if (theirs !== undefined) return { why: 'another', unclear: theirs, isTurned: true };
  const oils = oilsOf(told);
  if ('unclear' in oils) return { ...oils, isTurned };
  if (told.count !== undefined && told.count.figure !== oils.list.length)
    return { why: 'place', unclear: told.count.text, isTurned };
  // Who takes back what was told means another recipe than the one that stands there.
  const back = takenBackIn(told.items);
  if (back !== undefined) return { why: 'place', unclear: back, isTurned: true };
  // Another's recipe, or another day's, stands before the one that counts.
  const counted = told.items.filter(({ from }) => from >= told.begins);
  const doubt = doubtOfOil(counted, [...told.pairs.map(({ name }) => name), ...told.even]);
  const restated = restatedAsOther(said);
  if (restated !== undefined) return { why: 'place', unclear: restated, isTurned: true };
  const behind = saidBehind(told.items);
  if (behind !== undefined) return passedBy(behind, { told, fixed, doubt, isTurned: true });
  if (told.again.length > 0) return spokenOfAgain(told, fixed, told.again);
  const between = saidBetween(counted);
  // What another clause took out already is struck out once.
  if (between?.strikesOut && told.pairs.some(({ name }) => same(name, between.before)))
    return spokenOfAgain(told, fixed, [between.before]);
  const words = wordsBeside(counted);
  if ('unclear' in words) return passedBy(words.unclear, { told, fixed, doubt, isTurned });
  if (between && !between.strikesOut) return passedBy(between.text, { told, fixed, doubt, isTurned });
  if (doubt)
    return { why: 'doubt', unclear: doubt.text, doubt, ways: waysOf(told, fixed, doubt.names), isTurned };
  const recipe = written(told, fixed);
  if (typeof recipe !== 'string') return { ...recipe, isTurned };
  const respelt = told.items.flatMap(item =>
    item.is === 'name' && item.known === 'oil' && told.pairs.some(({ name }) => same(name, item))
      ? (readAs(item) ?? [])
      : [],
  );
  return { line: recipe, left: words.left, respelt, isTurned };
}

/** Of a vessel, of a scale, of what is gone: the recipe without such words is what the message says it is not. */
const WEIGHED_OTHERWISE = new RegExp(
  unbroken`
    (?<!\p{L})(?:bowls?|pots?|pans?|jars?|lids?|tubs?|tins?|cans?|bottles?|jugs?|buckets?|crocks?|
    containers?|packag\p{L}+|wrapp\p{L}+|scales?|weigh\p{L}*|tar(?:e|ed|ing|a|ado|ada|ar|e)|gross|net|empty|
    gone|missing|stolen|spil\p{L}+|half|some|ollas?|ollita|cazos?|bol(?:es)?|cuencos?|tazon(?:es)?|frascos?|
    tarros?|botes?|latas?|botellas?|jarras?|baldes?|cubos?|cubetas?|envases?|recipientes?|tapas?|bascula|
    balanza|pes[aoe]\p{L}*|bruto|neto|vaci[oa]|falta\p{L}*|mitad|parte)(?!\p{L})
  `,
  'u',
);

/** Words that are not understood beside a recipe that reads whole without them: it is shown, and takes one press. */
function passedBy(
  unclear: string,
  {
    told,
    fixed,
    doubt,
    isTurned,
  }: {
    readonly told: IngredientsTold;
    readonly fixed: Fixed;
    readonly doubt: Doubt | undefined;
    readonly isTurned: boolean;
  },
): Unclear {
  // What was taken out, put in the place of another or may be out of the pot is no recipe as it stands.
  const isOther =
    doubt !== undefined ||
    unclear.split(/[^\p{L}'’-]+/u).some(isLostWord) ||
    WEIGHED_OTHERWISE.test(unclear) ||
    absenceIn(unclear) !== undefined ||
    told.items.some(({ is }) => is === 'instead' || is === 'swaps' || is === 'planned');
  return isOther
    ? { why: 'place', unclear, isTurned }
    : { why: 'words', unclear, isTurned, ways: waysOf(told, fixed, []) };
}

/** "Ignore the castor", "I'd wrote almond but it's avocado": whether the oil is in the pot. */
function spokenOfAgain(told: IngredientsTold, fixed: Fixed, again: readonly Name[]): Unclear {
  const names = again.filter((name, at) => again.findIndex(other => same(other, name)) === at);
  const text = names.map(name => name.text).join(', ');
  return {
    why: 'doubt',
    unclear: text,
    doubt: { names, text },
    ways: waysOf(told, fixed, names),
    isTurned: true,
  };
}

/** What an oil was read as, where that is not what was typed: bare "manteca" is lard, and to others cocoa or shea butter. */
function readAs({ typed, text }: Name): Respelt | undefined {
  if (typed !== undefined) return { typed, read: text };
  return text === 'manteca' ? { typed: text, read: 'manteca de cerdo' } : undefined;
}
