import { unbroken } from '../../../../over-lines.ts';
import { oilOfNoFat, spoonOfLye, weightsAsOne } from '../doubts/amounts/strange-amounts.ts';
import type { Amount, Item, Name } from '../items/item.ts';
import { itemsOf } from '../items/items.ts';
import { beginning, isPaired, type State, same, withUnit } from '../state.ts';
import { apposed, isCorrection, isOfPot, isToldAgain, withoutOthers } from '../talk/mentions.ts';
import type { Unclear } from '../unclear.ts';
import { alike } from './alike.ts';
import { butterMeant } from './butter-meant.ts';
import { MOST_BARE_SUPERFAT } from './fixed-figures.ts';
import { isMeantThenTold } from './meant-then-told.ts';
import { namedAnew } from './named-anew.ts';
import { isCount, nameless } from './nameless-amounts.ts';
import { isMeasure, isName, isOil, type Pair, type Part, pairsOf, partsOf } from './parts.ts';
import { ratioIn } from './ratio.ts';
import { turned } from './turns-applied.ts';
import { lone, swap } from './units-settled.ts';
import { wholeAmong, wholes } from './whole-amounts.ts';

/** What a line tells of its ingredients, before their units are settled. */
export type IngredientsTold = {
  readonly pairs: readonly Pair[];
  /** Oils that share what there is in equal parts. */
  readonly even: readonly Name[];
  /** What all oils weigh together. */
  readonly whole: Amount | undefined;
  readonly isRescaled: boolean;
  readonly times: string | undefined;
  /** A bare percent by itself. */
  readonly percent: Amount | undefined;
  /** Liquids and additives without an amount. */
  readonly liquids: readonly Name[];
  /** The unit of every bare figure. */
  readonly unit: Amount['unit'];
  readonly items: readonly Item[];
  /** Alkalis that are named as those which are not used. */
  readonly notMeant: readonly Name[];
  /** Where the recipe begins that counts. */
  readonly begins: number;
  /** How many oils there are, where that is told. */
  readonly count: Amount | undefined;
  /** Whether something was put right, left away, taken instead, scaled, or told of another's recipe. */
  readonly isTurned: boolean;
  /** Oils that are spoken of once more behind their amounts: they may be out of the pot. */
  readonly again: readonly Name[];
};
/** Reads who is how much in a line of `plainWords`. Pure. */
export function toldIn(line: string): IngredientsTold | Unclear {
  const items = withoutOthers(itemsOf(line));
  const state = beginning();
  const { rest, ratio } = ratioIn(items);
  state.pairs.push(...ratio);
  const parts = partsOf(rest);
  state.told = new Set(parts.filter(part => part.items.some(isName)).map(({ sentence }) => sentence));
  state.isPutRight = new Set(
    parts.filter(({ items: some }) => some.some(isCorrection)).map(({ sentence }) => sentence),
  );
  state.isWet = new Set(parts.filter(part => part.items.some(isOfPot)).map(({ sentence }) => sentence));
  for (const [at, part] of parts.entries()) {
    const bound = apposed(part, parts[at - 1], state);
    const unclear = bound ? add(state, bound) : partRead(state, part);
    if (unclear !== undefined)
      return {
        unclear,
        isTurned: state.isTurned,
        ...(state.twice ? { why: 'twice', twice: state.twice } : { why: 'place' }),
      };
  }
  // What was to be, and what is: which of them is in the pot nobody here knows.
  if ((state.voices.has('planned') && state.voices.size > 1) || isMeantThenTold(items))
    return { why: 'planned', unclear: line.slice(0, 60), isTurned: true };
  const unclear = butterMeant(state) ?? swap(state) ?? lone(state);
  if (unclear !== undefined) return { why: 'place', unclear, isTurned: state.isTurned };
  // "Out of coconut, so all olive": what is left away goes to an oil that is named once more.
  const isLacking = state.removed.some(one => state.pairs.some(({ name }) => same(one, name)));
  const named = state.unpaired.find(name => isPaired(state, name));
  if (isLacking && named && state.removed.every(one => !same(one, named)))
    return { why: 'place', unclear: named.text, isTurned: true };
  const struck = state.pairs.find(({ name }) =>
    state.struck.some(one => same(one, name) && one.to <= name.from),
  );
  if (struck) return { why: 'place', unclear: struck.name.text, isTurned: true };
  state.pairs = state.pairs.filter(({ name }) => !state.removed.some(one => same(one, name)));
  const again = [...state.unpaired.filter(name => isToldAgain(state, name, line)), ...namedAnew(state)];
  // All of it one oil, and another beside it.
  const hundred = state.hundred;
  const beside = state.pairs.find(({ name }) => hundred && isOil(name) && !same(name, hundred));
  if (beside) return { why: 'place', unclear: beside.name.text, isTurned: true };
  const bare = state.unpaired.filter(
    name => !isPaired(state, name) && !state.removed.some(one => same(one, name)),
  );
  if (state.each) {
    const measure = state.each;
    state.pairs.push(...bare.splice(0).map(name => ({ measure, name })));
  }
  if (bare.length > 0 && !state.even)
    return { why: 'place', unclear: bare[0]!.text, isTurned: state.isTurned };
  return {
    pairs: state.pairs,
    even: bare,
    whole: state.whole,
    isRescaled: state.isRescaled,
    times: state.times,
    percent: state.percents[0],
    liquids: state.liquids,
    unit: state.unit,
    items,
    notMeant: state.notMeant,
    count: state.count,
    begins: state.begins,
    isTurned: state.isTurned,
    again,
  };
}

