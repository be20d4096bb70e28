import { isPlain } from '../../amounts/chat-words.ts';
import type { Amount, Fraction, Item } from '../items/item.ts';
import { type State, withUnit } from '../state.ts';
import { MOST_BARE_SUPERFAT } from './fixed-figures.ts';
import type { Pair } from './parts.ts';
import { timesOf } from './times.ts';

/** Beside what all oils weigh together, "son 600 g"; beside anything else it is something that nobody here knows. */
const SUMS =
  /^(?:so|that|thats|that's|its|it's|it|makes|making|sum|sums|comes|all|which|batch|lot|suma|suman|hacen|da|dan|todo|todos|eso|entre|sale|salen)$/u;

/** Who puts a weight right is seldom off by more than this; a figure further off may be of something else, as of the superfat. */
const MOST_OFF = 5;
function isLikely(now: Amount, before: Pair['measure']): boolean {
  if (before.is !== 'amount' || (now.unit !== undefined && now.unit !== before.unit)) return true;
  return now.figure <= before.figure * MOST_OFF && before.figure <= now.figure * MOST_OFF;
}
export const isCount = ({ figure, unit }: Amount): boolean =>
  unit === undefined && Number.isInteger(figure) && figure >= 2 && figure <= 8;
const OF_ALL = /^(?:los|las|the|all)$/u;

/** Who makes a share of a recipe says so with one of these. */
const OF_THE_RECIPE =
  /^(?:it|this|that|recipe|recipes|batch|lot|size|everything|make|making|do|doing|scale|receta|tanda|lote|todo|esto|eso|hago|hacemos|hacer|quiero|queremos)$/u;

/** "Quiero 5%": so little by itself is the superfat (common practice, no source). */
const WANTED = /^(?:quiero|queremos|i|want|[;,.])$/u;

/** "I make half. Lye for my half?": the share that was told once more. */
const isOutcome = (state: State, { share }: Fraction, items: readonly Item[]): boolean =>
  state.times !== undefined &&
  timesOf(state.times) === share &&
  items.some(
    ({ is, text }) =>
      is === 'asks' || /^(?:my|mi|the|that|la|esa|el|ese|lye|soda|sosa|para|for)$/u.test(text),
  );

/** "Is that 92 enough": the lye whose weight was told before, spoken of once more. */
const isLyeAgain = ({ pairs }: State, { figure, unit }: Amount, before: Item | undefined): boolean =>
  /^(?:that|those|the|this|these|es[oa]s?|est[oa]s?|las|los|mis|my)$/u.test(before?.text ?? '') &&
  pairs.some(
    ({ name, measure }) =>
      name.known === 'lye' &&
      measure.is === 'amount' &&
      measure.figure === figure &&
      (unit === undefined || unit === measure.unit),
  );

/** "With 7% excess": of the fat, whose name was not said. */
const OF_THE_FAT = /^(?:exceso|excess|extra|spare|free|over|libre|sobrante)$/u;
/** "2% lavender": so much of something that nobody here knows, and no superfat. */
function isOfStrange(items: readonly Item[], at: number): boolean {
  const behind = items.slice(at + 1).find(({ is }) => is !== 'link');
  return behind?.is === 'word' && !isPlain(behind.text) && !OF_THE_FAT.test(behind.text);
}

/** "400 between the two", "400 for both": of no oil alone. */
const OF_SEVERAL = /^(?:between|among|amongst|entre|both|amb[oa]s|pair|par|apiece|todos|todas|all)$/u;
const isOfSeveral = (items: readonly Item[]): boolean =>
  items.some(
    (item, at) =>
      item.is === 'whole' ||
      item.is === 'even' ||
      item.is === 'alike' ||
      OF_SEVERAL.test(item.text) ||
      (item.is === 'amount' && isCount(item) && OF_ALL.test(items[at - 1]?.text ?? '')),
  );

/** A part without a name: the whole, the superfat, a figure put right, or nothing of the recipe. */
export function nameless(state: State, items: readonly Item[], sentence: number): string | undefined {
  const isOfRecipe = state.told.has(sentence);
  for (const [at, item] of items.entries()) {
    // "Gramos los tres".
    if (item.is === 'amount' && isCount(item) && OF_ALL.test(items[at - 1]?.text ?? '')) {
      state.count = item;
      continue;
    }
    if (item.is === 'fraction' && !isOutcome(state, item, items)) {
      // "La mitad de todo", "half will be hers": of which nobody here knows what it takes.
      state.isTurned = true;
      return item.text;
    }
    // "Nope, sorry, typo, 90": a figure by itself, of which oil is not told.
    if (
      item.is === 'amount' &&
      item.unit === undefined &&
      !isOfRecipe &&
      !state.awaitsFigure &&
      state.isPutRight.has(sentence)
    )
      return item.text;
    if (item.is !== 'amount' || (item.unit === undefined && !isOfRecipe && !state.awaitsFigure)) continue;
    if (isLyeAgain(state, item, items[at - 1])) continue;
    if (state.denied) {
      state.pairs.push({ measure: item, name: state.denied });
      state.denied = undefined;
    } else if (state.awaitsFigure) {
      if (isOfSeveral(items)) return item.text;
      state.awaitsFigure = false;
      state.isCorrected = true;
      const last = state.pairs.at(-1);
      if (!last || !isLikely(item, last.measure)) return item.text;
      state.pairs[state.pairs.length - 1] = withUnit({ ...last, measure: item }, last);
    } else if (
      item.unit === '%' &&
      !/^(?:at|al|a|with|con|to)$/u.test(items[at - 1]?.text ?? '') &&
      items.some(one => OF_THE_RECIPE.test(one.text)) &&
      !(item.figure <= MOST_BARE_SUPERFAT && items.every(one => one === item || WANTED.test(one.text)))
    ) {
      // "I make 25 % of it": a share of the recipe, and no superfat.
      state.isTurned = true;
      return item.text;
    } else if (item.unit === '%' && isOfStrange(items, at)) return item.text;
    else if (item.unit === '%') state.percents.push(item);
    else state.masses.push({ ...item, isSum: items.every(one => one.is !== 'word' || SUMS.test(one.text)) });
  }
  return undefined;
}
