import { unbroken } from '../../../../over-lines.ts';
import { NO_ABSENCE } from '../doubts/beside-oils.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';
import type { Amount, Item, Name } from '../items/item.ts';
import { type State, same } from '../state.ts';
import { isMeasure, isName, isOil, type Measure, type Part } from './parts.ts';
import { isSameMultiple } from './times.ts';

const isOfWater = (items: readonly Item[]): boolean =>
  items.some(
    item => isName(item) && (item.known === 'water' || item.known === 'lye' || item.known === 'other'),
  );
const isPair = (items: readonly Item[]): boolean => items.some(isOil) && items.some(isMeasure);
const isWater = (item: Item | undefined): boolean => isName(item) && item.known === 'water';

/** "500 g olive x 2": told behind one oil it may be of that alone. */
const BY_FIGURE = /^x ?\d|\d ?x$|^(?:times|por) \d/u;

/** Whether what follows a correction is of the recipe, and no courtesy. */
const speaksOfRecipe = (after: readonly Item[]): boolean =>
  after.slice(0, 5).some(item => isMeasure(item) || isOil(item)) && after.some(isMeasure);

/** A part without what turns its sense, which is noted; a text where that is unclear. */
export function turned(
  state: State,
  items: readonly Item[],
  sentence: number,
  readPart: (part: Part) => string | undefined,
): readonly Item[] | string {
  const kept: Item[] = [];
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    const after = items.slice(at + 1);
    if (item.is === 'aside') continue;
    if (item.is === 'fraction' && isWater(after.find(one => one.is !== 'link'))) {
      // "Buttermilk for half the water".
      at += after.findIndex(isName) + 1;
    } else if (item.is === 'even') state.even = true;
    else if (
      item.is === 'times' &&
      state.times !== undefined &&
      isSameMultiple(state.times, item.text, items)
    ) {
      // "What's the lye doubled".
    } else if (item.is === 'times') {
      // "Water at twice the lye", "agua x2": no multiple of the recipe.
      state.isTurned = true;
      // "2 x 500 g olive": two of that oil alone, or of all.
      const isOfOne =
        (after[0]?.is === 'amount' && !/ up$/u.test(item.text)) ||
        (isPair(kept) && BY_FIGURE.test(item.text));
      if (state.times !== undefined || isOfWater(items) || isOfOne) return item.text;
      state.times = item.text;
    } else if (item.is === 'rescales') {
      state.isRescaled ||=
        !/hacer|make|do$/u.test(item.text) ||
        after.some(one => one.is === 'amount' && one.unit !== 'other' && one.unit !== '%');
      state.isTurned ||= state.isRescaled;
      kept.push(item);
    } else if (item.is === 'corrects') {
      if (!speaksOfRecipe(after)) continue;
      state.isTurned = true;
      // "100, no, 150 of cocoa butter": a figure that had no name yet.
      const isNameless = kept.some(isMeasure) && !kept.some(isName);
      if (isNameless || state.masses.pop() !== undefined) {
        if (isNameless) kept.length = 0;
        continue;
      }
      if (kept.some(isMeasure)) {
        // What stands before is of the recipe; what follows puts it right.
        const unclear = readPart({ items: [...kept], sentence });
        if (unclear !== undefined) return unclear;
        kept.length = 0;
      }
      state.isCorrecting ||= state.pairs.length > 0;
      state.awaitsFigure = state.isCorrecting;
    } else if (item.is === 'planned' || item.is === 'actual') {
      // What stands before was said in the other voice.
      const unclear = kept.some(isMeasure) ? readPart({ items: kept.splice(0), sentence }) : undefined;
      if (unclear !== undefined) return unclear;
      state.voice = item.is;
    } else if (item.is === 'each') {
      const amount = kept.findLastIndex(one => one.is === 'amount');
      if (amount === -1) continue;
      state.each = kept.splice(amount, 1)[0] as Amount;
    } else if (item.is === 'swaps') {
      const skipped = swapped(state, after);
      if (typeof skipped === 'string') return skipped;
      at += skipped;
    } else if (item.is === 'not' && kept.length === 0 && /^(?:was|were|is|are)/u.test(item.text)) {
      // "Wasn't 6 oz lye too much": who asks so means it.
    } else if (item.is === 'not' && after[0]?.is === 'amount' && !isName(after[1]) && isPair(kept)) {
      // "380 g olive, not 400".
      at += 1;
    } else if (item.is === 'instead' && after[0]?.is === 'amount' && !isName(after[1]) && isPair(kept)) {
      // "10 oz coconut instead of 8".
      at += 1;
    } else if (
      item.is === 'without' &&
      / (?:it|any)$/u.test(item.text) &&
      !isName(after.find(one => one.is !== 'link'))
    ) {
      // "8 oz palm but I can't find it": what was told last.
      const unclear = kept.some(isMeasure) ? readPart({ items: kept.splice(0), sentence }) : undefined;
      if (unclear !== undefined) return unclear;
      const last = state.pairs.at(-1);
      if (last?.name.known !== 'oil') return item.text;
      state.isTurned = true;
      state.removed.push(last.name);
    } else if (item.is === 'without' || item.is === 'not') {
      const skipped = left(state, item, after, kept);
      if (typeof skipped === 'string') return skipped;
      at += skipped;
    } else if (item.is === 'instead') {
      at += instead(state, item, kept, after);
    } else if (item.is === 'mine') {
      // Two recipes: the later one is the teller's own.
      if (after.some(isMeasure) && state.pairs.length > 0) {
        state.pairs = [];
        state.begins = item.from;
        state.voices.clear();
        state.isTurned = true;
      }
    } else kept.push(item);
  }
  return kept;
}

