import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { countedOils, numberWordIn } from '../../../../src/engine/questions/options/counted-oils.ts';
import { inPlainWords, type ReadAs } from '../../../../src/engine/questions/options/in-plain-words.ts';
import { oilsTold } from '../../../../src/engine/questions/options/oils-told.ts';
import { portionTold, sizeTold } from '../../../../src/engine/questions/options/portion-told.ts';
import {
  isIdle,
  listSaidPlainly,
  namesOilIn,
} from '../../../../src/engine/questions/options/recipe-phrases.ts';
import { barsAsked, enoughAsked } from '../../../../src/engine/questions/plans/enough-asked.ts';
import { paletteAsked } from '../../../../src/engine/questions/plans/palette-asked.ts';
import { planColours } from '../../../../src/engine/questions/plans/plan-colours.ts';
import { planParts } from '../../../../src/engine/questions/plans/plan-parts.ts';
import { amongNoColours, sharesAsked } from '../../../../src/engine/questions/plans/shares-asked.ts';
import { amountOf, readAt } from '../../../../src/engine/questions/portion-line/amount-at.ts';
import { bareAmounts, elidedAmounts } from '../../../../src/engine/questions/portion-line/bare-amounts.ts';
import { countAt, isPiece } from '../../../../src/engine/questions/portion-line/counted.ts';
import {
  isOther,
  itemsOf,
  itemsOf as portionItems,
} from '../../../../src/engine/questions/portion-line/items.ts';
import { partsIn } from '../../../../src/engine/questions/portion-line/parts.ts';
import { readPortions } from '../../../../src/engine/questions/portion-line/portion-line.ts';
import { multiplied } from '../../../../src/engine/questions/portion-line/products.ts';
import { putRight } from '../../../../src/engine/questions/portion-line/put-right.ts';
import { withCupSizes } from '../../../../src/engine/questions/portion-line/sized-cups.ts';
import { sumOfOilsIn } from '../../../../src/engine/questions/portion-line/sums.ts';
import { withoutTwins } from '../../../../src/engine/questions/portion-line/told-twice.ts';
import { settled as settledWords } from '../../../../src/engine/questions/settled.ts';
import { holdRecorded } from '../../recorded.ts';

/*
 * What each step makes of questions with an amount in them (texts of the sets and of the tests beside). As read when this was written, and
 * looked over for what is plainly wrong.
 */

function askedIn(question: string) {
  const typed = wordsOf(question);
  const things = thingsIn(typed);
  const words = settledWords(typed, things);
  return { words, things, amounts: amountsIn(words, things) };
}
const itemsIn = (question: string) => {
  const { words, things, amounts } = askedIn(question);
  return portionItems(words, things, amounts);
};

const STEPS = {
  countedOils,
  numberWordIn: (text: string) => numberWordIn(text.split(' ')),
  inPlainWords: ([as, text]: [ReadAs, string]) => inPlainWords(as, text),
  oilsTold,
  portionTold,
  sizeTold,
  isIdle: (text: string) => isIdle(text.split(' ')),
  namesOilIn: (text: string) => namesOilIn(text.split(' ')),
  listSaidPlainly,
  paletteAsked,
  planColours: (text: string) => planColours(askedIn(text).words),
  planParts: (text: string) => planParts(askedIn(text).words),
  sharesAsked: (text: string) => sharesAsked(askedIn(text).words),
  amongNoColours: (text: string) => amongNoColours(askedIn(text).words),
  enoughAsked: (text: string) => enoughAsked(askedIn(text).words),
  barsAsked: (text: string) => barsAsked(askedIn(text).words),
  readAt: ([words, at]: [readonly string[], number]) => readAt(words, at),
  amountOf,
  bareAmounts: (text: string) =>
    bareAmounts(askedIn(text).words, askedIn(text).things, askedIn(text).amounts),
  elidedAmounts: (text: string) =>
    elidedAmounts(askedIn(text).words, askedIn(text).things, askedIn(text).amounts),
  countAt: ([words, at]: [readonly string[], number]) => countAt(words, at),
  isPiece,
  itemsOf: (text: string) => itemsOf(askedIn(text).words, askedIn(text).things, askedIn(text).amounts),
  isOther,
  partsIn: (text: string) => partsIn(itemsIn(text)),
  readPortions: (text: string) =>
    readPortions(askedIn(text).words, askedIn(text).things, askedIn(text).amounts),
  multiplied: (text: string) => multiplied(itemsIn(text)),
  putRight: (text: string) => putRight(itemsIn(text)),
  withCupSizes: (text: string) => withCupSizes(itemsIn(text)),
  sumOfOilsIn: (text: string) => sumOfOilsIn(askedIn(text).words),
  withoutTwins: (text: string) => withoutTwins(itemsIn(text)),
} as const;

holdRecorded('a step of reading a portion', { steps: STEPS, folder: import.meta.dirname });
