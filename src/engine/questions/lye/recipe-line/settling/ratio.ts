import type { Amount, Item, Name } from '../items/item.ts';
import { isName, isOil, type Pair } from './parts.ts';

/** "70 20 10 lard coconut olive", "olive and coconut 80:20": figures in a row and as many oils in a row. */
export function ratioIn(items: readonly Item[]): {
  readonly rest: readonly Item[];
  readonly ratio: readonly Pair[];
} {
  const none = { rest: items, ratio: [] };
  const respective = respectively(items) ?? listed(items);
  if (respective) return respective;
  const figures: number[] = [];
  for (let at = 0; at < items.length; at += 1) {
    if (isBare(items[at])) figures.push(at);
    else if (figures.length === 1) figures.length = 0;
    else if (figures.length > 1 && !/^[:/–-]$/u.test(items[at]!.text)) break;
    if (figures.length === 1 && /^[:/–-]$/u.test(items[at + 1]?.text ?? '') && isBare(items[at + 2])) at += 1;
  }
  if (figures.length < 2) return none;
  const [first, last] = [figures[0]!, figures.at(-1)!];
  const sum = figures.reduce((all, at) => all + (items[at] as Amount).figure, 0);
  const unit = Math.abs(sum - 100) < 1.01 ? '%' : sum <= 20 ? 'part' : undefined;
  const names =
    roundIt(items, first, last, figures.length) ??
    namesFrom(items, last + 1, 1, figures.length) ??
    namesFrom(items, first - 1, -1, figures.length);
  if (unit === undefined || !names) return none;
  const used = new Set<Item>([...items.slice(first, last + 1), ...names]);
  return {
    rest: items.filter(item => !used.has(item)),
    ratio: names.map((name, at) => ({ name, measure: { ...(items[figures[at]!] as Amount), unit } })),
  };
}

/** "Lard 2:1 with coconut": one name on each side of two figures, the first figure that of the first name. */
function roundIt(
  items: readonly Item[],
  first: number,
  last: number,
  count: number,
): readonly Name[] | undefined {
  const isBetween = ({ is }: Item) => is === 'link' || is === 'joint';
  const before = items.slice(0, first).findLast(item => !isBetween(item));
  const behind = items.slice(last + 1).find(item => !isBetween(item));
  return count === 2 && isOil(before) && isOil(behind) ? [before, behind] : undefined;
}

/** "Lard, coconut, olive: 400, 250, 350 in that order". */
function respectively(items: readonly Item[]) {
  const at = items.findIndex(
    ({ is, text }, one) =>
      is === 'word' &&
      (/^respecti(?:vely|vamente)$/u.test(text) ||
        (text === 'order' && /^(?:that|this|same)$/u.test(items[one - 1]!.text)) ||
        (text === 'orden' && items[one - 1]!.text === 'ese')),
  );
  if (at === -1) return undefined;
  const before = items.slice(0, at);
  const names = before.filter(isOil);
  const amounts = before.filter(item => item.is === 'amount');
  if (names.length < 2 || names.length !== amounts.length) return undefined;
  const used = new Set<Item>([...names, ...amounts]);
  return {
    rest: items.filter(item => !used.has(item)),
    ratio: names.map((name, one) => ({ name, measure: amounts[one]! })),
  };
}

/** "Lard, olive, coconut = 400, 300, 250": a list of oils, a sign, and as many weights. */
function listed(items: readonly Item[]) {
  const isBetween = (item: Item | undefined) => item?.is === 'joint' || /^[,/]$/u.test(item?.text ?? '');
  const at = items.findIndex(({ is, text }) => (is === 'link' || is === 'mark') && /^[:=]$/u.test(text));
  if (at === -1) return undefined;
  const run = (from: number, step: 1 | -1, fits: (item: Item) => boolean): readonly Item[] => {
    const found: Item[] = [];
    for (let one = from; one >= 0 && one < items.length; one += step) {
      const item = items[one]!;
      if (fits(item)) found.push(item);
      else if (!isBetween(item)) break;
    }
    return step === 1 ? found : found.toReversed();
  };
  const names = run(at - 1, -1, isOil).filter(isOil);
  const amounts = run(at + 1, 1, ({ is }) => is === 'amount').filter(item => item.is === 'amount');
  const last = items[items.indexOf(amounts.at(-1)!) + 1];
  if (names.length < 2 || names.length !== amounts.length || isName(last)) return undefined;
  const used = new Set<Item>([...names, ...amounts, items[at]!]);
  return {
    rest: items.filter(item => !used.has(item)),
    ratio: names.map((name, one) => ({ name, measure: amounts[one]! })),
  };
}

const isBare = (item: Item | undefined): item is Amount => item?.is === 'amount' && item.unit === undefined;

/** So many oils in a row from there, in the order in which they stand. */
function namesFrom(
  items: readonly Item[],
  from: number,
  step: 1 | -1,
  count: number,
): readonly Name[] | undefined {
  const names: Name[] = [];
  for (let at = from; at >= 0 && at < items.length; at += step) {
    const item = items[at]!;
    if (isOil(item)) names.push(item);
    else if (
      !(item.is === 'joint' || item.is === 'link' || /^[,:/;]$/u.test(item.text) || item.text === 'al')
    )
      break;
  }
  if (names.length !== count) return undefined;
  return step === 1 ? names : names.toReversed();
}
