import type { Amount } from '../items/item.ts';
import { isPaired, oilOf, type State, same, withUnit } from '../state.ts';
import type { Measure } from './parts.ts';

/** A bare figure from which it may be the grams of all oils, beside shares in percent. */
const LIKE_A_WEIGHT = 100;

/** The one amount that has no name yet, which is thereby taken. */
const onlyMass = (state: State): Amount | undefined =>
  state.masses.length === 1 ? state.masses.pop() : undefined;

/** What is taken in place of an oil has its own amount, or that of the oil. */
export function swap(state: State): string | undefined {
  for (const word of state.wordsRemoved) {
    const named = state.pairs.find(pair => pair.name.text.split(' ').includes(word));
    state.isTurned = true;
    if (named) state.removed.push(named.name);
  }
  const lacking = state.removed.filter(one => isPaired(state, one));
  const waiting = state.unpaired.filter(name => !isPaired(state, name));
  const swaps = [...state.swaps];
  if (swaps.length === 0 && lacking.length === 1 && waiting.length === 1 && !state.even)
    swaps.push({ by: waiting[0]!, of: lacking[0] });
  // "No palm; tallow in its place, 300 g": of what is not told with a weight nothing is left to take.
  const missing = state.removed.length === 1 && lacking.length === 0 ? state.removed[0] : undefined;
  for (const { by, of = lacking[0] ?? missing, amount } of swaps) {
    const old = of && state.pairs.find(({ name }) => same(name, of));
    if (!old) {
      // "I have tallow in place of the lard, 300 g of it": the recipe is told as it is now.
      const own = onlyMass(state);
      // "Swapped 300 g coconut for 300 g olive": what else is in it was not told.
      const isAlone = state.pairs.every(({ name }) => name.known !== 'oil' || same(name, by));
      if (!of || (amount && isAlone)) return by.text;
      // ... and where some of it is in already, how much is it in all?
      if (amount && state.pairs.some(({ name }) => same(name, by) && name !== by)) return by.text;
      // "Swapped the 200 g palm for lard, the rest is 400 olive": all of it, since no more of it is told.
      const swapped = isPaired(state, by) ? own : (amount ?? own);
      if (!swapped && !isPaired(state, by)) return by.text;
      if (swapped) state.pairs.push({ measure: swapped, name: by });
      continue;
    }
    // A part of it is swapped, or the recipe is told as it was and as it is now.
    const isWhole = old.measure.is === 'amount' && old.measure.figure === amount?.figure;
    if (amount ? !isWhole : isPaired(state, by)) return by.text;
    state.pairs = state.pairs.filter(pair => pair !== old);
    state.removed = state.removed.filter(one => !same(one, old.name));
    if (isPaired(state, by)) continue;
    const own = onlyMass(state);
    const measure: Measure = own ?? old.measure;
    state.pairs.push(withUnit({ measure, name: by }, old));
  }
  return undefined;
}

/** Amounts that stand by themselves. */
export function lone(state: State): string | undefined {
  const oils = state.pairs.filter(({ name }) => name.known === 'oil');
  const areShares =
    oils.length > 0 && oils.every(({ measure }) => measure.is !== 'amount' || measure.unit === '%');
  const again = (one: Amount) => one.figure === state.whole?.figure && one.unit === state.whole.unit;
  const [mass, another] = state.masses.filter(one => !again(one));
  if (mass && mass.unit === undefined && !(areShares && mass.figure >= LIKE_A_WEIGHT)) return mass.text;
  const alone = state.unpaired.filter(name => !isPaired(state, name));
  const isOne = new Set(alone.map(oilOf)).size === 1 && oils.length === 0 && !state.even;
  if (isOne && mass && !another) {
    state.pairs.push({ measure: mass, name: alone[0]! });
    return undefined;
  }
  const isWeighed = oils.some(
    ({ measure }) => measure.is === 'amount' && measure.unit !== '%' && measure.unit !== undefined,
  );
  // Beside weighed oils it is their sum ("son 600 g"), or unclear; `oilsOf` looks.
  const hasRest = oils.some(({ measure }) => measure.is === 'rest');
  const isSum = mass?.isSum === true && mass.unit !== undefined;
  if (mass && (another || state.whole || (isWeighed && !hasRest && !isSum))) return mass.text;
  state.whole ??= mass;
  if (state.percents.length > 1) return state.percents[1]!.text;
  return undefined;
}