const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(' ');
const ANOTHER_TIME = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:last|other|first|next|another|some)(?:times| time| week| month| batch| one)|once|before|
    earlier|usually|normally|sometimes|often|yesterday|always|(?:la )?(?:ultima|otra|primera|
    proxima) (?:vez|tanda)|otras veces|a veces|antes|normalmente|ayer|siempre|una vez)(?!\p{L})
  `,
  'u',
);
const ANOTHERS = new RegExp(
  unbroken`
    (?<!\p{L})(?:${PERSON}|people|others|some|someone|everyone|they|she|he|hers|theirs|(?:can|could|should|
    shall|may|might) (?:i|we|one)|ella|ellas|ellos|gente|much[oa]s|algun[oa]s|alguien|hay quien|(?:puedo|
    podria|podemos|deberia|se puede))(?!\p{L})
  `,
  'u',
);
/** "Last time I did it without the coconut", "my sister makes hers without": of another pot, or asked of this one. */
function isOfAnother(items: readonly Item[]): boolean {
  const said = textOf(items).replace(NO_ABSENCE, '');
  return ANOTHER_TIME.test(said) || ANOTHERS.test(said) || items.some(({ is }) => is === 'planned');
}
const NOT_HAD = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:no (?:hay|habia|hubo|tengo|tenemos|uso|queda|encontre|encontramos|halle|consegui|
    consigo|encuentro|me queda))|me falta|(?:don'?t|do not|haven'?t|can'?t|cannot|couldn'?t|
    won'?t)(?: \p{L}+)*)$
  `,
  'u',
);
const STRUCK = /^(?:tach|borr|strike|cross|forget|scrap|quit[ae](?!nd)|saca)/u;
/** Whose recipe follows is of no denial before it: "mi mamá usa manteca, yo no: yo uso 600 g de oliva". */
const OTHERS_TURN: ReadonlySet<Item['is']> = new Set(['mine', 'planned', 'corrects']);
/** "Without the castor", "no eran 300 de coco": how many items of the part that takes. */
function left(state: State, item: Item, after: readonly Item[], kept: readonly Item[]): number | string {
  if (after.some(isOil) && isOfAnother([...kept, ...after])) return item.text;
  // "200 g de coco no tengo": what is not had stands before; behind a correction it is why.
  const isLast = item.is === 'without' && after.every(one => one.is === 'link' || one.is === 'mark');
  if (isLast && !state.isCorrecting && kept.some(isOil) && NOT_HAD.test(item.text)) return item.text;
  const words = after.findIndex(one => one.is === 'word' || one.is === 'mark' || OTHERS_TURN.has(one.is));
  const reach = words === -1 ? after : after.slice(0, words);
  const name = reach.findIndex(isName);
  const amount = reach.findIndex(one => one.is === 'amount');
  const isAmount = amount !== -1 && amount <= 2;
  // "No, 600 g olive" puts right, "no 600 g of olive" denies.
  if (item.text === 'no' && isAmount && amount < name && isOil(reach[name])) return after[amount]!.text;
  // "Less 50 g of the coconut": some of it stays.
  if (isAmount && (/less|minus|menos|quitando/u.test(item.text) || (STRUCK.test(item.text) && amount < name)))
    return after[amount]!.text;
  const found = after[name];
  if (isName(found) && found.known === 'oil') {
    state.isTurned = true;
    if (STRUCK.test(item.text)) {
      // Struck out is what was told before; told once more behind it, it is asked for.
      if (!state.pairs.some(pair => same(pair.name, found))) return item.text;
      state.struck.push(found);
    }
    if (item.is === 'not' && isAmount) state.denied = found;
    else state.removed.push(found);
    return name + 1;
  }
  if (isName(found) && found.known === 'lye') state.notMeant.push(found);
  if (item.is === 'not' && isAmount) return after[amount]!.text;
  if (isName(found)) return name <= 1 ? name + 1 : 0;
  const [word] = after.filter(({ is }) => is === 'word');
  const named = word && state.pairs.find(pair => pair.name.text.split(' ').includes(word.text));
  state.isTurned ||= named !== undefined;
  if (named) state.removed.push(named.name);
  else if (word && /^(?:cera|wax|butter|manteca)$/u.test(word.text)) state.wordsRemoved.push(word.text);
  return 0;
}