/** One part of the line; what is unclear in it. */
function partRead(state: State, { items, sentence }: Part): string | undefined {
  const strange = oilOfNoFat(items) ?? weightsAsOne(items);
  if (strange !== undefined) return strange;
  const another = alike(state, items);
  if (typeof another === 'string') return another;
  if (another) return add(state, another);
  const content = turned(state, items, sentence, part => partRead(state, part));
  if (typeof content === 'string') return content;
  // "Sorry, 400 between the two": what puts right how they share is nobody's amount alone.
  const shared = state.isPutRight.has(sentence) && state.pairs.length > 0 && items.find(isShared);
  if (shared) return shared.text;
  const unclear = units(state, content);
  if (unclear !== undefined) return unclear;
  const spoon = spoonOfLye(content);
  if (spoon !== undefined) return spoon;
  const apart = wholes(
    state,
    content.filter(item => !(item.is === 'amount' && item.unit === 'other')),
  );
  if (!apart.some(isName)) return nameless(state, apart, sentence);
  const read = pairsOf(wholeAmong(state, apart), state.pairs[0]);
  if (!read) return apart.filter(isMeasure)[0]?.text ?? 'part';
  for (const name of read.left) leave(state, name, sentence);
  for (const pair of read.pairs) {
    const amiss = add(state, pair);
    if (amiss !== undefined) return amiss;
  }
  return undefined;
}

const OF_FIGURES = new RegExp(
  unbroken`
    ^(?:all|everything|todo|todos|todas|weights?|pesos?|units?|unidades|figures?|numbers?|van|va|are|
    everythings?|measured|por|by|cada|each|them|estan|esta|cifras?|numeros?|en)$
  `,
  'u',
);
/** The unit of all bare figures, told once; that of the lye which is asked for is none of theirs. */
function units(state: State, content: readonly Item[]): string | undefined {
  if (content.some(item => item.is === 'asks' || (isName(item) && item.known === 'lye'))) return undefined;
  // "Answer in grams", "my scales don't do ounces": of no figure that was told.
  const isTold = content.some(item => isName(item) || isMeasure(item));
  if (!isTold && content.some(({ is, text }) => is === 'word' && !OF_FIGURES.test(text))) return undefined;
  for (const item of content) {
    const unit = item.is === 'units' ? item.unit : item.is === 'mark' && item.text === '%' ? '%' : undefined;
    if (unit === undefined) continue;
    if (state.unit !== undefined && state.unit !== unit) return item.text;
    state.unit = unit;
  }
  return undefined;
}

const isShared = ({ is }: Item): boolean => is === 'even' || is === 'each' || is === 'rest';

function leave(state: State, name: Name, sentence: number): void {
  if (name.known === 'oil') state.unpaired.push(name);
  else if (name.known === 'other' && state.isWet.has(sentence)) state.liquids.push(name);
}

function add(state: State, pair: Pair): string | undefined {
  if (pair.name.known === 'lye' && pair.measure.is === 'amount' && pair.measure.unit === '%') {
    // No lye water is so weak: it is the superfat, or the strength that is taken elsewhere.
    if (pair.measure.figure > MOST_BARE_SUPERFAT) return pair.measure.text;
    state.percents.push(pair.measure);
    return undefined;
  }
  if (pair.name.known === 'any-oil') {
    if (pair.measure.is !== 'amount') return undefined;
    // "That's it, two oils".
    if (isCount(pair.measure)) {
      state.count = pair.measure;
      return undefined;
    }
    // "Resize this: was a 500 g batch, now 2 kg of oils": nobody here knows which of two wholes is meant.
    if (state.isRescaled && state.whole && state.whole.figure !== pair.measure.figure)
      return pair.measure.text;
    state.whole ??= pair.measure;
    return undefined;
  }
  const at = state.pairs.findIndex(({ name }) => same(name, pair.name));
  const before = state.pairs[at];
  state.awaitsFigure = false;
  if (pair.name.known === 'oil') state.voices.add(state.voice);
  if (state.isCorrecting && !before && !state.isCorrected && state.pairs.length > 0) return pair.measure.text;
  state.isCorrected ||= state.isCorrecting && before !== undefined;
  // "A 100% coconut bar, 24 oz coconut oil".
  if (before && isHundred(before.measure) !== isHundred(pair.measure) && pair.name.known === 'oil') {
    state.pairs[at] = isHundred(before.measure) ? pair : before;
    state.hundred = pair.name;
    return undefined;
  }
  if (!before || pair.name.known === 'other') state.pairs.push(pair);
  else if (state.isCorrecting) state.pairs[at] = withUnit(pair, before);
  else if (before.measure.is !== 'amount' || pair.measure.is !== 'amount') state.pairs.push(pair);
  // "No, 250. So 250 rapeseed, 400 lard": what was put right is told once more with the rest.
  else if ((state.isCorrected || state.isPutRight.size > 0) && isSameAmount(before.measure, pair.measure))
    return undefined;
  else if (before.measure.figure !== pair.measure.figure || pair.name.known === 'oil')
    return twice(state, before, pair);
  return undefined;
}

const isSameAmount = (one: Amount, other: Amount): boolean =>
  one.figure === other.figure && one.unit === other.unit;

const isHundred = (measure: Pair['measure']): boolean =>
  measure.is === 'amount' && measure.unit === '%' && measure.figure === 100;

/** The same oil twice: two recipes, what was planned and what was poured, or one that was told again. */
function twice(state: State, one: Pair, { measure, name }: Pair): string {
  if (name.known === 'oil') state.twice = { name: name.text, one: one.measure.text, other: measure.text };
  return `${measure.text} ${name.text}`;
}
