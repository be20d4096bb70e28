import type { Amount, Fraction, Item, Name, Rest } from '../items/item.ts';

/** How much of an ingredient: its weight or share, a fraction, or what is left of the whole. */
export type Measure = Amount | Fraction | Rest;
export type Pair = { readonly measure: Measure; readonly name: Name };
/** A stretch of a line between two commas, stops or joints. */
export type Part = { readonly items: readonly Item[]; readonly sentence: number };

export const isMeasure = (item: Item | undefined): item is Measure =>
  item?.is === 'amount' || item?.is === 'fraction' || item?.is === 'rest';
export const isName = (item: Item | undefined): item is Name => item?.is === 'name';
export const isOil = (item: Item | undefined): item is Name => item?.is === 'name' && item.known === 'oil';
const BREAK = /^[;,./()|]$/u;

/** The parts of a line, each with the number of its sentence. */
export function partsOf(items: readonly Item[]): readonly Part[] {
  const parts: { items: Item[]; sentence: number }[] = [{ items: [], sentence: 0 }];
  for (const [at, item] of items.entries()) {
    // "1 kg: 650 oliva": what a colon closes is an amount of its own.
    const isClosed = item.text === ':' && parts.at(-1)!.items.some(isMeasure);
    // "Only 14 oz in the jar, so 14 oz coconut".
    const isSo = /^(?:so|entonces)$/u.test(item.text) && items[at + 1]?.is === 'amount';
    // "Is 142 g lye too much for cottonseed 600 g": what was weighed for it is told before.
    const isFor =
      item.is === 'word' &&
      /^(?:for|para|pa)$/u.test(item.text) &&
      parts.at(-1)!.items.some(one => isName(one) && one.known === 'lye') &&
      parts.at(-1)!.items.some(isMeasure);
    const isBreak =
      isSo || isFor || item.is === 'joint' || isClosed || (item.is === 'mark' && BREAK.test(item.text));
    const { sentence, items: before } = parts.at(-1)!;
    // "No wait, 300": who puts something right goes on in the same breath.
    if (item.is === 'mark' && before.at(-1)?.is === 'corrects') continue;
    if (isBreak) parts.push({ items: [], sentence: sentence + (item.text === ';' ? 1 : 0) });
    else parts.at(-1)!.items.push(item);
  }
  return parts.filter(part => part.items.length > 0);
}

/** Each measure with the name on that side of it, and the names that are left; undefined where a measure has none. */
function onSide(
  content: readonly Item[],
  step: 1 | -1,
): { readonly pairs: readonly Pair[]; readonly left: readonly Name[] } | undefined {
  const pairs: Pair[] = [];
  for (const [at, item] of content.entries()) {
    if (!isMeasure(item)) continue;
    const name = content[at + step];
    if (!isName(name)) return undefined;
    pairs.push({ measure: item, name });
  }
  const taken = new Set(pairs.map(({ name }) => name));
  return { pairs, left: content.filter(isName).filter(name => !taken.has(name)) };
}

/** "The rest castor", "olive the rest": what is left is of the name behind it, or of the one before. */
function withoutRest(content: readonly Item[]): {
  readonly others: readonly Item[];
  readonly pairs: readonly Pair[];
} {
  const at = content.findIndex(({ is }) => is === 'rest');
  const rest = content[at];
  const behind = content[at + 1];
  const name = isName(behind) ? behind : content[at - 1];
  if (rest?.is !== 'rest' || !isName(name)) return { others: content, pairs: [] };
  return { others: content.filter(item => item !== rest && item !== name), pairs: [{ measure: rest, name }] };
}

/**
 * The measures of a part with their names, whichever side those stand on, and the names without a measure. Of two readings the one
 * that leaves no oil without a measure; where both do, or neither, the one that has the order of `before`; else undefined.
 */
export function pairsOf(
  part: readonly Item[],
  before: Pair | undefined,
): { readonly pairs: readonly Pair[]; readonly left: readonly Name[] } | undefined {
  const { others, pairs } = withoutRest(part.filter(item => isMeasure(item) || isName(item)));
  const read = sided(others, before);
  return read && { pairs: [...read.pairs, ...pairs], left: read.left };
}

function sided(content: readonly Item[], before: Pair | undefined) {
  if (!content.some(isMeasure)) return { pairs: [], left: content.filter(isName) };
  const [behind, ahead] = [onSide(content, 1), onSide(content, -1)];
  if (!behind || !ahead) return behind ?? ahead;
  const whole = [behind, ahead].filter(({ left }) => !left.some(isOil));
  if (whole.length === 1) return whole[0];
  if (whole.length === 0 || !before) return undefined;
  // An alkali or water that no measure belongs to is asked for: the order of the parts before tells which.
  return before.name.from < before.measure.from ? ahead : behind;
}