/** "Swap the coconut for babassu", "200 g de coco por 200 de babasú". */
function swapped(state: State, after: readonly Item[]): number | string {
  const by = after.findIndex(({ text }) => /^(?:for|with|por|con|to)$/u.test(text));
  const behind = after.findIndex((one, at) => isOil(one) && at > by);
  const before = after.slice(0, Math.max(by, 0)).findLastIndex(isOil);
  // "Swapping the water for stout": of no oil.
  if (by === -1 || behind === -1) return after.some(isOil) ? after[0]!.text : 0;
  const [of, taken] = [after[before], after[behind] as Name];
  const amounts = [after.slice(0, by), after.slice(by, behind)].map(some => some.filter(isMeasure));
  const [[old, more], [own, another]] = amounts as [Measure[], Measure[]];
  if (more || another || (old && old.is !== 'amount') || (own && own.is !== 'amount')) return taken.text;
  state.isTurned = true;
  if (own) state.pairs.push({ measure: own, name: taken });
  state.swaps.push({ by: taken, of: isName(of) ? of : undefined, ...(old && { amount: old }) });
  return behind + 1;
}

/** "In its place karité": what is taken may stand behind. */
const IN_ITS_PLACE = /(?:su lugar|its (?:place|stead))$|^instead$/u;
/** What stands in the place of what; how many items of the part that takes. */
function instead(state: State, item: Item, before: Item[], after: readonly Item[]): number {
  const taken = after.find(isName);
  if (IN_ITS_PLACE.test(item.text) && isOil(taken) && !before.some(isOil)) {
    // With a weight of its own it needs none of what is left away.
    if (!after.some(isMeasure)) state.swaps.push({ by: taken, of: undefined });
    state.isTurned = true;
    return after.some(isMeasure) ? 0 : after.indexOf(taken) + 1;
  }
  const of = after.findIndex(isName);
  const name = after[of];
  // "En vez de palma le pongo sebo": what is taken is told behind.
  const colon = after.findIndex(({ text }) => text === ':');
  const reach = colon === -1 ? after : after.slice(0, colon);
  const behind = reach.slice(of + 1).find(isName);
  const isAlone = isOil(name) && isOil(behind) && !reach.some(isMeasure) && !before.some(isName);
  const taker = isAlone ? behind : undefined;
  const by = taker ?? before.findLast(isName) ?? state.unpaired.at(-1);
  if (isName(name) && name.known === 'lye') state.notMeant.push(name);
  if (isName(name) && name.known !== 'oil') return of + 1;
  state.isTurned ||= by?.known === 'oil';
  if (by?.known === 'oil') state.swaps.push({ by, of: isName(name) ? name : undefined });
  if (taker) return after.indexOf(taker) + 1;
  return isName(name) ? of + 1 : 0;
}
